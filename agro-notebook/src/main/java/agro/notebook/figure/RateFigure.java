package agro.notebook.figure;

import agro.development.rate.DerivedPoint;
import agro.development.rate.RateComparison;
import agro.development.rate.RateFit;
import agro.development.rate.RateIntervals;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Rates of development by temperature with fitted curves. */
public final class RateFigure {

  private RateFigure() {}

  /**
   * Draws one fit.
   *
   * @param fit the fit
   * @return the figure
   */
  public static DrawnFigure of(RateFit fit) {
    return draw(fit.data().subject(), List.of(fit), null);
  }

  /**
   * Draws one fit with the band of its bootstrap.
   *
   * @param intervals bootstrap intervals of the fit
   * @return the figure
   * @throws InputProblem for profile intervals, which have no band
   */
  public static DrawnFigure of(RateIntervals intervals) {
    requireBand(intervals);
    return draw(intervals.fit().data().subject(), List.of(intervals.fit()), intervals);
  }

  /**
   * Draws all fits of a comparison; the three with the least AICc stand out.
   *
   * @param comparison the comparison
   * @return the figure
   * @throws InputProblem if no model could be fitted
   */
  public static DrawnFigure of(RateComparison comparison) {
    return draw(comparison.data().subject(), sorted(comparison), null);
  }

  /**
   * Draws all fits of a comparison with the band of one of them, which comes first.
   *
   * @param comparison the comparison
   * @param intervals bootstrap intervals of one of its fits
   * @return the figure
   * @throws InputProblem if no model could be fitted, or for profile intervals, which have no band
   */
  public static DrawnFigure of(RateComparison comparison, RateIntervals intervals) {
    requireBand(intervals);
    var fits = new ArrayList<RateFit>();
    fits.add(intervals.fit());
    for (var fit : sorted(comparison)) {
      if (fit.curve().model() != intervals.fit().curve().model()) {
        fits.add(fit);
      }
    }
    return draw(comparison.data().subject(), fits, intervals);
  }

  private static void requireBand(RateIntervals intervals) {
    if (intervals.sample().isEmpty()) {
      throw InputProblem.of("profile intervals")
          .expected("bootstrap intervals")
          .because("a band is made of the curves of all refits")
          .mend("draw the intervals of the bootstrap, or the fit alone");
    }
  }

  private static List<RateFit> sorted(RateComparison comparison) {
    var fits =
        comparison.fits().stream()
            .sorted(
                Comparator.comparingDouble(
                    fit -> fit.criteria().aicCorrected().orElse(Double.POSITIVE_INFINITY)))
            .toList();
    if (fits.isEmpty()) {
      throw InputProblem.of("no model could be fitted to " + comparison.data().subject())
          .expected("at least one fit to draw")
          .because("there is no curve")
          .mend("look at the reasons in the table of the comparison");
    }
    return fits;
  }

  private static DrawnFigure draw(String subject, List<RateFit> fits, RateIntervals band) {
    var plot = new RatePlot(fits);
    var hollow = plot.points().stream().anyMatch(point -> point.rate() == 0);
    var sheet =
        new FigureSheet(
            "Rate of development: " + subject,
            "Dots: observed"
                + (hollow ? "; hollow: no development" : "")
                + "."
                + (band == null
                    ? ""
                    : " Shaded: "
                        + Numbers.plain(100 * band.level())
                        + " % band of "
                        + fits.get(0).curve().model().words()
                        + "."),
            List.of(plot.panel(band)));
    return new DrawnFigure(sheet, alternative(fits, plot), caption(fits, band), data(fits, plot));
  }

  private static String alternative(List<RateFit> fits, RatePlot plot) {
    var text = new StringBuilder(300);
    text.append("Rate of development at ")
        .append(plot.points().size())
        .append(" constant temperatures with ")
        .append(fits.size() == 1 ? "one fitted curve" : fits.size() + " fitted curves");
    var separator = ": ";
    for (var fit : fits) {
      text.append(separator).append(fit.curve().model().words());
      fit.curve()
          .derived(DerivedPoint.OPTIMUM)
          .ifPresent(
              optimum ->
                  text.append(", fastest at ")
                      .append(Numbers.fixed(optimum, 1))
                      .append(" °C with ")
                      .append(Numbers.significant(fit.curve().rate(optimum), 3))
                      .append(" per day"));
      separator = "; ";
    }
    return text.append('.').toString();
  }

  private static String caption(List<RateFit> fits, RateIntervals band) {
    var first = fits.get(0);
    return "Rates are one over the mean duration. Curves are fitted by "
        + (first.fitting().distribution().isPresent()
            ? "the likelihood of durations"
            : "least squares, " + first.fitting().weights().words())
        + "; outside the temperatures of the dots they are guesses of the models."
        + (band == null ? "" : " Band: " + band.method() + ".");
  }

  private static ResultTable data(List<RateFit> fits, RatePlot plot) {
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Temperature", "°C"));
    columns.add(Column.of("Observed", "1/d"));
    fits.forEach(fit -> columns.add(Column.of(fit.curve().model().words(), "1/d")));
    var rows = new ArrayList<List<Cell>>();
    for (var point : plot.points()) {
      var row = new ArrayList<Cell>();
      row.add(Cell.number(point.celsius(), 2));
      row.add(Cell.number(point.rate(), 5));
      fits.forEach(fit -> row.add(Cell.number(fit.curve().rate(point.celsius()), 5)));
      rows.add(row);
    }
    return ResultTable.of("Observed and fitted rates", columns, rows);
  }
}
