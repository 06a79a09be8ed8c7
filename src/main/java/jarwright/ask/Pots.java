package jarwright.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What people call the pots and machines that they take for canners. A name may stand among other
 * words, as in {@code grandma's old pressure cooker}.
 */
public final class Pots {
  private final List<Named> names;

  /**
   * One name.
   *
   * @param refusal key of what is said of it; empty where it may be used, though a part of its name
   *     means one that may not
   */
  public record Named(String language, String name, Optional<String> refusal) {}

  /** A name found in a text: from one word up to another, which is no longer part of it. */
  private record Place(int from, int to, Optional<String> refusal) {
    boolean isWithin(Place other) {
      return from >= other.from && to <= other.to && to - from < other.to - other.from;
    }
  }

  public Pots(List<Named> names) {
    this.names = List.copyOf(names);
  }

  /** The key of the refusal that holds for what a text names; empty where it names no such pot. */
  public Optional<String> refusal(String text) {
    List<String> words = Spelling.words(text);
    List<Place> places = names.stream().flatMap(n -> places(n, words)).toList();
    return places.stream()
        .filter(p -> places.stream().noneMatch(p::isWithin))
        .sorted(Comparator.comparingInt(Place::from))
        .map(Place::refusal)
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Stream<Place> places(Named named, List<String> words) {
    List<String> name = stems(named.language(), Spelling.words(named.name()));
    List<String> text = stems(named.language(), words);
    List<Place> places = new ArrayList<>();
    for (int from = 0; from + name.size() <= text.size(); from++) {
      if (text.subList(from, from + name.size()).equals(name)) {
        places.add(new Place(from, from + name.size(), named.refusal()));
      }
    }
    return places.stream();
  }

  private static List<String> stems(String language, List<String> words) {
    return words.stream().map(w -> Spelling.stem(language, w)).toList();
  }
}
