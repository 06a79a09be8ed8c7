package jarwright.cli;

import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What the words of a look-up ask for: pack, jar and method are known by their names, all others
 * name the product.
 *
 * @param product may be empty
 * @param methods none where the words name no method
 */
record ProcessWords(
    String product, Optional<Pack> pack, Optional<JarSize> jar, List<Method> methods) {
  private static final Map<String, List<Method>> METHODS =
      Map.of(
          "boiling", List.of(Method.BOILING_WATER),
          "boiling-water", List.of(Method.BOILING_WATER),
          "dial", List.of(Method.DIAL_GAUGE),
          "dial-gauge", List.of(Method.DIAL_GAUGE),
          "weighted", List.of(Method.WEIGHTED_GAUGE),
          "weighted-gauge", List.of(Method.WEIGHTED_GAUGE),
          "pressure", List.of(Method.DIAL_GAUGE, Method.WEIGHTED_GAUGE));

  static ProcessWords of(List<String> words) {
    List<String> product = new ArrayList<>();
    Optional<Pack> pack = Optional.empty();
    Optional<JarSize> jar = Optional.empty();
    List<Method> methods = List.of();
    for (String written : words) {
      String word = written.toLowerCase(Locale.ROOT);
      Optional<JarSize> size =
          JarSize.named(word.endsWith("s") ? word.substring(0, word.length() - 1) : word);
      if (Pack.choices().contains(word)) {
        pack = Pack.named(word);
      } else if (size.isPresent()) {
        jar = size;
      } else if (METHODS.containsKey(word)) {
        methods = METHODS.get(word);
      } else {
        product.add(word);
      }
    }
    return new ProcessWords(String.join(" ", product), pack, jar, methods);
  }
}
