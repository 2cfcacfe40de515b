package agro.weather.gap;

import agro.weather.DailyTemperatures;
import agro.weather.DayRuns;
import agro.weather.Extreme;
import agro.weather.climate.ClimateNormals;
import java.time.LocalDate;
import java.util.ArrayList;

/** Fills with what is usual, drawn to the departures of the known days beside the gap. */
final class NormalsFiller implements GapFiller {

  private final DailyTemperatures series;
  private final ClimateNormals normals;

  NormalsFiller(DailyTemperatures series, ClimateNormals normals) {
    this.series = series;
    this.normals = normals;
    normals.medium().require(series.medium().kind(), "the series with gaps");
  }

  @Override
  public GapMethod method() {
    return GapMethod.CLIMATOLOGY;
  }

  @Override
  public Proposal propose(DayRuns.Run gap) {
    var days = new ArrayList<DayFill>();
    var minima = bridge(gap, Extreme.MINIMUM);
    var maxima = bridge(gap, Extreme.MAXIMUM);
    boolean all = true;
    for (int i = 1; i <= gap.days(); i++) {
      var day = gap.first().plusDays(i - 1L);
      days.add(
          new DayFill(
              value(Extreme.MINIMUM, day, minima, i),
              value(Extreme.MAXIMUM, day, maxima, i),
              error(Extreme.MINIMUM, day, minima, i),
              error(Extreme.MAXIMUM, day, maxima, i)));
      all &= normals.knows(day);
    }
    return new Proposal(
        days,
        ErrorCorrelation.cut(
            0.5 * (lag1(Extreme.MINIMUM) + lag1(Extreme.MAXIMUM)), normals.minToMaxCorrelation()),
        normals + ", drawn to the known days beside the gap",
        all ? "" : "the normals do not cover these days of the year");
  }

  private double lag1(Extreme extreme) {
    return normals.curve(extreme).lag1();
  }

  private double value(Extreme extreme, LocalDate day, AutoregressiveBridge bridge, int place) {
    return normals.normalCelsius(extreme, day)
        + normals.spreadCelsius(extreme, day) * bridge.mean(place);
  }

  private double error(Extreme extreme, LocalDate day, AutoregressiveBridge bridge, int place) {
    return Math.hypot(
        normals.spreadCelsius(extreme, day) * bridge.deviation(place),
        normals.normalErrorCelsius(extreme, day));
  }

  private AutoregressiveBridge bridge(DayRuns.Run gap, Extreme extreme) {
    return new AutoregressiveBridge(
        lag1(extreme),
        gap.days(),
        departure(extreme, gap.first().minusDays(1)),
        departure(extreme, gap.last().plusDays(1)));
  }

  /** Departure of a day in standard deviations, NaN when it is missing or nothing is usual. */
  private double departure(Extreme extreme, LocalDate day) {
    double spread = normals.spreadCelsius(extreme, day);
    return spread > 0
        ? (extreme.of(series, day) - normals.normalCelsius(extreme, day)) / spread
        : Double.NaN;
  }
}
