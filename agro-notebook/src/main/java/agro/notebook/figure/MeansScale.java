package agro.notebook.figure;

import agro.trial.analysis.AnalysedTrial;
import agro.trial.analysis.AnalysisRoute;
import agro.trial.analysis.Transformation;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * An axis of values that is ruled on the scale of an analysis, so that one difference is as long
 * everywhere as it counts there. Routes without a transformation have plain values.
 */
final class MeansScale {

  private static final double LEAST_GAP = 0.065;

  private final Transformation transformation;

  private MeansScale(Transformation transformation) {
    this.transformation = transformation;
  }

  static MeansScale of(AnalysedTrial analysed) {
    return new MeansScale(
        analysed.subject().route() == AnalysisRoute.NORMAL
            ? analysed.subject().transformation()
            : Transformation.none());
  }

  boolean isPlain() {
    return transformation.isNone();
  }

  String words() {
    return transformation.words();
  }

  double value(double place) {
    return transformation.back(place);
  }

  /** Place of a value; NaN where the scale does not reach. */
  double place(double value) {
    return Double.isFinite(value) && transformation.refusal(value, OptionalInt.empty()).isEmpty()
        ? transformation.apply(value, OptionalInt.empty())
        : Double.NaN;
  }

  /** Round values between two places, the roundest first and none too close to another. */
  List<Double> ticks(double from, double to) {
    var ticks = new ArrayList<Double>();
    for (double value : candidates(value(from), value(to))) {
      double place = place(value);
      boolean free =
          place >= from
              && place <= to
              && ticks.stream()
                  .allMatch(other -> Math.abs(place(other) - place) > LEAST_GAP * (to - from));
      if (free) {
        ticks.add(value);
      }
    }
    ticks.sort(null);
    return ticks;
  }

  private List<Double> candidates(double low, double high) {
    var candidates = new ArrayList<Double>();
    if (isPlain()) {
      double step = NumberAxis.step(low, high);
      for (double i = Math.ceil(low / step - 1e-9); i * step <= high; i++) {
        candidates.add(i * step);
      }
      return candidates;
    }
    candidates.add(0.0);
    int top = (int) Math.ceil(Math.log10(Math.max(high, 1e-6)));
    for (double[] digits : new double[][] {{1}, {2, 5}, {3, 4, 7}, {1.5, 2.5, 6, 8, 9}}) {
      for (int power = top; power >= top - 4; power--) {
        for (double digit : digits) {
          candidates.add(digit * Math.pow(10, power));
        }
      }
    }
    return candidates;
  }
}
