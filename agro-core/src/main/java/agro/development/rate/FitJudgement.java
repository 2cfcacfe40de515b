package agro.development.rate;

import agro.development.rate.RateRemark.Kind;
import agro.stats.Conditioning;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** What has to be said about a fit. */
final class FitJudgement {

  /** Condition above which parameters can be changed together without changing the curve. */
  static final double RIDGE = 1000;

  private static final double NEARLY_ONE = 0.02;
  private static final double TAKES_PART = 0.3;
  private static final int MANY_DIGITS = 6;

  private final RateFitting fitting;
  private final RearingData data;
  private final List<RatePoint> points;
  private final RateCurve curve;
  private final List<RateRemark> remarks = new ArrayList<>();

  FitJudgement(RateFitting fitting, RearingData data, List<RatePoint> points, RateCurve curve) {
    this.fitting = fitting;
    this.data = data;
    this.points = points;
    this.curve = curve;
  }

  List<RateRemark> remarks(
      IntPredicate atBound, boolean converged, Conditioning conditioning, int[] free) {
    saturated();
    if (!converged) {
      add(Kind.NOT_CONVERGED, "the search ran out of steps; a better fit may exist");
    }
    boundary(atBound, free);
    ridge(conditioning, free);
    digits();
    leftOut();
    bend();
    lackOfFit();
    replication();
    return remarks;
  }

  private void add(Kind kind, String text) {
    remarks.add(new RateRemark(kind, text));
  }

  private void saturated() {
    int left = points.size() - fitting.freeParameters();
    if (left < RateFit.LEAST_FREEDOM) {
      add(
          Kind.SATURATED,
          "saturated: "
              + points.size()
              + " rates for "
              + fitting.freeParameters()
              + " parameters leave "
              + left
              + " to judge the fit by, so it has no standard errors and no intervals");
    }
  }

  private void boundary(IntPredicate atBound, int[] free) {
    var symbols = new ArrayList<String>();
    for (int place : free) {
      if (atBound.test(place)) {
        symbols.add(symbol(place));
      }
    }
    if (!symbols.isEmpty()) {
      add(
          Kind.BOUNDARY,
          "the fit ends on the edge of the range that was searched for "
              + String.join(", ", symbols)
              + "; the data do not fix "
              + (symbols.size() == 1 ? "it" : "them")
              + ", only the curve within their temperatures");
    }
  }

  private String symbol(int place) {
    return curve.model().parameters().get(place).symbol();
  }

  private void ridge(Conditioning conditioning, int[] free) {
    double condition = conditioning.number();
    boolean logan =
        curve.model() == RateModel.LOGAN_6
            || curve.model() == RateModel.LACTIN_1
            || curve.model() == RateModel.LACTIN_2;
    double product = logan ? curve.parameter("rho") * curve.parameter("D") : 0;
    boolean nearlyOne = logan && Math.abs(product - 1) < NEARLY_ONE;
    if (!nearlyOne && condition < RIDGE) {
      return;
    }
    var symbols = new ArrayList<String>();
    for (int j = 0; j < free.length; j++) {
      if (conditioning.shareInWeakest(j) > TAKES_PART) {
        symbols.add(symbol(free[j]));
      }
    }
    add(
        Kind.RIDGE,
        "a ridge: "
            + (symbols.isEmpty() ? "the parameters" : String.join(", ", symbols))
            + " can be changed together with hardly any change of the curve (condition "
            + (condition < 1e12 ? Numbers.significant(condition, 2) : "beyond 1,000,000,000,000")
            + ")"
            + (nearlyOne
                ? "; rho D is "
                    + Numbers.significant(product, 6)
                    + ", so the curve is a small difference of two large terms"
                : "")
            + "; do not compare single parameters with those of other fits");
  }

  private void digits() {
    double low = points.stream().mapToDouble(RatePoint::celsius).min().orElse(0);
    double high = points.stream().mapToDouble(RatePoint::celsius).max().orElse(0);
    int digits = curve.digitsNeeded(low, high);
    if (digits > MANY_DIGITS) {
      add(
          Kind.DIGITS,
          "the curve needs its parameters to " + digits + " digits; fewer give another curve");
    }
  }

  private void leftOut() {
    long left =
        data.means().stream().filter(one -> !fitting.uses(one.celsius(), one.rate())).count();
    if (left > 0) {
      boolean line = fitting.model() == RateModel.LINEAR;
      add(
          Kind.LEFT_OUT,
          left
              + (left == 1 ? " mean was" : " means were")
              + " left out: outside the temperatures that were asked for"
              + (line ? ", or without development, where no line holds" : ""));
    }
  }

  private void bend() {
    if (curve.model() != RateModel.LINEAR) {
      return;
    }
    RatePoint hottest = points.get(0);
    RatePoint fastest = points.get(0);
    for (var point : points) {
      hottest = point.celsius() > hottest.celsius() ? point : hottest;
      fastest = point.rate() > fastest.rate() ? point : fastest;
    }
    if (fastest.celsius() < hottest.celsius()) {
      add(
          Kind.BEND,
          "development is fastest at "
              + Numbers.plain(fastest.celsius())
              + " °C and slower at "
              + Numbers.plain(hottest.celsius())
              + " °C; a line holds below the optimum alone, so fit it between chosen temperatures");
    }
  }

  private void lackOfFit() {
    double sum = 0;
    int known = 0;
    for (var point : points) {
      if (point.standardError() > 0) {
        double z = (curve.rate(point.celsius()) - point.rate()) / point.standardError();
        sum += z * z;
        known++;
      }
    }
    int left = known - fitting.freeParameters();
    if (left >= RateFit.LEAST_FREEDOM && sum / left > 4) {
      add(
          Kind.LACK_OF_FIT,
          "the means lie about the curve "
              + Numbers.significant(Math.sqrt(sum / left), 2)
              + " times as far as the scatter of animals within cabinets explains; cabinets differ,"
              + " or the curve is another one");
    }
  }

  private void replication() {
    boolean named = points.stream().anyMatch(point -> !point.cabinet().isEmpty());
    if (!named) {
      add(
          Kind.REPLICATION,
          "no cabinets are named, so each mean is taken as one cabinet of its own");
    }
  }
}
