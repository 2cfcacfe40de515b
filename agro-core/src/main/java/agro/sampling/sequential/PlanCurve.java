package agro.sampling.sequential;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * The exact operating characteristic and average sample number of a plan over a range of means, by
 * forward recursion, the end of the plan included.
 *
 * @param plan the plan
 * @param family distribution of the counts in the fields
 * @param points properties at each mean, in the order of the means given
 */
public record PlanCurve(SequentialPlan plan, CountFamily family, List<PlanCharacteristics> points)
    implements Presentable {

  /** Makes the list immutable. */
  public PlanCurve {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(family, "family");
    points = List.copyOf(points);
  }

  /**
   * The exact properties of a plan.
   *
   * @param plan the plan
   * @param family distribution of the counts; another one than that of the plan shows what a wrong
   *     assumption does
   * @param means mean counts for each unit, at least one
   * @return properties at each mean
   * @throws InputProblem when a mean is not possible in the family, or the plan does not come to an
   *     end
   */
  public static PlanCurve exact(SequentialPlan plan, CountFamily family, List<Double> means) {
    var progress = Progress.ofThread();
    for (double mean : means) {
      if (!family.allows(mean)) {
        throw InputProblem.of("a mean of " + mean)
            .expected("a mean that is possible for " + family.words())
            .because("no field has such counts")
            .mend("ask for means above 0, and below 1 for shares");
      }
    }
    var points =
        IntStream.range(0, means.size())
            .parallel()
            .mapToObj(i -> new ForwardRecursion(plan, family, means.get(i), progress).run())
            .toList();
    return new PlanCurve(plan, family, points);
  }

  /**
   * The exact properties of a plan at one mean.
   *
   * @param plan the plan
   * @param family distribution of the counts
   * @param mean mean count for each unit
   * @return the properties
   * @throws InputProblem when the mean is not possible in the family, or the plan does not come to
   *     an end
   */
  public static PlanCharacteristics exactAt(SequentialPlan plan, CountFamily family, double mean) {
    return exact(plan, family, List.of(mean)).points().get(0);
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var point : points) {
      rows.add(
          List.of(
              Cell.number(point.mean(), 3),
              Cell.number(point.chanceLow(), 3),
              Cell.number(point.chanceHigh(), 3),
              Cell.number(point.chanceUndecided(), 3),
              Cell.number(point.meanUnits(), 1),
              Cell.number(point.usualMostUnits(), 0)));
    }
    return Presentation.titled("What the plan does")
        .fact("Plan", plan.bounds().words())
        .fact(
            "Ends",
            plan.mostUnits().isPresent()
                ? "after " + plan.mostUnits().getAsInt() + " units, " + plan.endRule().words()
                : "at a line")
        .fact("Fields", family.words())
        .table(
            ResultTable.of(
                "By mean of the field",
                List.of(
                    Column.of("Mean"),
                    Column.of("Called low"),
                    Column.of("Called high"),
                    Column.of("Undecided"),
                    Column.of("Mean units"),
                    Column.of("Units, 9 in 10")),
                rows))
        .paragraph(
            "Exact for these counts: the chance of every total is carried from unit to unit.")
        .sources(List.of(plan.bounds().source()))
        .build();
  }
}
