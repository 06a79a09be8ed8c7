package jarwright.ask;

import static java.util.Collections.disjoint;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All that an untested food or way is called, ready to be compared. */
final class UntestedNames {
  private final Untested untested;
  private final List<Set<String>> names = new ArrayList<>();

  UntestedNames(Untested untested, Lexicon lexicon) {
    this.untested = untested;
    untested
        .told()
        .forEach(
            (l, told) ->
                told.names().forEach(name -> names.add(Set.copyOf(lexicon.stems(l, name)))));
    if (names.contains(Set.of())) {
      throw new IllegalArgumentException(untested.key() + " has a name that says nothing");
    }
  }

  Untested untested() {
    return untested;
  }

  /** Words in the longest of its names that is said whole; 0 where none is. */
  int longest(Phrasebook.Sorted asked) {
    return said(asked).mapToInt(Set::size).max().orElse(0);
  }

  /** The same on the scale of the products' names. */
  int weight(Phrasebook.Sorted asked) {
    return said(asked).mapToInt(FoodNames::weight).max().orElse(0);
  }

  /** Its names that are said whole, not by words for a jar or a method alone. */
  private Stream<Set<String>> said(Phrasebook.Sorted asked) {
    return names.stream().filter(n -> asked.all().containsAll(n) && !asked.aside().containsAll(n));
  }

  /** All words of its names that are said whole. */
  Set<String> words(Phrasebook.Sorted asked) {
    return said(asked).flatMap(Set::stream).collect(Collectors.toSet());
  }

  /** Whether one of its names is said whole, with nothing left over of the food. */
  boolean isCalled(Phrasebook.Sorted asked) {
    return said(asked).anyMatch(n -> asked.food().stream().noneMatch(w -> disjoint(n, w.stems())));
  }

  /** Whether a product has every word by which it is named here, so that the product was meant. */
  boolean isWithin(Match product, Phrasebook.Sorted asked) {
    return product.hasAll(words(asked));
  }
}
