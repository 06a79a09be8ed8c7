package jarwright.render;

import freemarker.template.SimpleNumber;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateHashModelEx;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateModelIterator;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import jarwright.page.Wording;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The words as functions of a template: {@code word("key", {"name": value})}, {@code count("key",
 * n)}, {@code number(n)}, {@code day("style", "2026-08-24")} and the text {@code language}.
 */
final class WordFunctions {
  private WordFunctions() {}

  /**
   * Adds the functions to what a template sees.
   *
   * @throws IllegalArgumentException if the view has a value by the name of a function
   */
  static void addTo(Map<String, Object> view, Wording words) {
    add(view, "language", words.language());
    add(view, "word", function("word", 1, 2, a -> words.text(text(a, 0), values(a))));
    add(view, "count", function("count", 2, 2, a -> words.count(text(a, 0), whole(a, 1))));
    add(view, "number", function("number", 1, 1, a -> words.number(decimal(a, 0))));
    add(view, "day", function("day", 2, 2, a -> words.date(text(a, 0), date(text(a, 1)))));
  }

  private static void add(Map<String, Object> view, String name, Object value) {
    if (view.put(name, value) != null) {
      throw new IllegalArgumentException(
          "a view has a value \"" + name + "\", which every template has as a function");
    }
  }

  private interface Body {
    String apply(List<?> arguments) throws TemplateModelException;
  }

  private static TemplateMethodModelEx function(String name, int least, int most, Body body) {
    return arguments -> {
      if (arguments.size() < least || arguments.size() > most) {
        throw new IllegalArgumentException(
            name + "(…) takes " + least + (most > least ? " or " + most : "") + " values");
      }
      return new SimpleScalar(body.apply(arguments));
    };
  }

  private static String text(List<?> arguments, int i) throws TemplateModelException {
    if (arguments.get(i) instanceof TemplateScalarModel text) {
      return text.getAsString();
    }
    throw new IllegalArgumentException("value " + (i + 1) + " must be a text");
  }

  private static BigDecimal decimal(List<?> arguments, int i) throws TemplateModelException {
    if (arguments.get(i) instanceof TemplateNumberModel number) {
      return new BigDecimal(number.getAsNumber().toString());
    }
    throw new IllegalArgumentException("value " + (i + 1) + " must be a number");
  }

  private static long whole(List<?> arguments, int i) throws TemplateModelException {
    try {
      return decimal(arguments, i).longValueExact();
    } catch (ArithmeticException e) {
      throw new IllegalArgumentException("value " + (i + 1) + " must be a whole number", e);
    }
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException("\"" + text + "\" is no date like 2026-08-24", e);
    }
  }

  private static Map<String, Object> values(List<?> arguments) throws TemplateModelException {
    Map<String, Object> values = new LinkedHashMap<>();
    if (arguments.size() < 2) {
      return values;
    }
    if (!(arguments.get(1) instanceof TemplateHashModelEx hash)) {
      throw new IllegalArgumentException("value 2 must be a map as {\"name\": value}");
    }
    TemplateModelIterator keys = hash.keys().iterator();
    while (keys.hasNext()) {
      String key = ((TemplateScalarModel) keys.next()).getAsString();
      values.put(key, plain(key, hash.get(key)));
    }
    return values;
  }

  private static Object plain(String key, TemplateModel value) throws TemplateModelException {
    if (value instanceof SimpleNumber || value instanceof TemplateNumberModel) {
      return new BigDecimal(((TemplateNumberModel) value).getAsNumber().toString());
    }
    if (value instanceof TemplateScalarModel text) {
      return text.getAsString();
    }
    throw new IllegalArgumentException("the value of {" + key + "} must be a text or a number");
  }
}
