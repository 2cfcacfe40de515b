package agro.demo;

import agro.units.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * The book of an invented rearing of leek moth from egg to adult: seven temperatures with two
 * cabinets each, looked at once a day. A cabinet is never quite at the temperature to which it was
 * set, and its logger is a little off too; animals differ, some die, and the slow ones of the
 * coldest cabinets are still alive when the rearing ends.
 */
public final class RearingBook {
  /** Temperatures to which the cabinets are set, °C. */
  static final List<Integer> SET_CELSIUS = List.of(11, 14, 17, 20, 24, 28, 32);

  private static final int CABINETS = 2;
  private static final int EGGS = 18;
  private static final int LAST_LOOK = 118;

  /** Between-individual spread of the duration, as a share. */
  private static final double INDIVIDUAL_CV = 0.06;

  /** Between-cabinet spread of the duration beyond what temperature explains, as a share. */
  private static final double CABINET_CV = 0.012;

  private static final double SETTING_SD = 0.35;
  private static final double LOGGER_SD = 0.08;
  private static final double SOFT_CELSIUS = 1.1;
  private static final double FALL_CELSIUS = 2.6;
  private static final double TOO_HOT_CELSIUS = 35;

  private RearingBook() {}

  /**
   * The true rate of development at a constant temperature: the warmth above the threshold of the
   * vale's leek moth over its requirement, with a soft foot, less an exponential loss in the heat.
   * No model of the library has this form.
   *
   * @param celsius constant temperature
   * @return rate in 1/d, 0 where it is too hot
   */
  public static double trueRate(double celsius) {
    double above = (celsius - Pest.LEEK_MOTH.lowerCelsius) / SOFT_CELSIUS;
    double warmth = SOFT_CELSIUS * StrictMath.log1p(StrictMath.exp(above));
    double left = 1 - StrictMath.exp((celsius - TOO_HOT_CELSIUS) / FALL_CELSIUS);
    return Math.max(0, warmth * left / Pest.LEEK_MOTH.life.eggToAdult());
  }

  /** The book as a file: one line for each vial. */
  static String of(long seed) {
    var lines = new ArrayList<String>();
    lines.add("# invented for demonstration, seed " + seed);
    lines.add("# leek moth, egg to adult, one egg to a vial, looked at once a day");
    lines.add("cabinet,set_celsius,measured_celsius,vial,from_days,to_days,fate");
    for (int set : SET_CELSIUS) {
      for (int number = 0; number < CABINETS; number++) {
        cabinet(set, set + (number == 0 ? "A" : "B"), seed, lines);
      }
    }
    return String.join("\n", lines) + "\n";
  }

  private static void cabinet(int set, String name, long seed, List<String> lines) {
    var draws = Draws.of(seed, "rearing in " + name);
    double celsius = set + SETTING_SD * draws.gaussian();
    String measured = Numbers.fixed(celsius + LOGGER_SD * draws.gaussian(), 1);
    double luck = StrictMath.exp(CABINET_CV * draws.gaussian());
    double loss = set <= 11 ? 0.16 : set >= 32 ? 0.35 : 0.08;
    for (int vial = 1; vial <= EGGS; vial++) {
      double days = luck * StrictMath.exp(INDIVIDUAL_CV * draws.gaussian()) / trueRate(celsius);
      boolean dies = draws.uniform() < loss;
      // The last look at which a dead one lived, or the first at which an adult is there.
      int until = (int) Math.ceil(dies ? days * draws.uniform() : days);
      var head = name + "," + set + "," + measured + "," + name + "-" + vial + ",";
      if (Math.max(until, 1) > LAST_LOOK) {
        lines.add(head + LAST_LOOK + ",,alive");
      } else if (dies) {
        lines.add(head + Math.max(until, 1) + ",,died");
      } else {
        lines.add(head + (until - 1) + "," + until + ",developed");
      }
    }
  }
}
