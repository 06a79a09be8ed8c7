package jarwright.render;

import java.awt.image.BufferedImage;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The ways in which the program looks at a picture, for tests that count what each is worth. */
public final class Looks {
  private Looks() {}

  public static List<String> all() {
    return Stream.of(CodeFinder.Look.values()).map(Enum::name).toList();
  }

  /** The texts found by these looks alone. */
  public static Set<String> texts(BufferedImage picture, List<String> looks) {
    EnumSet<CodeFinder.Look> chosen = EnumSet.noneOf(CodeFinder.Look.class);
    looks.forEach(l -> chosen.add(CodeFinder.Look.valueOf(l)));
    return CodeFinder.texts(GreyPicture.of(picture), chosen);
  }
}
