package agro.trial.efficacy;

import agro.report.InputProblem;
import agro.trial.FieldTrial;
import agro.trial.PlotValue;
import agro.trial.ResponseKind;
import agro.trial.TrialPlot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Takes the counts of a trial on one or two days as plots with before and after. */
final class TrialCounts {

  private TrialCounts() {}

  static EfficacyData counts(
      FieldTrial trial, String variable, Optional<LocalDate> before, LocalDate after) {
    var kind = trial.variable(variable).response().kind();
    if (kind == ResponseKind.SCORE || kind == ResponseKind.SIGNED) {
      throw InputProblem.of("the variable " + variable + ", a " + kind.words())
          .expected("counts, counts out of n, percentages or measured amounts")
          .because("an efficacy is a share, and grades or signed numbers have no shares")
          .mend("compare scores by ranks, or take the counts behind them");
    }
    var earlier = new LinkedHashMap<String, PlotValue>();
    before.ifPresent(
        day -> values(trial, variable, day).forEach(v -> earlier.put(key(v.plot()), v)));
    var plots = new ArrayList<PlotCounts>();
    for (var value : values(trial, variable, after)) {
      var start = Optional.ofNullable(earlier.get(key(value.plot())));
      plots.add(
          new PlotCounts(
              value.plot().name(),
              block(value.plot()),
              value.plot().treatment(),
              start.map(v -> OptionalDouble.of(v.total())).orElse(OptionalDouble.empty()),
              value.total(),
              start.map(TrialCounts::units).orElse(1.0),
              units(value)));
    }
    return EfficacyData.ofCounts(control(trial), plots);
  }

  static EfficacyData mortality(FieldTrial trial, String variable, LocalDate day) {
    var plots = new ArrayList<PlotMortality>();
    for (var value : values(trial, variable, day)) {
      if (value.outOf().isEmpty()) {
        throw InputProblem.of("the variable " + variable + " without a total")
            .expected("dead out of a number that was looked at")
            .because("mortality is a share")
            .mend("declare the variable as a count out of n");
      }
      plots.add(
          new PlotMortality(
              value.plot().name(),
              block(value.plot()),
              value.plot().treatment(),
              value.total(),
              value.outOf().getAsInt()));
    }
    return EfficacyData.ofMortality(control(trial), plots);
  }

  /** The last day of counting up to the treatment, if there is one, and the days after it. */
  static Map<LocalDate, EfficacyData> byDate(FieldTrial trial, String variable, LocalDate treated) {
    var days = trial.variable(variable).dates();
    var before = days.stream().filter(day -> !day.isAfter(treated)).reduce((a, b) -> b);
    var dates = new LinkedHashMap<LocalDate, EfficacyData>();
    for (var day : days) {
      if (day.isAfter(treated)) {
        dates.put(day, counts(trial, variable, before, day));
      }
    }
    return dates;
  }

  private static List<PlotValue> values(FieldTrial trial, String variable, LocalDate day) {
    return trial.variable(variable).on(day).values();
  }

  private static double units(PlotValue value) {
    return value.outOf().isPresent() ? value.outOf().getAsInt() : value.subSamples();
  }

  private static String key(TrialPlot plot) {
    return plot.environment() + "\n" + plot.name();
  }

  private static String block(TrialPlot plot) {
    return plot.environment().isEmpty()
        ? plot.block()
        : (plot.environment() + ", block " + plot.block());
  }

  private static String control(FieldTrial trial) {
    var controls = trial.controls();
    if (controls.size() == 1) {
      return controls.get(0);
    }
    var like = trial.controlCandidates();
    throw InputProblem.of(
            controls.isEmpty()
                ? "a trial without a declared control"
                : "a trial with several controls, " + controls)
        .expected("one untreated control" + (like.isEmpty() ? "" : ", perhaps one of " + like))
        .because("efficacy is stated against the control")
        .mend("declare it by withControls(\"…\"), one of " + trial.treatments());
  }
}
