package jarwright.page;

import java.util.Arrays;
import java.util.List;

/** The languages that print-outs can be had in; the first is the usual one. */
public enum Language {
  ENGLISH("en"),
  SPANISH("es");

  private final String tag;

  Language(String tag) {
    this.tag = tag;
  }

  /** As plans and file names have it (BCP 47). */
  public String tag() {
    return tag;
  }

  public static List<String> tags() {
    return Arrays.stream(values()).map(Language::tag).toList();
  }

  /** Whether the program's own tables are in it, so that nothing has to be translated. */
  public static boolean isOfTables(String tag) {
    return tag.equals(ENGLISH.tag);
  }
}
