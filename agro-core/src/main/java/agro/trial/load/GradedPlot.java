package agro.trial.load;

import agro.report.InputProblem;
import agro.trial.FieldTrial;
import agro.trial.PlotValue;
import agro.trial.TrialPlot;
import agro.units.Area;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.MassUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * What one plot yielded, by grade.
 *
 * @param plot name of the plot
 * @param block its block; empty in a trial without blocks
 * @param treatment its treatment
 * @param area the area that was harvested
 * @param amounts kilograms or pieces by grade, as the grade's price has it
 */
public record GradedPlot(
    String plot, String block, String treatment, Area area, Map<String, Double> amounts) {

  /**
   * Copies the amounts.
   *
   * @throws InputProblem when one is below zero or not finite, or the plot has no area
   */
  public GradedPlot {
    Objects.requireNonNull(plot, "plot");
    Objects.requireNonNull(block, "block");
    Objects.requireNonNull(treatment, "treatment");
    amounts = Collections.unmodifiableMap(new TreeMap<>(amounts));
    if (!(area.squareMetres() > 0)) {
      throw InputProblem.of("plot " + plot + " with an area of " + area)
          .expected("an area above 0")
          .because("the yield is stated for a hectare")
          .mend("give the area that was harvested, without border rows");
    }
    for (var amount : amounts.entrySet()) {
      if (!(amount.getValue() >= 0 && Double.isFinite(amount.getValue()))) {
        throw InputProblem.of(
                "plot " + plot + " with " + amount.getValue() + " of grade " + amount.getKey())
            .expected("a finite amount of 0 or more")
            .because("a grade of which there is none has the amount 0")
            .mend("look the amount up, or leave the plot out");
      }
    }
  }

  /**
   * Graded yields of a trial on its only day of harvest.
   *
   * @param trial the trial, whose plots have areas
   * @param variables variable with the kilograms or pieces of each grade, by grade
   * @return plots that have all grades
   * @throws InputProblem when a plot has no area, or a grade is missing on a plot
   */
  public static List<GradedPlot> of(FieldTrial trial, Map<String, String> variables) {
    Map<TrialPlot, Map<String, Double>> byPlot = new LinkedHashMap<>();
    variables.forEach(
        (grade, variable) -> {
          for (PlotValue value : trial.variable(variable).onTheOnlyDay().values()) {
            byPlot
                .computeIfAbsent(value.plot(), plot -> new LinkedHashMap<>())
                .put(grade, value.total());
          }
        });
    var plots = new ArrayList<GradedPlot>();
    byPlot.forEach(
        (plot, amounts) -> {
          if (amounts.size() < variables.size()) {
            throw InputProblem.of(plot.label() + " with the grades " + amounts.keySet() + " alone")
                .expected("an amount of each of " + variables.keySet())
                .because("a missing grade would be taken as nothing harvested")
                .mend("write 0 where there was none, or leave the plot out");
          }
          plots.add(
              new GradedPlot(
                  PlotVisits.name(plot),
                  PlotVisits.block(plot),
                  plot.treatment(),
                  plot.area()
                      .orElseThrow(
                          () ->
                              InputProblem.of(plot.label() + " without an area")
                                  .expected("the harvested area of each plot")
                                  .because("the yield is stated for a hectare")
                                  .mend("add a column of areas to the plot table")),
                  amounts));
        });
    return List.copyOf(plots);
  }

  /**
   * Mass of some grades on a hectare.
   *
   * @param grades grades whose amounts are kilograms
   * @return the yield
   * @throws InputProblem when the plot has no such grade
   */
  public MassPerArea massPerArea(List<String> grades) {
    double kilograms = 0;
    for (var grade : grades) {
      if (!amounts.containsKey(grade)) {
        throw InputProblem.of("the grade " + grade + " on plot " + plot)
            .expected("one of " + amounts.keySet())
            .because("its mass would be taken as nothing")
            .mend("write the grade as in the amounts");
      }
      kilograms += amounts.get(grade);
    }
    return Mass.of(kilograms, MassUnit.KILOGRAM).dividedBy(area);
  }

  /**
   * Mass of some grades on a hectare, plot by plot, as a line of yield on load needs it.
   *
   * @param plots the plots
   * @param grades grades whose amounts are kilograms
   * @return yields by name of plot
   * @throws InputProblem when a plot has no such grade
   */
  public static Map<String, MassPerArea> yields(List<GradedPlot> plots, List<String> grades) {
    var yields = new LinkedHashMap<String, MassPerArea>();
    plots.forEach(plot -> yields.put(plot.plot(), plot.massPerArea(grades)));
    return Collections.unmodifiableMap(yields);
  }
}
