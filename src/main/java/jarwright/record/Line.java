package jarwright.record;

import java.util.LinkedHashMap;
import java.util.Map;

/** A name with its value, as a page lists them. */
record Line(String name, String value) {
  Map<String, Object> view() {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("name", name);
    view.put("value", value);
    return view;
  }
}
