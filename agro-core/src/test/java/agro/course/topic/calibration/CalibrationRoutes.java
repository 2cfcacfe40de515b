package agro.course.topic.calibration;

import agro.course.CourseUnits;
import agro.course.Difficulty;
import agro.course.Exercise;
import agro.course.ExerciseContract.OtherRoute;
import agro.course.Givens;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The same answers from litres, metres and seconds, as water that falls on ground: nothing of the
 * library but the givens.
 */
final class CalibrationRoutes {

  private static final double MILE = 1609.344;
  private static final double FOOT = 0.3048;
  private static final double GALLON = 3.785411784;
  private static final double OUNCE = GALLON / 128;
  private static final double ACRE = 4046.8564224;
  private static final double HECTARE = 10_000;
  private static final double POUND_PER_SQUARE_INCH = 0.45359237 * 9.80665 / 0.0254 / 0.0254 / 1000;
  private static final List<Double> SIZES = List.of(1., 1.5, 2., 2.5, 3., 4., 5., 6., 8.);
  private static final List<String> CODES =
      List.of("01", "015", "02", "025", "03", "04", "05", "06", "08");

  static final Map<String, OtherRoute> ALL =
      Map.of(
          "calibration-speed",
          CalibrationRoutes::speed,
          "calibration-pressure",
          CalibrationRoutes::pressure,
          "calibration-density",
          CalibrationRoutes::density,
          "calibration-course",
          CalibrationRoutes::course,
          "calibration-boom",
          CalibrationRoutes::boom,
          "calibration-knapsack",
          CalibrationRoutes::knapsack,
          "calibration-mismatch",
          CalibrationRoutes::mismatch,
          "calibration-time",
          CalibrationRoutes::time,
          "calibration-catch",
          CalibrationRoutes::catches,
          "calibration-nozzle",
          CalibrationRoutes::nozzle);

  private CalibrationRoutes() {}

  private static boolean metric(Exercise exercise) {
    return exercise.context().units().equals(CourseUnits.METRIC);
  }

  private static double water(Exercise exercise) {
    return metric(exercise) ? 1 : GALLON;
  }

  private static double land(Exercise exercise) {
    return metric(exercise) ? HECTARE : ACRE;
  }

  private static double pressureUnit(Exercise exercise) {
    return metric(exercise) ? 100 : POUND_PER_SQUARE_INCH;
  }

  /** Litres per square metre in the unit of the answer. */
  private static double printed(double depth, Exercise exercise) {
    return depth * land(exercise) / water(exercise);
  }

  private static List<Object> speed(Exercise exercise) {
    double metres = exercise.givens().base("course");
    double hours = exercise.givens().number("seconds") / 3600;
    return List.of(metres / hours / (metric(exercise) ? 1000 : MILE));
  }

  /** q = c √p with a constant c of the nozzle. */
  private static List<Object> pressure(Exercise exercise) {
    var givens = exercise.givens();
    double constant = givens.base("flow") / Math.sqrt(givens.base("pressure"));
    double flow = constant * Math.sqrt(givens.base("other"));
    var answers = new ArrayList<Object>();
    answers.add(flow / water(exercise));
    if (exercise.key().difficulty() == Difficulty.ROUTINE) {
      double wanted = flow + flow * givens.number("change") / 100;
      answers.add(wanted * wanted / constant / constant / pressureUnit(exercise));
    }
    return answers;
  }

  /** What flows through a nozzle carries the same energy: ρ v² is the same for both liquids. */
  private static List<Object> density(Exercise exercise) {
    double slower = Math.exp(-0.5 * Math.log(exercise.givens().number("gravity")));
    double litresPerSquareMetre = exercise.givens().base("volume") / HECTARE;
    return List.of(printed(litresPerSquareMetre / slower, exercise));
  }

  private static List<Object> course(Exercise exercise) {
    var givens = exercise.givens();
    boolean metric = metric(exercise);
    double area = metric ? 10 : ACRE / 128;
    var answers = new ArrayList<Object>();
    answers.add(area / givens.base("spacing") / (metric ? 1 : FOOT));
    if (exercise.key().difficulty() == Difficulty.ROUTINE) {
      double depth = givens.base("caught") / (area * givens.number("times"));
      answers.add(printed(depth, exercise));
      answers.add(givens.base("tank") / depth / land(exercise));
    }
    return answers;
  }

  /** Water of all nozzles in an hour on the ground of that hour. */
  private static List<Object> boom(Exercise exercise) {
    var givens = exercise.givens();
    double perSecond = givens.base("caught") / givens.number("seconds");
    double water = 3600 * perSecond * givens.number("nozzles");
    double ground = 3600 * givens.base("speed") * givens.base("spacing") * givens.number("nozzles");
    return List.of(60 * perSecond / water(exercise), printed(water / ground, exercise));
  }

  private static List<Object> knapsack(Exercise exercise) {
    var givens = exercise.givens();
    double plot = givens.base("length") * givens.base("width");
    double depth = (givens.base("tank") - givens.base("left")) / plot;
    double area = givens.base("tank") / depth;
    double product = givens.base("rate") / HECTARE * area;
    return List.of(
        printed(depth, exercise),
        area / (metric(exercise) ? 1 : FOOT * FOOT),
        product / (metric(exercise) ? 0.001 : OUNCE));
  }

  private static List<Object> mismatch(Exercise exercise) {
    var givens = exercise.givens();
    double depth = givens.base("flow") / 60 / (givens.base("speed") * givens.base("swath"));
    double strength = givens.base("dose") / givens.base("mixedFor");
    double dose = strength * depth;
    double intended = givens.base("dose") / HECTARE;
    return List.of(
        printed(depth, exercise),
        dose * land(exercise) / (metric(exercise) ? 0.001 : OUNCE),
        100 * (dose - intended) / intended);
  }

  /** Tank by tank until nothing is left to spray. */
  private static List<Object> time(Exercise exercise) {
    var givens = exercise.givens();
    double left = givens.base("volume") / HECTARE * givens.base("area");
    double fillings = 0;
    double minutes = 0;
    while (left > 1e-9) {
      double load = Math.min(left, givens.base("tank"));
      fillings++;
      minutes += givens.base("filling") / 60 + load / givens.base("flow");
      left -= load;
    }
    return List.of(fillings, givens.base("tank") / givens.base("flow"), minutes);
  }

  private static List<Object> catches(Exercise exercise) {
    var givens = exercise.givens();
    var readings = givens.numbers("readings");
    double unit = metric(exercise) ? 0.001 : OUNCE;
    double sum = 0;
    double squares = 0;
    for (double reading : readings) {
      sum += reading;
      squares += reading * reading;
    }
    int n = readings.size();
    double mean = sum / n;
    var answers = new ArrayList<Object>();
    answers.add(mean * unit * 60 / givens.number("seconds") / water(exercise));
    var outside = above(readings, 1.1 * mean);
    for (int i = 0; i < n; i++) {
      if (readings.get(i) < 0.9 * mean) {
        outside.add(String.valueOf(i + 1));
      }
    }
    answers.add(outside);
    if (exercise.key().difficulty() == Difficulty.DEMANDING) {
      answers.add(100 * Math.sqrt((squares - n * mean * mean) / (n - 1)) / mean);
      double fresh = givens.base("new") * givens.number("seconds") / 60 / unit;
      answers.add(above(readings, 1.1 * fresh));
    }
    return answers;
  }

  private static Set<String> above(List<Double> readings, double limit) {
    var named = new TreeSet<String>();
    for (int i = 0; i < readings.size(); i++) {
      if (readings.get(i) > limit) {
        named.add(String.valueOf(i + 1));
      }
    }
    return named;
  }

  /** Nominal flows: 0.4 L/min at 3 bar, or 0.1 gal/min at 40 psi, for each tenth. */
  private static List<Object> nozzle(Exercise exercise) {
    Givens givens = exercise.givens();
    double flow =
        60 * givens.base("volume") / HECTARE * givens.base("speed") * givens.base("spacing");
    double perTenth = metric(exercise) ? 0.4 : 0.1 * GALLON;
    double nominal = (metric(exercise) ? 3 : 40) * pressureUnit(exercise);
    int best = 0;
    double pressure = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < SIZES.size(); i++) {
      double constant = SIZES.get(i) * perTenth / Math.sqrt(nominal);
      double off = Math.abs(constant * Math.sqrt(givens.base("pressure")) - flow);
      if (off < least) {
        least = off;
        best = i;
        pressure = flow * flow / constant / constant;
      }
    }
    return List.of(flow / water(exercise), CODES.get(best), pressure / pressureUnit(exercise));
  }
}
