package agro.course.topic.rotation;

import agro.course.CourseUnits;
import agro.course.Difficulty;
import agro.course.Exercise;
import agro.course.ExerciseContract.OtherRoute;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The same answers from the calendar, by counting days and sprays one by one. */
final class RotationRoutes {

  private static final double ACRE = 4046.8564224;
  private static final double OUNCE_LITRES = 3.785411784 / 128;
  private static final double POUND = 0.45359237;
  private static final Pattern USE =
      Pattern.compile("window=(\\d+), product=(\\w+), groups=([0-9A-Z+]+)");

  static final Map<String, OtherRoute> ALL =
      Map.of(
          "rotation-interval",
          RotationRoutes::interval,
          "rotation-limit",
          RotationRoutes::limit,
          "rotation-breach",
          RotationRoutes::breach,
          "rotation-groups",
          RotationRoutes::groups,
          "rotation-harvest",
          RotationRoutes::harvest,
          "rotation-left",
          RotationRoutes::left,
          "rotation-active",
          RotationRoutes::active,
          "rotation-season",
          RotationRoutes::season);

  private RotationRoutes() {}

  private record Use(int window, String product, List<Integer> numbers) {}

  private static boolean metric(Exercise exercise) {
    return exercise.context().units().equals(CourseUnits.METRIC);
  }

  /** Leaves of the calendar torn off one by one. */
  private static LocalDate after(LocalDate day, double days) {
    var later = day;
    for (int i = 0; i < days; i++) {
      later = later.plusDays(1);
    }
    return later;
  }

  private static List<Object> interval(Exercise exercise) {
    var givens = exercise.givens();
    return List.of(after(givens.day("sprayed"), givens.number("interval")));
  }

  private static List<Object> harvest(Exercise exercise) {
    var givens = exercise.givens();
    var last = LocalDate.of(2027, 1, 1);
    // The last day from which the waiting days end on the day of harvest or before it.
    while (!after(last.plusDays(1), givens.number("harvest")).isAfter(givens.day("day"))) {
      last = last.plusDays(1);
    }
    var sprayed = after(last, givens.number("late"));
    var entry = sprayed.atTime(18, 0).plusHours((long) givens.number("hours")).toLocalDate();
    return List.of(last, after(sprayed, givens.number("harvest")), entry);
  }

  private static List<Object> limit(Exercise exercise) {
    var givens = exercise.givens();
    double most = givens.number("most");
    double interval = givens.number("interval");
    double harvest = givens.number("harvest");
    long since = givens.day("asked").toEpochDay() - givens.day("sprayed").toEpochDay();
    long before = givens.day("day").toEpochDay() - givens.day("asked").toEpochDay();
    if ((most > 0 && most < 2) || since < interval || before < harvest) {
      return List.of("no");
    }
    return List.of(most < 0 || interval < 0 || harvest < 0 ? "look" : "yes");
  }

  private static List<Use> uses(String text) {
    var uses = new ArrayList<Use>();
    var match = USE.matcher(text);
    while (match.find()) {
      var numbers = new ArrayList<Integer>();
      for (var code : match.group(3).split("\\+", -1)) {
        numbers.add(Integer.valueOf(code.replaceAll("\\D", "")));
      }
      uses.add(new Use(Integer.parseInt(match.group(1)), match.group(2), numbers));
    }
    return uses;
  }

  private static List<Object> breach(Exercise exercise) {
    var uses = uses(exercise.givens().text("uses"));
    for (var before : uses) {
      for (var after : uses) {
        if (after.window() == before.window() + 1
            && after.numbers().stream().anyMatch(before.numbers()::contains)) {
          return List.of(after.product());
        }
      }
    }
    return List.of("none");
  }

  private static List<Object> groups(Exercise exercise) {
    var past = uses(exercise.givens().text("past"));
    var resting = past.get(past.size() - 1).numbers();
    var groups = new TreeSet<String>();
    var products = new TreeSet<String>();
    for (var product : uses(exercise.givens().text("products"))) {
      boolean all = true;
      for (int number : product.numbers()) {
        if (resting.contains(number)) {
          all = false;
        } else {
          groups.add(String.valueOf(number));
        }
      }
      if (all) {
        products.add(product.product());
      }
    }
    return exercise.key().difficulty() == Difficulty.ROUTINE
        ? List.<Object>of(groups, products)
        : List.<Object>of((Set<String>) groups);
  }

  private static List<Object> left(Exercise exercise) {
    var givens = exercise.givens();
    double litres = givens.base("maximum");
    double sprays = givens.number("most");
    for (int i = 0; givens.values().containsKey("day" + i); i++) {
      if (givens.text("product" + i).equals("A") && givens.day("day" + i).getYear() == 2027) {
        litres -= givens.base("dose" + i);
        sprays--;
      }
    }
    double full = 0;
    while (full < sprays && (full + 1) * givens.base("dose") <= litres + 1e-9) {
      full++;
    }
    double unit = metric(exercise) ? 0.001 : OUNCE_LITRES * 10_000 / ACRE;
    return List.of(sprays, litres / unit, full);
  }

  private static List<Object> active(Exercise exercise) {
    var givens = exercise.givens();
    double grams = 0;
    for (int i = 0; i < givens.number("sprays"); i++) {
      grams += givens.base("dose") * givens.base("content");
    }
    grams += givens.base("otherDose") * givens.base("otherContent");
    double left = 1000 * givens.base("maximum") - grams;
    double litres = left / givens.base("content");
    boolean metric = metric(exercise);
    double mass = metric ? 1 : 1000 * POUND * 10_000 / ACRE;
    double volume = metric ? 0.001 : OUNCE_LITRES * 10_000 / ACRE;
    return List.of(grams / mass, left / mass, litres / volume);
  }

  /** Day by day through the season: spray whenever nothing forbids it. */
  private static List<Object> season(Exercise exercise) {
    var givens = exercise.givens();
    double free = season(exercise, 1, 99, 99);
    double ofA = season(exercise, 3, givens.number("mostA"), 0);
    double all = season(exercise, 3, givens.number("mostA"), givens.number("mostB"));
    return List.of(free, ofA, all);
  }

  private static double season(Exercise exercise, int windows, double mostA, double mostB) {
    double length = exercise.givens().number("window");
    double interval = exercise.givens().number("interval");
    double sprays = 0;
    double leftOfA = mostA;
    double leftOfB = mostB;
    double last = Double.NEGATIVE_INFINITY;
    for (int day = 0; day < windows * length; day++) {
      int window = (int) (day / length);
      if (day % length == 0) {
        // Windows are counted by themselves, as the question says.
        last = Double.NEGATIVE_INFINITY;
      }
      boolean other = window == 1;
      if (day - last >= interval && (other ? leftOfB : leftOfA) > 0) {
        sprays++;
        last = day;
        leftOfB -= other ? 1 : 0;
        leftOfA -= other ? 0 : 1;
      }
    }
    return sprays;
  }
}
