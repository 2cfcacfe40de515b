package agro.sampling.sequential;

import agro.report.InputProblem;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What a plan does in fields that are clumped more or less than it was made for.
 *
 * @param plan the plan
 * @param curves exact properties, one curve for each family of fields, all over the same means
 */
public record PlanRobustness(SequentialPlan plan, List<PlanCurve> curves) implements Presentable {

  /** Makes the list immutable and refuses an empty one. */
  public PlanRobustness {
    Objects.requireNonNull(plan, "plan");
    curves = List.copyOf(curves);
    if (curves.isEmpty()) {
      throw InputProblem.of("no exponent to try")
          .expected("at least one")
          .because("the plan is shown in fields of each")
          .mend("give for example half, once and twice the k of the plan");
    }
  }

  /**
   * The exact properties in fields of several exponents.
   *
   * @param plan the plan, made with one of them
   * @param exponents k of the fields; infinite for counts at random
   * @param means mean counts for each unit
   * @return a curve for each exponent
   * @throws InputProblem when an exponent or a mean is out of range
   */
  public static PlanRobustness ofExponents(
      SequentialPlan plan, List<Double> exponents, List<Double> means) {
    var curves = new ArrayList<PlanCurve>();
    for (double k : exponents) {
      CountFamily family =
          Double.isInfinite(k) && k > 0 ? new CountFamily.AtRandom() : new CountFamily.Clumped(k);
      curves.add(PlanCurve.exact(plan, family, means));
    }
    return new PlanRobustness(plan, curves);
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("The plan in fields that are clumped otherwise")
        .fact("Plan", plan.bounds().words())
        .table(table("Chance of calling the field low", true))
        .table(table("Mean number of units", false))
        .sources(List.of(plan.bounds().source()))
        .build();
  }

  private ResultTable table(String title, boolean chance) {
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Mean"));
    curves.forEach(curve -> columns.add(Column.of(curve.family().words())));
    var rows = new ArrayList<List<Cell>>();
    var points = curves.get(0).points();
    for (int i = 0; i < points.size(); i++) {
      var row = new ArrayList<Cell>();
      row.add(Cell.number(points.get(i).mean(), 2));
      for (var curve : curves) {
        var point = curve.points().get(i);
        row.add(chance ? Cell.number(point.chanceLow(), 3) : Cell.number(point.meanUnits(), 1));
      }
      rows.add(row);
    }
    return ResultTable.of(title, columns, rows);
  }
}
