package jarwright.files;

import jarwright.problem.Refused;
import jarwright.process.Pack;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Understands the pack of a plan. */
final class PackWord {
  private PackWord() {}

  /** The pack that the key names; none, or a problem, otherwise. */
  static Optional<Pack> read(Fields fields, String key, PlanWords words)
      throws IOException, Refused {
    Optional<String> word = fields.plainWord(key);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    Optional<Pack> exact = PlanWords.exact(word.get(), Pack::named, Pack.choices());
    if (exact.isPresent()) {
      return exact;
    }
    List<String> meant =
        words
            .hear(word.get())
            .filter(s -> s.choices().jars().isEmpty() && s.methods().isEmpty())
            .map(s -> s.choices().packs())
            .orElse(List.of())
            .stream()
            .map(Pack::id)
            .toList();
    return PlanWords.one(fields, key, meant, Pack.choices()).flatMap(Pack::named);
  }
}
