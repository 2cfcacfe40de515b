package agro.demo;

import java.time.LocalDate;
import java.util.List;

/**
 * Vials coated with an insecticide, ten larvae of diamondback moth in each: a susceptible reference
 * strain and that of the vale on three days. Some die in clean vials too, days differ a little, and
 * a few of the dying still twitch when the vials are read.
 */
public final class VialBook {
  /** Inner area of a vial, cm². */
  static final double VIAL_CM2 = 38.5;

  /** Share that dies in clean vials. */
  static final double NATURAL = 0.05;

  /** A strain: the dose for one half, µg per vial, and the slope on log10 dose in probits. */
  enum Strain {
    /** Kept for years without insecticides. */
    REFERENCE("reference", 0.30, 2.2, List.of("0", "0.05", "0.1", "0.2", "0.5", "1", "2")),
    /** From Mill Field. */
    VALE("vale", 2.4, 1.8, List.of("0", "0.2", "0.5", "1", "2", "5", "10", "20"));

    private final String title;
    final double medianDose;
    final double slope;
    private final List<String> doses;

    Strain(String title, double medianDose, double slope, List<String> doses) {
      this.title = title;
      this.medianDose = medianDose;
      this.slope = slope;
      this.doses = doses;
    }
  }

  private static final List<LocalDate> DAYS =
      List.of(LocalDate.of(2026, 5, 6), LocalDate.of(2026, 5, 12), LocalDate.of(2026, 5, 20));
  private static final int VIALS = 2;
  private static final int LARVAE = 10;
  private static final double DAY_SD = 0.03;
  private static final double MORIBUND = 0.1;

  private VialBook() {}

  /** The book: one line for each vial. */
  static String table(long seed) {
    var lines = new StringBuilder();
    lines.append(
        "# dose in µg per vial, inner area of a vial " + VIAL_CM2 + " cm², read after 24 h\n");
    lines.append("vial,series,day,dose,inner_area_cm2,dead,moribund,alive\n");
    int number = 1;
    for (var strain : Strain.values()) {
      for (var day : DAYS) {
        var luck = Draws.of(seed, "vials of " + strain.title + " on " + day);
        double shift = DAY_SD * luck.gaussian();
        for (var dose : strain.doses) {
          for (int vial = 0; vial < VIALS; vial++) {
            lines.append(number++).append(',').append(strain.title).append(',').append(day);
            lines.append(',').append(dose).append(',').append(VIAL_CM2).append(',');
            var draws = Draws.of(seed, "coated vial " + (number - 1));
            lines.append(vial(strain, Double.parseDouble(dose), shift, draws)).append('\n');
          }
        }
      }
    }
    return lines.toString();
  }

  /** Every larva dies by itself, or has a tolerance of its own. */
  private static String vial(Strain strain, double dose, double shift, Draws draws) {
    int dead = 0;
    int moribund = 0;
    for (int larva = 0; larva < LARVAE; larva++) {
      boolean natural = draws.uniform() < NATURAL;
      double tolerance =
          StrictMath.log10(strain.medianDose) + shift + draws.gaussian() / strain.slope;
      boolean hit = dose > 0 && StrictMath.log10(dose) > tolerance;
      boolean twitches = draws.uniform() < MORIBUND;
      moribund += hit && !natural && twitches ? 1 : 0;
      dead += natural || (hit && !twitches) ? 1 : 0;
    }
    return dead + "," + moribund + "," + (LARVAE - dead - moribund);
  }

  /** The truth behind the vials. */
  static String truth() {
    var lines = new StringBuilder();
    lines.append("# dead or moribund, probit on log10 dose; natural mortality " + NATURAL);
    lines.append("; days shift the logarithm by a standard deviation of " + DAY_SD + "\n");
    lines.append("series,median_dose_ug_per_vial,slope\n");
    for (var strain : Strain.values()) {
      lines.append(strain.title + "," + strain.medianDose + "," + strain.slope + "\n");
    }
    return lines.toString();
  }
}
