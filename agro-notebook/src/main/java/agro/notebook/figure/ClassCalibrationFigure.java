package agro.notebook.figure;

import agro.course.practical.CalibrationBenchmark;
import agro.course.practical.ClassCalibration;
import agro.course.practical.GroupFinding;
import agro.source.Standing;
import agro.units.Numbers;
import agro.units.Unit;
import agro.units.VolumePerArea;
import agro.working.Wording;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The spray volume of each group of a class: a mark a group with its own interval, the mean of the
 * class with its interval, the target, and the tolerance. Groups that are off have marks of their
 * own and a label.
 */
public final class ClassCalibrationFigure {

  /** Groups that the heading names. */
  private static final int MOST_NAMES = 8;

  private final ClassCalibration result;
  private final Wording words;
  private final Unit<VolumePerArea> unit;

  private ClassCalibrationFigure(ClassCalibration result) {
    this.result = result;
    words = result.wording();
    unit = result.rules().style().unitFor(result.all().mean());
  }

  /**
   * Draws the calibrations of a class.
   *
   * @param result the pooled calibrations
   * @return the figure, in the language and units of the result
   */
  public static DrawnFigure of(ClassCalibration result) {
    return new ClassCalibrationFigure(result).drawn();
  }

  private DrawnFigure drawn() {
    var sheet =
        new FigureSheet(
            heading(),
            words.say("figure.class.sub", "level", percent(result.rules().confidence())),
            List.of(new ClassCalibrationPlot(result, words, unit).panel()));
    return new DrawnFigure(sheet, alternative(), caption(), result.table());
  }

  private String heading() {
    var off = result.findings().stream().filter(GroupFinding::isOff).toList();
    var tolerance = percent(result.rules().tolerance().share());
    if (off.isEmpty()) {
      return words.say("figure.class.heading.none", "tolerance", tolerance);
    }
    var names =
        off.stream().limit(MOST_NAMES).map(GroupFinding::group).collect(Collectors.joining(", "));
    return words.say(
        "figure.class.heading.off",
        "tolerance",
        tolerance,
        "groups",
        off.size() > MOST_NAMES ? names + ", \u2026" : names);
  }

  private String percent(double share) {
    return words.quantity(Numbers.significant(100 * share, 3)) + "\u00a0%";
  }

  private String alternative() {
    var variation = result.all().coefficientOfVariation();
    return words.say(
        "figure.class.alternative",
        "groups",
        result.all().groups(),
        "mean",
        ClassCalibrationPlot.volume(words, unit, result.all().mean()),
        "variation",
        variation.isPresent()
            ? words.number(100 * variation.getAsDouble(), 1) + "\u00a0%"
            : words.say("variation.unknown"),
        "off",
        names(
            result.offTolerance().stream()
                .map(
                    one ->
                        one.group()
                            + " ("
                            + ClassCalibrationPlot.departure(words, one.departure())
                            + ")")
                .toList()),
        "outliers",
        names(result.outliers().stream().map(GroupFinding::group).toList()));
  }

  private String names(List<String> groups) {
    return groups.isEmpty() ? words.say("nobody") : String.join(", ", groups);
  }

  private String caption() {
    CalibrationBenchmark benchmark = result.benchmark();
    Standing standing = result.rules().tolerance().source().standing();
    return words.say(
        "figure.class.caption",
        "tolerance",
        percent(result.rules().tolerance().share()),
        "benchmark",
        words.say("figure.class.benchmark." + benchmark.name()),
        "standing",
        words.say("standing." + standing.name()));
  }
}
