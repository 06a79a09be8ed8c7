package jarwright.files;

import jarwright.pantry.JarNumbers;
import jarwright.pantry.Liquid;
import jarwright.pantry.Ticked;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What rows tell of a load's jars: by lists of numbers in the load's row, or one by one. Where both
 * speak of a jar they have to agree.
 *
 * @param inLoad empty where the plan tells
 * @param notes on single jars, by number
 */
record JarRows(
    Optional<JarNumbers> inLoad,
    JarNumbers unsealed,
    JarNumbers someLost,
    JarNumbers halfLost,
    TreeMap<Integer, String> notes) {
  private static final String LIQUID = "write none, some or half for what was lost";

  /** The lists of a load's row. */
  static JarRows listed(Fields load, RecordWords words) {
    load.require("unsealed", "write the numbers of the jars that did not seal, or none");
    load.require("some-lost", "write the jars that lost less than half of their liquid, or none");
    load.require("half-lost", "write the jars that lost half of it or more, or none");
    return new JarRows(
        words.jars("jars"),
        words.jars("unsealed").orElse(JarNumbers.NONE),
        words.jars("some-lost").orElse(JarNumbers.NONE),
        words.jars("half-lost").orElse(JarNumbers.NONE),
        new TreeMap<>());
  }

  /** A load of which every jar is told by a row of its own; so far by none. */
  static JarRows oneByOne() {
    JarNumbers none = JarNumbers.NONE;
    return new JarRows(Optional.of(none), none, none, none, new TreeMap<>());
  }

  /** Jars of whose seals nothing is told yet, with notes on single ones. */
  static JarRows untold(Optional<JarNumbers> inLoad, List<Fields> notes) {
    JarNumbers none = JarNumbers.NONE;
    JarRows jars = new JarRows(inLoad, none, none, none, new TreeMap<>());
    for (Fields row : notes) {
      JarNumbers here = new RecordWords(row).jars("jar").orElse(none);
      row.text("note").ifPresent(n -> here.stream().forEach(number -> jars.notes.put(number, n)));
    }
    return jars;
  }

  /**
   * The same with a row that tells of a jar, or of some that came out alike.
   *
   * @param jars the numbers in the row
   */
  JarRows with(Fields row, JarNumbers jars, boolean listed) {
    RecordWords words = new RecordWords(row);
    TreeMap<Integer, String> more = new TreeMap<>(notes);
    row.text("note").ifPresent(n -> jars.stream().forEach(number -> more.put(number, n)));
    if (!listed) {
      row.require("sealed", "test the seal, and write yes or no");
      row.require("liquid", LIQUID);
    }
    Ticked sealed = words.ticked("sealed");
    if (row.has("sealed") && sealed == Ticked.BLANK) {
      row.problem("sealed", "a jar is sealed or it is not", "test the seal, and write yes or no");
    }
    Optional<Liquid> lost = words.read("liquid", Liquid::parse, LIQUID);
    if (listed) {
      agree(row, jars, sealed, lost);
      return new JarRows(inLoad, unsealed, someLost, halfLost, more);
    }
    return new JarRows(
        Optional.of(inLoad.orElse(JarNumbers.NONE).plus(jars)),
        sealed == Ticked.YES ? unsealed : unsealed.plus(jars),
        lost.filter(l -> l == Liquid.SOME).isPresent() ? someLost.plus(jars) : someLost,
        lost.filter(l -> l == Liquid.HALF_OR_MORE).isPresent() ? halfLost.plus(jars) : halfLost,
        more);
  }

  private void agree(Fields row, JarNumbers jars, Ticked sealed, Optional<Liquid> lost) {
    JarNumbers listedSealed = jars.minus(unsealed);
    boolean sealDiffers =
        (sealed == Ticked.NO && !listedSealed.isEmpty())
            || (sealed == Ticked.YES && !jars.in(unsealed).isEmpty());
    if (sealDiffers) {
      row.problem("sealed", "the load's row says otherwise of its seal", "say it once");
    }
    JarNumbers low = someLost.plus(halfLost);
    boolean liquidDiffers =
        lost.isPresent()
            && switch (lost.get()) {
              case NONE -> !jars.in(low).isEmpty();
              case SOME -> !jars.minus(someLost).isEmpty();
              case HALF_OR_MORE -> !jars.minus(halfLost).isEmpty();
            };
    if (liquidDiffers) {
      row.problem("liquid", "the load's row says otherwise of its liquid", "say it once");
    }
  }
}
