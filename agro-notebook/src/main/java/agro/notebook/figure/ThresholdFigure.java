package agro.notebook.figure;

import agro.generation.OtherThresholds;
import agro.generation.ThresholdPoint;
import agro.generation.ThresholdProfile;
import java.util.List;

/**
 * Interval between flights and dates of flights over the lower threshold: the interval changes a
 * lot, the dates hardly.
 */
public final class ThresholdFigure {

  private ThresholdFigure() {}

  /**
   * Draws a fit at thresholds below and above its own.
   *
   * @param sensitivity interval and dates by threshold
   * @return the figure
   */
  public static DrawnFigure of(OtherThresholds sensitivity) {
    var plot = new FlightThresholdPlot(sensitivity.outcomes(), sensitivity.atUsed());
    var sheet =
        new FigureSheet(
            "If the lower threshold were another",
            "Above: interval with its 90 % limits over the seasons. Below: shift of each flight.",
            List.of(plot.intervals(plot.bars()), plot.shifts()));
    return new DrawnFigure(
        sheet,
        FigureWords.sentence(sensitivity.words()),
        "Grey line: the threshold of the fit. Shift: how far the middle of each flight moves from"
            + " the dates of the fit, mean over the seasons, by the season's own start and the"
            + " interval of all seasons. An interval holds for its threshold only.",
        sensitivity.table());
  }

  /**
   * Draws threshold and interval estimated together with the region of the pair.
   *
   * @param profile the profile
   * @return the figure
   */
  public static DrawnFigure of(ThresholdProfile profile) {
    var points =
        profile.points().stream().filter(point -> point.inRegion() || near(point)).toList();
    var outcomes = points.stream().map(ThresholdPoint::outcome).toList();
    var best = profile.best().outcome();
    var plot = new FlightThresholdPlot(outcomes, best);
    var sheet =
        new FigureSheet(
            "Lower threshold and interval estimated together",
            "Above: interval that fits best, with the 90 % region of the pair. Below: shift of each"
                + " flight.",
            List.of(plot.intervals(plot.region(points)), plot.shifts()));
    return new DrawnFigure(
        sheet,
        FigureWords.sentence(profile.words()),
        "Region: log likelihood within 2.30 of the best, within these seasons; the scatter between"
            + " seasons is not in it. Shift: from the dates of the best pair. Grey line: the best"
            + " threshold"
            + (profile.refused() ? ", which is refused as an estimate" : "")
            + ".",
        profile.table());
  }

  /** Thresholds far outside the region would only press it together. */
  private static boolean near(ThresholdPoint point) {
    return point.drop() < 6;
  }
}
