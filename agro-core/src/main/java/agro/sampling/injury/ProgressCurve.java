package agro.sampling.injury;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What was seen day by day, such as pests, injury or severity of a disease, and the area under it.
 *
 * @param points observations in the order of their days
 * @param between how the curve goes between two observations
 */
public record ProgressCurve(List<Observed> points, Between between) {

  /**
   * One observation.
   *
   * @param day day, counted from any start
   * @param value what was seen, 0 or more
   */
  public record Observed(double day, double value) {
    /** Checks the numbers. */
    public Observed {
      if (!(Double.isFinite(day) && value >= 0 && Double.isFinite(value))) {
        throw InputProblem.of("an observation of " + value + " on day " + day)
            .expected("a finite day and a finite value of 0 or more")
            .because("the area under the curve would have no meaning")
            .mend("leave out a day on which nothing was observed");
      }
    }
  }

  /** How a curve goes between two observations. */
  public enum Between {
    /** A straight line; the area is the trapezoid Δt (y1 + y2) / 2. */
    STRAIGHT("straight lines"),
    /**
     * Growth at an even rate; the area is Δt (y2 − y1) / ln(y2 / y1). From or to nothing there is
     * no rate, and the line is straight.
     */
    EXPONENTIAL("growth at an even rate");

    private final String words;

    Between(String words) {
      this.words = words;
    }

    /**
     * The rule in words.
     *
     * @return a phrase
     */
    public String words() {
      return words;
    }

    double area(Observed from, Observed to) {
      double days = to.day() - from.day();
      double low = Math.min(from.value(), to.value());
      double high = Math.max(from.value(), to.value());
      double change = (high - low) / low;
      if (this == STRAIGHT || low == 0 || change < 1e-8) {
        return days * (from.value() + to.value()) / 2;
      }
      return days * (high - low) / Math.log1p(change);
    }
  }

  /**
   * Checks the days.
   *
   * @throws InputProblem when there is no observation, or days are not in order
   */
  public ProgressCurve {
    Objects.requireNonNull(between, "between");
    points = List.copyOf(points);
    if (points.isEmpty()) {
      throw InputProblem.of("a curve without observations")
          .expected("at least one")
          .because("there is nothing under it")
          .mend("give the days and what was seen on them");
    }
    for (int i = 1; i < points.size(); i++) {
      double earlier = points.get(i - 1).day();
      double later = points.get(i).day();
      if (!(later > earlier)) {
        throw InputProblem.of(
                "day " + Numbers.plain(later) + " after day " + Numbers.plain(earlier))
            .expected("days in order, each once")
            .because("the area under the curve would be counted twice or backwards")
            .mend("sort the observations, and put two of one day into their mean");
      }
    }
  }

  /**
   * A curve of straight lines.
   *
   * @param days days in order
   * @param values what was seen on each, as many
   * @return the curve
   * @throws InputProblem when the numbers do not fit or days are not in order
   */
  public static ProgressCurve of(double[] days, double[] values) {
    if (days.length != values.length) {
      throw InputProblem.of(days.length + " days and " + values.length + " values")
          .expected("a value for each day")
          .because("it is unknown which day a value belongs to")
          .mend("leave out days without an observation");
    }
    var points = new ArrayList<Observed>();
    for (int i = 0; i < days.length; i++) {
      points.add(new Observed(days[i], values[i]));
    }
    return new ProgressCurve(points, Between.STRAIGHT);
  }

  /**
   * This curve with another course between observations.
   *
   * @param rule the course
   * @return a new curve
   */
  public ProgressCurve with(Between rule) {
    return new ProgressCurve(points, rule);
  }

  /**
   * Area from the first observation to each one.
   *
   * @return as many as there are observations, the first of them 0
   */
  public List<Double> cumulative() {
    var sums = new ArrayList<Double>();
    double sum = 0;
    sums.add(sum);
    for (int i = 1; i < points.size(); i++) {
      sum += between.area(points.get(i - 1), points.get(i));
      sums.add(sum);
    }
    return List.copyOf(sums);
  }

  /**
   * Area under the whole curve.
   *
   * @return value times days; 0 for one observation
   */
  public double area() {
    return cumulative().get(points.size() - 1);
  }

  /**
   * Days from the first to the last observation.
   *
   * @return 0 or more
   */
  public double days() {
    return points.get(points.size() - 1).day() - points.get(0).day();
  }

  /**
   * Mean height of the curve, the area for each day.
   *
   * @return the mean value
   * @throws InputProblem when there is one observation only
   */
  public double meanHeight() {
    requireTwo("a mean over days");
    return area() / days();
  }

  /**
   * Area as a share of the greatest possible one.
   *
   * @param greatest greatest possible value, such as 100 for per cent, above 0
   * @return a share
   * @throws InputProblem when there is one observation only or the greatest is not above zero
   */
  public double relativeArea(double greatest) {
    if (!(greatest > 0)) {
      throw InputProblem.of("a greatest possible value of " + greatest)
          .expected("a number above 0")
          .because("the area is taken as a share of it")
          .mend("give for example 100 for severity in per cent");
    }
    return meanHeight() / greatest;
  }

  /**
   * Area under the stairs: each observation stands for the time about it, the first and the last
   * for half the mean step more than under the curve. The area plus (y1 + yn) / 2 · (tn − t1) / (n
   * − 1).
   *
   * @return value times days
   * @throws InputProblem when there is one observation only
   */
  public double stairs() {
    requireTwo("stairs");
    double ends = 0.5 * (points.get(0).value() + points.get(points.size() - 1).value());
    return with(Between.STRAIGHT).area() + ends * days() / (points.size() - 1);
  }

  private void requireTwo(String what) {
    if (points.size() < 2) {
      throw InputProblem.of("one observation")
          .expected("at least two for " + what)
          .because("one day has no duration")
          .mend("observe once more");
    }
  }
}
