package agro.notebook.figure;

import agro.report.InputProblem;
import agro.weather.quality.QualityFlags;
import agro.weather.quality.QualityRule;
import java.util.List;
import java.util.stream.Collectors;

/** A temperature log with the flags of quality control on it. */
public final class QualityFigure {

  private QualityFigure() {}

  /**
   * Draws the whole log, a ring around each flagged value, and below it one row for each rule that
   * was broken.
   *
   * @param flags flags of readings or of daily extremes
   * @return the figure
   * @throws InputProblem when extremes as they stand in a file were checked, or nothing was
   */
  public static DrawnFigure of(QualityFlags flags) {
    if ((flags.readings().isEmpty() && flags.days().isEmpty()) || flags.valuesChecked() == 0) {
      throw InputProblem.of("flags of " + flags.series())
          .expected("flags of readings or of daily extremes, at least one value")
          .because("a figure needs the series itself")
          .mend("check TemperatureReadings or DailyTemperatures");
    }
    var log = FlaggedLog.of(flags);
    var sheet =
        new FigureSheet(
            "What quality control flagged",
            log.isDaily()
                ? "Black: daily maxima. Grey: daily minima. Ring: a flagged value. Below: one row for"
                    + " each rule."
                : "Line: readings. Ring: a flagged value. Below: one row for each rule that was"
                    + " broken.",
            List.of(new QualityPlot(log).logPanel(), new QualityPlot(log).rulePanel()));
    return new DrawnFigure(sheet, alternative(flags), caption(flags), flags.table());
  }

  private static String alternative(QualityFlags flags) {
    if (flags.all().isEmpty()) {
      return flags.series() + ". No value was flagged.";
    }
    return flags.series()
        + ". "
        + flags.all().size()
        + " flags: "
        + flags.rulesBroken().stream()
            .map(rule -> rule.words() + " " + flags.of(rule).size() + first(flags, rule))
            .collect(Collectors.joining("; "))
        + ".";
  }

  private static String first(QualityFlags flags, QualityRule rule) {
    return ", the first at " + flags.of(rule).get(0).when();
  }

  private static String caption(QualityFlags flags) {
    return flags.series()
        + ". A flag is a question and no verdict; nothing was changed. Rules applied: "
        + flags.applied().stream()
            .map(check -> check.rule().words() + " (" + check.limits() + ")")
            .collect(Collectors.joining("; "))
        + ".";
  }
}
