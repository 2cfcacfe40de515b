package agro.trial.efficacy;

import agro.report.InputProblem;
import agro.trial.FieldTrial;
import agro.trial.NaturalOrder;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the efficacy of a trial is computed from, on one date: every plot with its block, treatment
 * and counts, and the name of the control. Mortality is kept as the total before and the living
 * after.
 *
 * @param measure live counts or mortality
 * @param control name of the untreated control
 * @param plots the plots, by block, treatment and name
 */
public record EfficacyData(
    EfficacyFormula.Measure measure, String control, List<PlotCounts> plots) {

  /**
   * Checks the plots.
   *
   * @throws InputProblem when there is no control plot, no treated plot, or a plot appears twice
   */
  public EfficacyData {
    Objects.requireNonNull(measure, "measure");
    Objects.requireNonNull(control, "control");
    plots =
        plots.stream()
            .sorted(
                Comparator.comparing(PlotCounts::block, NaturalOrder.ofNames())
                    .thenComparing(PlotCounts::treatment, NaturalOrder.ofNames())
                    .thenComparing(PlotCounts::plot, NaturalOrder.ofNames()))
            .toList();
    requireBoth(control, plots);
    var seen = new HashSet<String>();
    for (var plot : plots) {
      if (!seen.add(plot.block() + "\n" + plot.plot())) {
        throw InputProblem.of("plot \"" + plot.plot() + "\" twice in block \"" + plot.block() + '"')
            .expected("each plot once")
            .because("plants or dates of one plot are no plots of their own")
            .mend("add up the plants of a plot, give each plot its name, and one date at a time");
      }
    }
  }

  private static void requireBoth(String control, List<PlotCounts> plots) {
    var treatments = plots.stream().map(PlotCounts::treatment).distinct().toList();
    if (!treatments.contains(control)) {
      throw InputProblem.of("no plot of the control \"" + control + "\" among " + treatments)
          .expected("the name of the untreated control as it stands in the data")
          .because("efficacy is stated against the control")
          .mend("name one of these treatments, or look for its plots in another column");
    }
    if (treatments.size() < 2) {
      throw InputProblem.of("plots of the control \"" + control + "\" alone")
          .expected("treated plots too")
          .because("there is nothing whose efficacy could be stated")
          .mend("give the treated plots of the same date");
    }
  }

  /**
   * Live counts.
   *
   * @param control name of the control
   * @param plots the plots
   * @return the data
   * @throws InputProblem when there is no control plot, no treated plot, or a plot appears twice
   */
  public static EfficacyData ofCounts(String control, List<PlotCounts> plots) {
    return new EfficacyData(EfficacyFormula.Measure.LIVE_COUNTS, control, plots);
  }

  /**
   * Dead out of a total.
   *
   * @param control name of the control
   * @param plots the plots
   * @return the data
   * @throws InputProblem when there is no control plot, no treated plot, or a plot appears twice
   */
  public static EfficacyData ofMortality(String control, List<PlotMortality> plots) {
    return new EfficacyData(
        EfficacyFormula.Measure.MORTALITY,
        control,
        plots.stream()
            .map(
                plot ->
                    new PlotCounts(
                        plot.plot(),
                        plot.block(),
                        plot.treatment(),
                        OptionalDouble.of(plot.total()),
                        plot.total() - plot.dead(),
                        1,
                        1))
            .toList());
  }

  /**
   * Counts of a trial before and after the treatment. Plants of a plot are added up; plots without
   * a count after are left out, those without a count before are said where a formula needs it.
   *
   * @param trial the trial, with one declared control
   * @param variable what was counted
   * @param before day of the count before the treatment
   * @param after day of the count after it
   * @return the data
   * @throws InputProblem when the trial has no single control, or the variable has no shares
   */
  public static EfficacyData of(
      FieldTrial trial, String variable, LocalDate before, LocalDate after) {
    return TrialCounts.counts(trial, variable, Optional.of(before), after);
  }

  /**
   * Counts of a trial after the treatment alone.
   *
   * @param trial the trial, with one declared control
   * @param variable what was counted
   * @param after day of the count
   * @return the data
   * @throws InputProblem when the trial has no single control, or the variable has no shares
   */
  public static EfficacyData ofAfter(FieldTrial trial, String variable, LocalDate after) {
    return TrialCounts.counts(trial, variable, Optional.empty(), after);
  }

  /**
   * Mortality of a trial, where a variable counts the dead among those looked at.
   *
   * @param trial the trial, with one declared control
   * @param variable dead, a count out of n
   * @param day day of the count
   * @return the data
   * @throws InputProblem when the trial has no single control, or the variable is no count out of n
   */
  public static EfficacyData ofMortality(FieldTrial trial, String variable, LocalDate day) {
    return TrialCounts.mortality(trial, variable, day);
  }

  /**
   * Whether the data are mortality.
   *
   * @return false for live counts
   */
  public boolean isMortality() {
    return measure == EfficacyFormula.Measure.MORTALITY;
  }

  /**
   * Treatments but the control.
   *
   * @return names in natural order
   */
  public List<String> treated() {
    return plots.stream()
        .map(PlotCounts::treatment)
        .filter(name -> !name.equals(control))
        .distinct()
        .sorted(NaturalOrder.ofNames())
        .toList();
  }

  /**
   * Blocks of the trial.
   *
   * @return names in natural order; one empty name for a trial without blocks
   */
  public List<String> blocks() {
    return plots.stream().map(PlotCounts::block).distinct().toList();
  }

  /**
   * Whether plots of all treatments and of the control have counts before the treatment.
   *
   * @return true when no treatment lacks them
   */
  public boolean hasBefore() {
    var with =
        plots.stream()
            .filter(plot -> plot.before().isPresent())
            .map(PlotCounts::treatment)
            .distinct()
            .toList();
    return with.contains(control) && with.containsAll(treated());
  }

  List<PlotCounts> of(String treatment) {
    return plots.stream().filter(plot -> plot.treatment().equals(treatment)).toList();
  }
}
