package agro.course.topic.injury;

import agro.course.CourseUnits;
import agro.course.Difficulty;
import agro.course.Exercise;
import java.util.List;

/**
 * The answers by plain arithmetic in metres, kilograms and litres, with units typed out here, and
 * by asking at which number of pests a treatment neither gains nor loses.
 */
final class InjuryRoutes {

  private static final double SQUARE_METRES_IN_ACRE = 4046.8564224;
  private static final double KILOGRAMS_IN_POUND = 0.45359237;
  private static final double MILLILITRES_IN_FLUID_OUNCE = 29.5735295625;

  private InjuryRoutes() {}

  private static boolean metric(Exercise exercise) {
    return exercise.context().units().equals(CourseUnits.METRIC);
  }

  /** Square metres in the unit of land. */
  private static double land(Exercise exercise) {
    return metric(exercise) ? 10_000 : SQUARE_METRES_IN_ACRE;
  }

  /** Kilograms or pounds lost on the unit of land for one pest per plant or one insect-day. */
  private static double loss(Exercise exercise) {
    double kilograms = exercise.givens().base("loss") / 10_000 * land(exercise);
    return metric(exercise) ? kilograms : kilograms / KILOGRAMS_IN_POUND;
  }

  /** Price of a kilogram or a pound; a short ton has 2000 lb. */
  private static double price(Exercise exercise) {
    return exercise.givens().number("price") / (metric(exercise) ? 1000 : 2000);
  }

  /** Gain of treating on the unit of land. */
  private static double gain(Exercise exercise, double pests) {
    var givens = exercise.givens();
    double lost = pests * loss(exercise) * price(exercise);
    double lostInSpite = lost * (100 - givens.number("control")) / 100;
    return lost - lostInSpite - givens.number("cost");
  }

  /** The number of pests at which the straight line of the gain crosses zero. */
  private static double level(Exercise exercise) {
    double none = gain(exercise, 0);
    return none / (none - gain(exercise, 1));
  }

  static List<Object> formula(Exercise exercise) {
    return List.of(level(exercise));
  }

  static List<Object> gain(Exercise exercise) {
    double gain = exercise.givens().number("cost") / price(exercise);
    if (exercise.key().difficulty() == Difficulty.BASIC) {
      return List.of(gain);
    }
    double kilograms = exercise.givens().base("yield") / 10_000 * land(exercise);
    double yield = metric(exercise) ? kilograms : kilograms / KILOGRAMS_IN_POUND;
    return List.of(gain, gain / yield * 100, level(exercise));
  }

  static List<Object> change(Exercise exercise) {
    var givens = exercise.givens();
    double old = givens.number("level");
    // A treatment of 100 against a kilogram of 100, before and after.
    double cost = 100 + givens.number("cost");
    double price = 100 + givens.number("price");
    double level = old * cost / price;
    return exercise.key().difficulty() == Difficulty.BASIC
        ? List.of(level)
        : List.of(level, (level / old - 1) * 100);
  }

  static List<Object> threshold(Exercise exercise) {
    var givens = exercise.givens();
    double money = loss(exercise) * price(exercise);
    double level = level(exercise);
    double lead = givens.number("lead");
    if (exercise.key().difficulty() == Difficulty.ROUTINE) {
      double factor = Math.pow(2, 1 / givens.number("doubling"));
      double threshold = level;
      for (int day = 0; day < lead; day++) {
        threshold /= factor;
      }
      return List.of(money, level, threshold);
    }
    double daily =
        Math.pow(givens.number("later") / givens.number("earlier"), 1 / givens.number("days"));
    double later = givens.number("later") * Math.pow(daily, lead);
    return List.of(
        money,
        level,
        Math.log(daily),
        level / Math.pow(daily, lead),
        later >= level ? "treat" : "leave");
  }

  /** Insect-days day by day: half of both ends of each day along the straight line. */
  static List<Object> insectDays(Exercise exercise) {
    var givens = exercise.givens();
    var means = givens.numbers("means");
    double total = 0;
    double days = 0;
    for (int i = 0; i + 1 < means.size(); i++) {
      long span = givens.day("day" + (i + 1)).toEpochDay() - givens.day("day" + i).toEpochDay();
      for (int day = 0; day < span; day++) {
        double morning = means.get(i) + (means.get(i + 1) - means.get(i)) * day / span;
        double evening = means.get(i) + (means.get(i + 1) - means.get(i)) * (day + 1) / span;
        total += (morning + evening) / 2;
        days++;
      }
    }
    if (exercise.key().difficulty() == Difficulty.ROUTINE) {
      return List.of(total, total / days);
    }
    double loss = total * loss(exercise);
    return List.of(total, loss, loss * price(exercise), gain(exercise, total));
  }

  static List<Object> worth(Exercise exercise) {
    var givens = exercise.givens();
    double pests = givens.number("pests");
    double lost = pests * loss(exercise);
    double gain = gain(exercise, pests);
    if (exercise.key().difficulty() == Difficulty.ROUTINE) {
      return List.of(lost, lost * price(exercise), gain, gain > 0 ? "treat" : "leave");
    }
    // At the price that just pays, the level is the number of pests there are.
    double pays = givens.number("price") * level(exercise) / pests;
    return List.of(lost, lost * price(exercise), gain, pays);
  }

  static List<Object> row(Exercise exercise) {
    var givens = exercise.givens();
    double side = metric(exercise) ? 1 : 0.3048;
    double plants = side / givens.base("plant");
    double mean = givens.number("found") / givens.number("stretches") / givens.number("length");
    double perPlant = mean / plants;
    return List.of(
        plants,
        givens.number("threshold") * plants,
        mean,
        perPlant >= givens.number("threshold") ? "treat" : "leave");
  }

  static List<Object> costs(Exercise exercise) {
    var givens = exercise.givens();
    double litres = givens.base("rate") / 10_000 * land(exercise);
    double gallons = litres * 1000 / MILLILITRES_IN_FLUID_OUNCE / 128;
    double product = (metric(exercise) ? litres : gallons) * givens.number("productPrice");
    double cost = product + givens.number("passage");
    double saved =
        givens.number("value") * givens.number("percent") * givens.number("control") / 10_000;
    double level = cost / saved;
    double all = level + givens.number("environment") / saved;
    return List.of(cost, level, all, all - all / 4);
  }
}
