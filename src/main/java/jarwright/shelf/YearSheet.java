package jarwright.shelf;

import jarwright.page.PaperSize;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import jarwright.pantry.FoodYear;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Pace;
import jarwright.pantry.YearBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * A year on one page: what was put up, eaten and lost, how long the stock lasts, what to put up.
 */
public final class YearSheet {
  private static final String TEMPLATE = "year.ftl";

  /** So many foods fit on one side with a bar for each; of more, only the largest get bars. */
  private static final int MOST_BARS = 8;

  private static final int BARS_OF_MANY = 5;

  private final Wording words;
  private final Function<LotFacts, String> productName;

  /**
   * @param productName the name of a lot's product in the sheet's language
   */
  public YearSheet(Wording words, Function<LotFacts, String> productName) {
    this.words = words;
    this.productName = productName;
  }

  /**
   * The sheet of a year.
   *
   * @param household printed at the head, may be empty
   */
  public Sheet of(YearBook book, String household, PaperSize paper) {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("household", household);
    view.put("year", String.valueOf(book.year()));
    view.put("asOf", book.asOf().toString());
    Comparator<FoodYear> byName = Comparator.comparing(f -> productName.apply(f.facts()));
    view.put("foods", book.foods().stream().sorted(byName).map(this::food).toList());
    view.put("bars", bars(book));
    view.put("months", months(book));
    view.put("losses", losses(book));
    view.put("putUp", book.foods().stream().mapToInt(FoodYear::putUp).sum());
    view.put("eaten", book.foods().stream().mapToInt(FoodYear::eaten).sum());
    view.put("lost", book.foods().stream().mapToInt(FoodYear::lostInAll).sum());
    view.put("stock", book.foods().stream().mapToInt(FoodYear::stock).sum());
    view.put("unrecorded", book.unrecorded());
    view.put("leastJars", Pace.LEAST_JARS);
    view.put("leastDays", Pace.LEAST_DAYS);
    String title = words.text("year.title", Map.of("year", String.valueOf(book.year())));
    Sheet.About about = new Sheet.About(title, household, List.of(), book.asOf());
    return new Sheet(TEMPLATE, view, paper, words, about);
  }

  private Map<String, Object> food(FoodYear food) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("product", productName.apply(food.facts()));
    one.put("jar", food.facts().jar());
    one.put("before", food.before());
    one.put("putUp", food.putUp());
    one.put("eaten", food.eaten());
    one.put("lost", food.lostInAll());
    one.put("recanned", food.recanned());
    one.put("stock", food.stock());
    one.put("doubtful", food.doubtful());
    one.put("toThrowAway", food.toThrowAway());
    one.put("told", food.pace().isPresent());
    one.put("weeks", food.weeks().orElse(0));
    one.put("next", food.toPutUp().orElse(0));
    return one;
  }

  /** The foods with the most jars. */
  private List<Map<String, Object>> bars(YearBook book) {
    return book.foods().stream()
        .sorted(Comparator.comparing(YearSheet::size).reversed())
        .limit(book.foods().size() > MOST_BARS ? BARS_OF_MANY : MOST_BARS)
        .map(this::food)
        .toList();
  }

  private static int size(FoodYear food) {
    return food.putUp() + food.eaten() + food.stock();
  }

  private List<Map<String, Object>> months(YearBook book) {
    List<Map<String, Object>> months = new ArrayList<>();
    for (int i = 0; i < book.putUp().size(); i++) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("name", words.text("month.short." + (i + 1)));
      one.put("putUp", book.putUp().get(i));
      one.put("eaten", book.eaten().get(i));
      one.put("lost", book.lost().get(i));
      months.add(one);
    }
    return months;
  }

  /** Reasons over all foods, the commonest first. */
  private List<Map<String, Object>> losses(YearBook book) {
    Map<String, Integer> sums = new TreeMap<>();
    book.foods().forEach(f -> f.lost().forEach((why, n) -> sums.merge(why, n, Integer::sum)));
    List<Map.Entry<String, Integer>> reasons = new ArrayList<>(sums.entrySet());
    reasons.sort(Map.Entry.<String, Integer>comparingByValue().reversed());
    List<Map<String, Object>> losses = new ArrayList<>();
    for (Map.Entry<String, Integer> reason : reasons) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("why", why(reason.getKey()));
      one.put("jars", reason.getValue());
      losses.add(one);
    }
    return losses;
  }

  private String why(String reason) {
    if (reason.isEmpty()) {
      return words.text("year.no-reason");
    }
    return reason.equals(YearBook.NOT_FOUND) ? words.text("year.not-found") : reason;
  }
}
