package agro.notebook.figure;

import agro.generation.FlightTimingFit;
import agro.generation.IntervalEstimate;
import agro.generation.SeasonTiming;
import agro.generation.VisitFit;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The catches of each season on the degree-day scale with the fitted flights: what the fit of
 * flight timing rests on.
 */
public final class FlightFigure {

  private FlightFigure() {}

  /**
   * Draws all seasons below each other on one scale.
   *
   * @param fit the fit
   * @return the figure
   */
  public static DrawnFigure of(FlightTimingFit fit) {
    return drawn(fit, fit.seasons());
  }

  /**
   * Draws one season.
   *
   * @param fit the fit
   * @param year the year that names the season
   * @return the figure
   * @throws InputProblem when the fit has no such season
   */
  public static DrawnFigure of(FlightTimingFit fit, int year) {
    var chosen = fit.seasons().stream().filter(season -> season.year() == year).toList();
    if (chosen.isEmpty()) {
      throw InputProblem.of("season " + year + " asked for in a figure of flights")
          .expected(
              "one of the fitted seasons: "
                  + fit.seasons().stream()
                      .map(season -> Integer.toString(season.year()))
                      .collect(Collectors.joining(", ")))
          .because("a season without a catch, or without temperatures, is not in the fit")
          .mend("choose one of these");
    }
    return drawn(fit, chosen);
  }

  private static DrawnFigure drawn(FlightTimingFit fit, List<SeasonTiming> seasons) {
    var sheet =
        new FigureSheet(
            "Catches and fitted flights",
            "Dot: one visit. Line: fitted mean. Band: 8 in 10 counts should fall here."
                + (seasons.size() > 1 ? " Each season has its own height." : ""),
            new FlightPlot(fit, seasons).panels());
    return new DrawnFigure(sheet, alternative(fit, seasons), caption(fit), data(fit, seasons));
  }

  /** Degree-days of the middle of a flight as its season alone has it. */
  static double middle(FlightTimingFit fit, SeasonTiming season, int generation) {
    var interval = season.interval().orElse(fit.workingInterval());
    return season.start().degreeDaysC() + (generation - 1) * interval.degreeDaysC();
  }

  private static String alternative(FlightTimingFit fit, List<SeasonTiming> seasons) {
    if (seasons.isEmpty()) {
      return "No season with a catch: there are no flights to show.";
    }
    var perSeason =
        seasons.stream()
            .map(season -> seasonSentence(fit, season))
            .collect(Collectors.joining("; "));
    return "Catches per trap-night over degree-days with the fitted flights. " + perSeason + ".";
  }

  private static String seasonSentence(FlightTimingFit fit, SeasonTiming season) {
    var middles = new ArrayList<String>();
    for (var g = 1; g <= fit.generations(); g++) {
      middles.add("flight " + g + " about " + FigureWords.degreeDays(middle(fit, season, g)));
    }
    return season.label()
        + ": "
        + season.totalCatch()
        + " adults in "
        + season.visits()
        + " visits, "
        + String.join(", ", middles);
  }

  private static String caption(FlightTimingFit fit) {
    var counts =
        fit.poisson()
            ? "Poisson counts"
            : "negative binomial counts of size "
                + Numbers.fixed(fit.sizePerNight(), 2)
                + " per open trap-night";
    return "Adults per open trap-night between visits; nights of a failed trap are left blank; a"
        + " hollow dot is a full trap, at which more may have flown. The line has one interval for all"
        + " seasons; dashed: middle of each flight"
        + " as its season alone has it. Interval between flights: "
        + interval(fit)
        + ". Degree-days from the season's start day: "
        + fit.model().map(Object::toString).orElse("none")
        + ". Fit: maximum likelihood, "
        + fit.shape().curve().words()
        + " flights, "
        + counts
        + ".";
  }

  private static String interval(FlightTimingFit fit) {
    return fit.interval()
        .map(FlightFigure::estimate)
        .orElse(
            fit.verdict().words()
                + "; published "
                + FigureWords.degreeDays(fit.workingInterval().degreeDaysC()));
  }

  private static String estimate(IntervalEstimate estimate) {
    var mean = FigureWords.degreeDays(estimate.mean().degreeDaysC());
    return estimate.seasons() == 1
        ? mean + " (one season only)"
        : mean
            + ", 90 % interval ± "
            + Numbers.fixed(estimate.halfWidthOfMeanC(0.9), 0)
            + " from "
            + estimate.seasons()
            + " seasons";
  }

  private static ResultTable data(FlightTimingFit fit, List<SeasonTiming> seasons) {
    var labels = seasons.stream().map(SeasonTiming::label).toList();
    var rows =
        fit.visits().stream()
            .filter(visit -> labels.contains(visit.label()))
            .sorted(
                Comparator.comparing(VisitFit::label).thenComparingDouble(VisitFit::toDegreeDaysC))
            .map(FlightFigure::dataRow)
            .toList();
    return ResultTable.of(
        "Visits with their fitted means",
        List.of(
            Column.of("Season"),
            Column.of("From", FigureWords.DEGREE_DAYS),
            Column.of("To", FigureWords.DEGREE_DAYS),
            Column.of("Open trap-nights"),
            Column.of("Count", "adults"),
            Column.of("Catch", "adults per trap-night"),
            Column.of("Fitted mean", "adults per trap-night"),
            Column.of("Trap")),
        rows);
  }

  private static List<Cell> dataRow(VisitFit visit) {
    return List.of(
        Cell.text(visit.label()),
        Cell.number(visit.fromDegreeDaysC(), 1),
        Cell.number(visit.toDegreeDaysC(), 1),
        Cell.number(visit.nightsOpen(), 1),
        Cell.number(visit.count(), 0),
        Cell.number(visit.catchPerNight(), 2),
        Cell.number(visit.meanPerNight(), 2),
        Cell.text(visit.full() ? "full" : "working"));
  }
}
