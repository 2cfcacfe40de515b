package agro.weather.climate;

import java.time.LocalDate;

/** The place of a day in its year, so that leap years and common years are equally long. */
final class YearPhase {

  private YearPhase() {}

  /** Angle of the middle of a day, 0 at the beginning of the year and 2π at its end. */
  static double of(LocalDate day) {
    return 2 * Math.PI * (day.getDayOfYear() - 0.5) / day.lengthOfYear();
  }

  /** The basis of a harmonic curve: 1, cos, sin, cos of twice the angle and so on. */
  static double[] basis(double phase, int harmonics) {
    var basis = new double[2 * harmonics + 1];
    basis[0] = 1;
    for (int h = 1; h <= harmonics; h++) {
      basis[2 * h - 1] = Math.cos(h * phase);
      basis[2 * h] = Math.sin(h * phase);
    }
    return basis;
  }
}
