package jarwright.ask;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** All that an untested food or way is called, ready to be compared. */
final class UntestedNames {
  private final Untested untested;
  private final List<Set<String>> names = new ArrayList<>();

  UntestedNames(Untested untested, Lexicon lexicon) {
    this.untested = untested;
    untested
        .told()
        .forEach((l, told) -> told.names().forEach(name -> names.add(lexicon.stems(l, name))));
    if (names.contains(Set.of())) {
      throw new IllegalArgumentException(untested.key() + " has a name that says nothing");
    }
  }

  Untested untested() {
    return untested;
  }

  Set<String> words() {
    Set<String> words = new HashSet<>();
    names.forEach(words::addAll);
    return words;
  }

  /** Words in the longest of its names that is said whole; 0 where none is. */
  int longest(Set<String> said) {
    return names.stream().filter(said::containsAll).mapToInt(Set::size).max().orElse(0);
  }

  /** All words of its names that are said whole. */
  Set<String> said(Set<String> said) {
    Set<String> words = new HashSet<>();
    names.stream().filter(said::containsAll).forEach(words::addAll);
    return words;
  }

  /** Whether one of its names is said whole, with nothing left over of the food. */
  boolean isCalled(List<Word> food, Set<String> said) {
    return names.stream()
        .filter(said::containsAll)
        .anyMatch(n -> food.stream().noneMatch(w -> Collections.disjoint(n, w.stems())));
  }

  /** Whether a product has every word by which it is named here, so that the product was meant. */
  boolean isWithin(FoodNames product, Set<String> said) {
    return product.hasAll(said(said), said);
  }
}
