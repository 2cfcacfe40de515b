package agro.course.marking;

import agro.course.ExercisePart;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Shares the marks of an exercise among its parts, and the marks of a part by a share. */
public final class MarkShares {

  /** The smallest mark: a half. */
  private static final double STEP = 0.5;

  private static final double ROUNDING = 1e-9;

  private MarkShares() {}

  /**
   * The marks of each part by its weight, in halves where the total allows, the largest remainders
   * first, so that they add up to the total exactly.
   *
   * @param parts the parts of an exercise
   * @param of marks that the exercise is worth
   * @return the marks of each part
   */
  public static List<Double> share(List<ExercisePart> parts, double of) {
    double weights = parts.stream().mapToDouble(ExercisePart::weight).sum();
    var exact = parts.stream().map(part -> of * part.weight() / weights).toList();
    double steps = of / STEP;
    if (Math.abs(steps - Math.rint(steps)) > ROUNDING || steps < parts.size()) {
      return exact;
    }
    int[] halves = new int[parts.size()];
    for (int i = 0; i < halves.length; i++) {
      halves[i] = Math.max(1, (int) Math.floor(exact.get(i) / STEP + ROUNDING));
    }
    settle(halves, exact, (int) Math.rint(steps));
    var shared = new ArrayList<Double>();
    for (int half : halves) {
      shared.add(half * STEP);
    }
    return List.copyOf(shared);
  }

  private static void settle(int[] halves, List<Double> exact, int total) {
    int left = total - IntStream.of(halves).sum();
    while (left != 0) {
      int direction = Integer.signum(left);
      int best =
          IntStream.range(0, halves.length)
              .boxed()
              .filter(i -> direction > 0 || halves[i] > 1)
              .max(Comparator.comparingDouble(i -> direction * (exact.get(i) / STEP - halves[i])))
              .orElseThrow();
      halves[best] += direction;
      left -= direction;
    }
  }

  /**
   * A share of the marks of a part in halves, in the student's favour, but never all for less than
   * the whole and never nothing for more than nothing.
   */
  static double award(double of, double share) {
    if (share >= 1 || share <= 0) {
      return share >= 1 ? of : 0;
    }
    double exact = of * share;
    double up = Math.floor(exact / STEP + 0.5 + ROUNDING) * STEP;
    double rounded = up >= of ? Math.floor(exact / STEP + ROUNDING) * STEP : up;
    return rounded > 0 && rounded < of ? rounded : exact;
  }
}
