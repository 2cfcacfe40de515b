package agro.notebook.figure;

import agro.trial.efficacy.EfficacyCourse;
import agro.trial.efficacy.EfficacyCourse.CoursePoint;
import agro.units.Numbers;
import java.util.stream.Collectors;

/**
 * Efficacy of the treatments of a trial over days after treatment, a panel for each treatment.
 * Efficacies below zero are drawn where they lie.
 */
public final class EfficacyFigure {

  private EfficacyFigure() {}

  /**
   * Draws efficacy by days after treatment with its limits.
   *
   * @param course efficacy on the dates of counting
   * @return the figure
   */
  public static DrawnFigure of(EfficacyCourse course) {
    var first = course.dates().values().iterator().next();
    var sheet =
        new FigureSheet(
            "Efficacy after treatment on " + FigureWords.longDay(course.treated()),
            "Formula: "
                + first.formula().title()
                + ". Uprights and shade: limits of "
                + Numbers.plain(100 * first.level())
                + " %, date by date. Thin: the other treatments.",
            new EfficacyPlot(course).panels());
    return new DrawnFigure(sheet, alternative(course), caption(course), course.table());
  }

  private static String alternative(EfficacyCourse course) {
    return course.treatments().stream()
        .map(
            treatment ->
                treatment
                    + " "
                    + course.points(treatment).stream()
                        .map(EfficacyFigure::words)
                        .collect(Collectors.joining(", ")))
        .collect(
            Collectors.joining(
                "; ", "Efficacy in per cent by days after treatment, with limits. ", "."));
  }

  private static String words(CoursePoint point) {
    if (point.percent().isEmpty()) {
      return "no value on day " + point.daysAfter();
    }
    return Numbers.fixed(point.percent().getAsDouble(), 0)
        + " on day "
        + point.daysAfter()
        + point.limits().map(limits -> " (" + limits.printed().replace(" %", "") + ")").orElse("");
  }

  private static String caption(EfficacyCourse course) {
    var first = course.dates().values().iterator().next();
    return "Efficacy over the blocks together, "
        + first.formula().title()
        + " against "
        + first.control()
        + ". Below zero there were more pests than without treatment; nothing is cut off, and limits"
        + " beyond the panel are written. Limits hold for one date and one treatment; that two"
        + " treatments differ is not to be read from them. Lines between dates only join the dates."
        + " The product label and local law come first and override every figure here.";
  }
}
