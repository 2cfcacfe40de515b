package agro.dose.scaling;

import agro.dose.ProductAmount;
import agro.dose.ProductPerTreatedArea;
import agro.report.InputProblem;
import agro.units.Length;
import agro.units.Mass;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;
import java.util.List;

/**
 * A catch of granules over a measured course: amount to collect = rate × course length × band
 * width. With pounds per acre, feet and ounces this is lb/ac × ft × ft / 2722.5.
 *
 * @param rate granules per area of the band
 * @param course length of the course, above zero
 * @param bandWidth width of the band of one outlet, above zero
 */
public record GranuleCourse(ProductPerTreatedArea rate, Length course, Length bandWidth) {

  /** A catch further than this from the target calls for another setting. */
  private static final double TOLERANCE = 0.10;

  /** Refuses a course without ground and a product that is not weighed. */
  public GranuleCourse {
    if (!(rate.amount() instanceof ProductAmount.Solid)) {
      throw InputProblem.of("the rate of the granules is " + rate)
          .expected("a mass per treated area")
          .because("a catch of granules is weighed")
          .mend("take the rate by mass from the label");
    }
    ScalingChecks.aboveZero(
        course,
        "length of the course",
        "the catch is proportional to it",
        "measure a course that is long enough to weigh its catch well");
    ScalingChecks.aboveZero(
        bandWidth,
        "band width",
        "the catch is proportional to it",
        "measure the width on which the granules fall");
  }

  /**
   * What one outlet should give, printed in metric units.
   *
   * @return the target and the steps
   */
  public GranuleCourseResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * What one outlet should give.
   *
   * @param style units of print
   * @return the target and the steps
   */
  public GranuleCourseResult evaluate(QuantityStyle style) {
    return new GranuleCourseResult(target(), List.of(), working(style));
  }

  /**
   * Compares a catch with the target.
   *
   * @param caught mass caught from one outlet over the course
   * @param style units of print
   * @return the target, the steps and a finding: a note within 10 % of the target, a warning beyond
   */
  public GranuleCourseResult compare(Mass caught, QuantityStyle style) {
    var target = target();
    double low = share(caught, target.range().low());
    double high = share(caught, target.range().high());
    boolean fits = low >= -TOLERANCE - 1e-9 && high <= TOLERANCE + 1e-9;
    var words =
        style.print(caught)
            + " caught, target "
            + target.print(style)
            + ": "
            + departure(low, high);
    var rule = "catch within 10 % of the target";
    var finding =
        fits
            ? Findings.note(rule, words)
            : Findings.warning(rule, words + "; adjust the outlet and repeat the catch");
    var working =
        working(style)
            .step(
                "departure from the target",
                "catch / target - 1",
                style.print(caught) + " / " + target.print(style) + " - 1",
                departure(low, high));
    return new GranuleCourseResult(target, List.of(finding), working);
  }

  private static double share(Mass caught, Mass target) {
    ScalingChecks.aboveZero(
        target,
        "target of the catch",
        "a departure is a share of the target",
        "state a rate above zero");
    return caught.ratioTo(target) - 1;
  }

  private static String departure(double low, double high) {
    var first = Numbers.fixed(100 * low, 1);
    var second = Numbers.fixed(100 * high, 1);
    return first.equals(second)
        ? first + " %"
        : first + " % of the low, " + second + " % of the high end";
  }

  private ProductAmount.Solid target() {
    var solid = (ProductAmount.Solid) rate.on(course.times(bandWidth));
    return ProductAmount.solid(solid.range());
  }

  private Working working(QuantityStyle style) {
    return Working.of("Catch of granules over a course")
        .step(
            "area of the course",
            "course × band width",
            style.print(course) + " × " + style.print(bandWidth),
            style.print(course.times(bandWidth)))
        .step(
            "amount to collect",
            "rate × area of the course",
            rate + " × " + style.print(course.times(bandWidth)),
            target().print(style),
            ScalingSources.GRANULE_COURSE)
        .withCautions(Caution.all());
  }
}
