package jarwright.files;

import jarwright.process.AcidDose;
import jarwright.process.AcidKind;
import jarwright.process.AcidRule;
import jarwright.process.Headspace;
import jarwright.process.HeadspaceRule;
import jarwright.process.JarSize;
import jarwright.process.Pack;
import jarwright.process.SaltRule;
import jarwright.quantity.Fraction;
import jarwright.quantity.Length;
import jarwright.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The cells of products.csv that hold a rule: headspace, acid, salt. */
final class ProductRules {
  private static final List<String> IN_FORMULA = List.of("in-recipe", "in-formula");

  /** The guide's "lemon juice" in a dose is the bottled one: only that has a known strength. */
  private static final Map<String, AcidKind> ACIDS =
      Map.of(
          "citric acid", AcidKind.CITRIC_ACID,
          "bottled lemon juice", AcidKind.BOTTLED_LEMON_JUICE,
          "lemon juice", AcidKind.BOTTLED_LEMON_JUICE,
          "vinegar (5%)", AcidKind.VINEGAR);

  private static final Pattern DOSE = Pattern.compile("([0-9/-]+ (?:tsp|Tbsp)) (.+)");
  private static final Pattern SALT =
      Pattern.compile("([0-9/]+)(?:-[0-9/]+)? tsp(?: \\(optional\\))?");
  private static final Pattern SALT_PER_PINT =
      Pattern.compile(
          "(?:[0-9/]+ tsp per half-pint or )?([0-9/]+) tsp per pint( \\(in formula\\))?");

  private ProductRules() {}

  /** {@code 1/2} or {@code solids:1;liquid:1/2} or {@code raw-quart-small-beans:1-1/2}, inches. */
  static HeadspaceRule headspace(String cell) {
    List<HeadspaceRule.Case> cases = new ArrayList<>();
    for (String part : cell.split(";", -1)) {
      int colon = part.indexOf(':');
      String when = colon < 0 ? "" : part.substring(0, colon);
      Length depth = Length.inches(Fraction.parse(part.substring(colon + 1)));
      if (depth.inInches().signum() <= 0 || (colon < 0) != cell.equals(part) || colon == 0) {
        throw new IllegalArgumentException(
            "headspace_in \"" + cell + "\" is not like 1/2 or solids:1;liquid:1/2");
      }
      cases.add(new HeadspaceRule.Case(when, new Headspace(measuredTo(when), depth)));
    }
    return new HeadspaceRule(cases);
  }

  private static String measuredTo(String when) {
    List<String> words = new ArrayList<>(List.of(when.split("-")));
    words.removeAll(Pack.choices());
    words.removeAll(List.of(JarSize.PINT.id(), JarSize.QUART.id()));
    String left = String.join("-", words);
    if (!List.of("", "solids", "liquid", "small-beans", "large-beans").contains(left)) {
      throw new IllegalArgumentException("headspace_in measures to \"" + left + "\", unknown");
    }
    return left;
  }

  static AcidRule acid(String perPint, String perQuart) {
    if (perPint.equals("none") && perQuart.equals("none")) {
      return new AcidRule.None();
    }
    if (IN_FORMULA.contains(perPint) && perQuart.equals(perPint)) {
      return new AcidRule.InFormula();
    }
    if (perPint.startsWith("fermented (") && perQuart.equals(perPint)) {
      return new AcidRule.Fermented();
    }
    List<AcidDose> doses = new ArrayList<>(doses(JarSize.PINT, perPint));
    doses.addAll(doses(JarSize.QUART, perQuart));
    return new AcidRule.PerJar(doses);
  }

  private static List<AcidDose> doses(JarSize jar, String cell) {
    List<AcidDose> doses = new ArrayList<>();
    for (String part : cell.isEmpty() ? new String[0] : cell.split(" \\| ", -1)) {
      Matcher dose = DOSE.matcher(part);
      AcidKind kind = dose.matches() ? ACIDS.get(dose.group(2)) : null;
      if (kind == null) {
        throw new IllegalArgumentException(
            "acid \""
                + part
                + "\" is not like \"2 Tbsp bottled lemon juice\"; acids: "
                + ACIDS.keySet());
      }
      doses.add(new AcidDose(kind, jar, Volume.parse(dose.group(1))));
    }
    if (doses.stream().map(AcidDose::kind).distinct().count() != doses.size()) {
      throw new IllegalArgumentException("acid \"" + cell + "\" doses one acid twice");
    }
    return doses;
  }

  static SaltRule salt(String cell) {
    if (cell.equals("none")) {
      return new SaltRule(SaltRule.Kind.NONE, Optional.empty(), JarSize.QUART);
    }
    if (IN_FORMULA.contains(cell)) {
      return new SaltRule(SaltRule.Kind.IN_FORMULA, Optional.empty(), JarSize.QUART);
    }
    if (cell.equals("in-brine")) {
      return new SaltRule(SaltRule.Kind.BRINE, Optional.empty(), JarSize.QUART);
    }
    if (cell.equals("to taste")) {
      return new SaltRule(SaltRule.Kind.TASTE, Optional.empty(), JarSize.QUART);
    }
    Matcher perQuart = SALT.matcher(cell);
    if (perQuart.matches()) {
      return new SaltRule(SaltRule.Kind.TASTE, teaspoons(perQuart.group(1)), JarSize.QUART);
    }
    Matcher perPint = SALT_PER_PINT.matcher(cell);
    if (perPint.matches()) {
      SaltRule.Kind kind =
          perPint.group(2) == null ? SaltRule.Kind.TASTE : SaltRule.Kind.IN_FORMULA;
      return new SaltRule(kind, teaspoons(perPint.group(1)), JarSize.PINT);
    }
    throw new IllegalArgumentException(
        "salt_per_quart \"" + cell + "\" is not like 1 tsp, 1/2 tsp per pint, to taste or none");
  }

  private static Optional<Volume> teaspoons(String amount) {
    return Optional.of(Volume.of(Fraction.parse(amount), Volume.Unit.TSP));
  }
}
