package agro.weather.gap;

import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.DayRuns;
import agro.weather.Extreme;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;

/** Fills from a neighbour by a regression for each month, minima and maxima apart. */
final class NeighbourFiller implements GapFiller {

  private final DailyTemperatures series;
  private final DailyTemperatures neighbour;
  private final MonthlyRegressions minima;
  private final MonthlyRegressions maxima;
  private final ErrorCorrelation correlation;

  NeighbourFiller(DailyTemperatures series, DailyTemperatures neighbour, int leastPairs) {
    neighbour.medium().require(series.medium().kind(), "the series with gaps");
    this.series = series;
    this.neighbour = neighbour;
    minima = new MonthlyRegressions(series, neighbour, Extreme.MINIMUM, leastPairs);
    maxima = new MonthlyRegressions(series, neighbour, Extreme.MAXIMUM, leastPairs);
    correlation =
        ErrorCorrelation.cut(0.5 * (minima.lag1() + maxima.lag1()), minima.correlationWith(maxima));
  }

  @Override
  public GapMethod method() {
    return GapMethod.NEIGHBOUR;
  }

  @Override
  public Proposal propose(DayRuns.Run gap) {
    if (!minima.isUsable()) {
      return Proposal.refused(
          neighbour.place()
              + " has "
              + minima.pairs()
              + " days in common, and "
              + minima.leastPairs()
              + " are needed");
    }
    var days = new ArrayList<DayFill>();
    var whole = whole(gap);
    boolean all = true;
    for (int i = 1; i <= gap.days(); i++) {
      var day = gap.first().plusDays(i - 1L);
      var min = prediction(minima, whole, day);
      var max = prediction(maxima, whole, day);
      var fill = new DayFill(min.value(), max.value(), min.error(), max.error());
      days.add(fill);
      all &= fill.isKnown();
    }
    var month = gap.first().getMonth();
    return new Proposal(
        days,
        correlation,
        neighbour.place()
            + ", "
            + minima.basis(month)
            + ", residual scatter "
            + Numbers.fixed(minima.of(month).deviation(), 1)
            + " and "
            + Numbers.fixed(maxima.of(month).deviation(), 1)
            + " °C",
        all ? "" : neighbour.place() + " has no temperatures either");
  }

  /** A predicted extreme with its standard error. */
  private record Prediction(double value, double error) {}

  /**
   * The line at the neighbour's value, drawn to the residuals beside the gap. Its error holds the
   * scatter that is left between them, the error of the line, which rests on fewer independent days
   * than there are pairs, and the neighbour's own error.
   */
  private Prediction prediction(MonthlyRegressions lines, DayRuns.Run gap, LocalDate day) {
    var line = lines.of(day.getMonth());
    double x = lines.extreme().of(neighbour, day);
    double own = line.slope() * lines.extreme().standardError(neighbour, day);
    var bridge =
        new AutoregressiveBridge(
            lines.lag1(),
            gap.days(),
            lines.standardised(gap.first().minusDays(1)),
            lines.standardised(gap.last().plusDays(1)));
    int place = (int) ChronoUnit.DAYS.between(gap.first(), day) + 1;
    double scatter = bridge.deviation(place);
    double variance =
        line.deviation()
                * line.deviation()
                * (scatter * scatter + line.leverage(x) * lines.inflation())
            + own * own;
    return new Prediction(
        line.value(x) + line.deviation() * bridge.mean(place), Math.sqrt(variance));
  }

  /** The days around a day that are missing in the series, as far as the gap goes. */
  private DayRuns.Run whole(DayRuns.Run gap) {
    var first = gap.first();
    while (isUnknown(first.minusDays(1))) {
      first = first.minusDays(1);
    }
    var last = gap.last();
    while (isUnknown(last.plusDays(1))) {
      last = last.plusDays(1);
    }
    return new DayRuns.Run(first, last);
  }

  private boolean isUnknown(LocalDate day) {
    return series.covers(day) && series.origin(day) == DayOrigin.MISSING;
  }
}
