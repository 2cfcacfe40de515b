package agro.notebook.figure;

import agro.report.InputProblem;
import agro.sampling.sequential.CountFamily;
import agro.sampling.sequential.PlanCharacteristics;
import agro.sampling.sequential.PlanCurve;
import agro.sampling.sequential.PlanRobustness;
import agro.sampling.sequential.SequentialPlan;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a sequential plan does, by the mean of the field: the chance of calling the field low, and
 * the mean number of units looked at. All values are exact.
 */
public final class PlanFigure {

  /** More curves than this cannot be told apart without colour. */
  private static final int MOST_CURVES = 4;

  private PlanFigure() {}

  /**
   * Draws one plan.
   *
   * @param curve exact properties over at least two means
   * @return the figure
   * @throws InputProblem when there are fewer than two means
   */
  public static DrawnFigure of(PlanCurve curve) {
    return of(Map.of(name(curve.family()), curve));
  }

  /**
   * Draws one plan in fields that are clumped more or less than it was made for.
   *
   * @param robustness the plan with at most four kinds of fields
   * @return the figure
   * @throws InputProblem when there are fewer than two means, or more than four kinds of fields
   */
  public static DrawnFigure of(PlanRobustness robustness) {
    var named = new LinkedHashMap<String, PlanCurve>();
    robustness.curves().forEach(curve -> named.put(name(curve.family()), curve));
    return of(named);
  }

  /**
   * Draws several plans, or one plan in several kinds of fields, under names of one's own.
   *
   * @param named one to four curves by name, drawn in their order
   * @return the figure
   * @throws InputProblem when there is no curve, more than four, or one with fewer than two means
   */
  public static DrawnFigure of(Map<String, PlanCurve> named) {
    if (named.isEmpty() || named.size() > MOST_CURVES) {
      throw InputProblem.of(named.size() + " curves of plans")
          .expected("one to " + MOST_CURVES)
          .because("more lines cannot be told apart in grey")
          .mend("draw fewer, or two figures");
    }
    for (var curve : named.values()) {
      if (curve.points().size() < 2) {
        throw InputProblem.of(curve.points().size() + " means")
            .expected("two or more")
            .because("a curve leads from one mean to the next")
            .mend("ask for means below, between and above the two of the plan");
      }
    }
    var plot = new PlanPlot(named);
    var sheet =
        new FigureSheet(
            "What the plan does, by the mean of the field",
            plot.subheading(),
            List.of(plot.chances(), plot.units()));
    return new DrawnFigure(sheet, alternative(named), caption(named), data(named));
  }

  private static String name(CountFamily family) {
    if (family instanceof CountFamily.Clumped clumped) {
      return "k = " + Numbers.plain(clumped.k());
    }
    if (family instanceof CountFamily.Presence) {
      return "units with animals";
    }
    return family instanceof CountFamily.AtRandom ? "at random" : family.words();
  }

  private static String alternative(Map<String, PlanCurve> named) {
    var text = new StringBuilder();
    named.forEach(
        (name, curve) -> {
          var first = curve.points().get(0);
          var last = curve.points().get(curve.points().size() - 1);
          var longest = longest(curve);
          text.append(text.isEmpty() ? "" : " ")
              .append(FigureWords.sentence(name))
              .append(": the chance of calling the field low goes from ")
              .append(Numbers.fixed(first.chanceLow(), 3))
              .append(" at a mean of ")
              .append(Numbers.plain(first.mean()))
              .append(" to ")
              .append(Numbers.fixed(last.chanceLow(), 3))
              .append(" at ")
              .append(Numbers.plain(last.mean()))
              .append("; it takes ")
              .append(Numbers.fixed(longest.meanUnits(), 1))
              .append(" units in the mean at ")
              .append(Numbers.plain(longest.mean()))
              .append(", its most.");
        });
    return text.toString();
  }

  static PlanCharacteristics longest(PlanCurve curve) {
    var longest = curve.points().get(0);
    for (var point : curve.points()) {
      if (point.meanUnits() > longest.meanUnits()) {
        longest = point;
      }
    }
    return longest;
  }

  private static String caption(Map<String, PlanCurve> named) {
    var plans = new LinkedHashMap<SequentialPlan, String>();
    named.forEach((name, curve) -> plans.putIfAbsent(curve.plan(), name));
    var text = new StringBuilder();
    plans.forEach(
        (plan, name) ->
            text.append(plans.size() > 1 ? FigureWords.sentence(name) + ": " : "")
                .append(
                    plans.size() > 1
                        ? plan.bounds().words()
                        : FigureWords.sentence(plan.bounds().words()))
                .append(
                    plan.mostUnits().isPresent()
                        ? "; ends after "
                            + plan.mostUnits().getAsInt()
                            + ", "
                            + plan.endRule().words()
                        : "")
                .append(". "));
    return text
        + "Computed by carrying the chance of every total from unit to unit, the end of the plan"
        + " included; nothing is simulated.";
  }

  private static ResultTable data(Map<String, PlanCurve> named) {
    var rows = new ArrayList<List<Cell>>();
    named.forEach(
        (name, curve) ->
            curve
                .points()
                .forEach(
                    point ->
                        rows.add(
                            List.of(
                                Cell.text(name),
                                Cell.number(point.mean(), 2),
                                Cell.number(point.chanceLow(), 3),
                                Cell.number(point.meanUnits(), 1),
                                Cell.number(point.usualMostUnits(), 0)))));
    return ResultTable.of(
        "Exact properties",
        List.of(
            Column.of("Fields"),
            Column.of("Mean", "per unit"),
            Column.of("Chance of low"),
            Column.of("Mean number of units"),
            Column.of("Units in 9 of 10 walks, at most")),
        rows);
  }
}
