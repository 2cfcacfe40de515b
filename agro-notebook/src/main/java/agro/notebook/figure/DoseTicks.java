package agro.notebook.figure;

import agro.units.Numbers;
import java.util.ArrayList;
import java.util.List;

/** The numbers on a dose axis, on a logarithm or plain: as many round ones as find room. */
final class DoseTicks {

  private static final int MOST_WIDE = 16;

  /** Decades up to which the axis is divided like a plain one, and up to which into all digits. */
  private static final double NARROW = 0.5;

  private static final double CLOSE = 1.15;
  private static final int[] EVERY_DIGIT = {1, 2, 3, 4, 5, 6, 7, 8, 9};
  private static final int[] USUAL_DIGITS = {1, 2, 5};
  private static final int[] TENS = {1};

  private DoseTicks() {}

  /** Round doses whose common logarithms lie between two places. */
  static List<Double> ofLogarithm(double from, double to) {
    if (to - from < NARROW) {
      return ofPlain(Math.pow(10, from), Math.pow(10, to));
    }
    if (to - from < CLOSE) {
      return digits(from, to, EVERY_DIGIT, 1);
    }
    var usual = digits(from, to, USUAL_DIGITS, 1);
    int power = 1;
    while (usual.size() > MOST_WIDE) {
      usual = digits(from, to, TENS, power++);
    }
    return usual;
  }

  private static List<Double> digits(double from, double to, int[] digits, int everyPower) {
    var doses = new ArrayList<Double>();
    for (int power = (int) Math.floor(from); power <= Math.ceil(to); power++) {
      for (int digit : digits) {
        double place = power + Math.log10(digit);
        if (Math.floorMod(power, everyPower) == 0 && place >= from - 1e-9 && place <= to + 1e-9) {
          doses.add(digit * Math.pow(10, power));
        }
      }
    }
    return List.copyOf(doses);
  }

  /** Round doses between two. */
  static List<Double> ofPlain(double from, double to) {
    double step = NumberAxis.step(from, to);
    var doses = new ArrayList<Double>();
    for (double i = Math.ceil(from / step - 1e-9); i * step <= to + 1e-9 * step; i++) {
      doses.add(i * step);
    }
    return List.copyOf(doses);
  }

  /** A tick in print: no digits that come from the binary fraction. */
  static String words(double dose) {
    return Numbers.significant(dose, 6);
  }
}
