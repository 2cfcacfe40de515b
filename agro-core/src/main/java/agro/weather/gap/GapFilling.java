package agro.weather.gap;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayRuns;
import agro.weather.ShortGaps;
import agro.weather.climate.ClimateNormals;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Filling of gaps in a daily series, as far as it is allowed: short gaps on a straight line, then a
 * neighbour, then the climate. Nothing is allowed until it is asked for. Every filled day carries
 * the standard error of its extremes; every gap is told with what was done or why it was left open.
 * Immutable.
 */
public final class GapFilling {

  /** Fewest common days for a regression on a neighbour (common practice, no source). */
  public static final int USUAL_LEAST_PAIRS = 20;

  private static final int FEWEST_PAIRS = 5;

  private final int longestLineDays;
  private final List<DailyTemperatures> neighbours;
  private final Optional<ClimateNormals> normals;
  private final int leastPairs;
  private final Optional<LocalDate> asOf;

  private GapFilling(
      int longestLineDays,
      List<DailyTemperatures> neighbours,
      Optional<ClimateNormals> normals,
      int leastPairs,
      Optional<LocalDate> asOf) {
    this.longestLineDays = longestLineDays;
    this.neighbours = List.copyOf(neighbours);
    this.normals = normals;
    this.leastPairs = leastPairs;
    this.asOf = asOf;
  }

  /**
   * A filling that is allowed nothing as yet.
   *
   * @return settings to be widened
   */
  public static GapFilling withDefaults() {
    return new GapFilling(0, List.of(), Optional.empty(), USUAL_LEAST_PAIRS, Optional.empty());
  }

  /**
   * Allows straight lines over short gaps between two known days, the minimum and the maximum each
   * for itself. Their error comes from artificial gaps of the same length in the series itself.
   *
   * @param longestDays longest gap that is filled so, in days, 0 or more
   * @return these settings with that length
   * @throws InputProblem when it is negative
   */
  public GapFilling interpolateUpTo(int longestDays) {
    ShortGaps.requireDays(longestDays);
    return new GapFilling(longestDays, neighbours, normals, leastPairs, asOf);
  }

  /**
   * Allows a neighbour, after those that were allowed before. The place is predicted from it by a
   * regression for each month, minima and maxima apart. The error is that of a prediction: scatter
   * about the line and error of the line itself.
   *
   * @param station daily extremes of the neighbour, as measured there
   * @return these settings with that neighbour
   */
  public GapFilling neighbour(DailyTemperatures station) {
    var all = new ArrayList<>(neighbours);
    all.add(Objects.requireNonNull(station, "station"));
    return new GapFilling(longestLineDays, all, normals, leastPairs, asOf);
  }

  /**
   * Fewest days observed at both for a regression on a neighbour. A month with fewer takes the
   * months beside it, then all the year.
   *
   * @param pairs 5 or more
   * @return these settings with that number
   * @throws InputProblem when it is less
   */
  public GapFilling leastPairs(int pairs) {
    if (pairs < FEWEST_PAIRS) {
      throw InputProblem.of("a regression on " + pairs + " days")
          .expected("at least " + FEWEST_PAIRS + " days")
          .because("a line through so few points says nothing about its own error")
          .mend("give 20, or a longer common time");
    }
    return new GapFilling(longestLineDays, neighbours, normals, pairs, asOf);
  }

  /**
   * Allows what is usual on a day, drawn to the departures of the known days beside the gap.
   *
   * @param climate normals of the place
   * @return these settings with the normals
   */
  public GapFilling climatology(ClimateNormals climate) {
    return new GapFilling(longestLineDays, neighbours, Optional.of(climate), leastPairs, asOf);
  }

  /**
   * Fills as it could have been done at the end of a day: no temperature of a later day is used,
   * neither of the series nor of a neighbour nor of the climate, and the result ends on that day.
   *
   * @param day last day whose temperatures may be used
   * @return these settings with that day
   */
  public GapFilling asOf(LocalDate day) {
    return new GapFilling(longestLineDays, neighbours, normals, leastPairs, Optional.of(day));
  }

  /**
   * Fills a series.
   *
   * @param series daily extremes
   * @return the filled series, and each gap with what was done
   * @throws InputProblem when a neighbour or the climate is of another kind of medium, or the day
   *     of {@link #asOf} is before the series
   */
  public FilledDays fill(DailyTemperatures series) {
    var known = asOf.map(series::upTo).orElse(series);
    var notes = new ArrayList<String>();
    var fillers = fillers(known, notes);
    var days = DailyTemperatures.builder(known.firstDay(), known.lastDay());
    known.copyInto(days, known.firstDay());
    var gaps = new ArrayList<FilledGap>();
    for (var gap : DayRuns.of(known.missingDays())) {
      gaps.addAll(new GapWork(fillers, days).fill(gap));
    }
    return new FilledDays(days.build(known.place(), known.medium()), gaps, notes);
  }

  private List<GapFiller> fillers(DailyTemperatures known, List<String> notes) {
    var fillers = new ArrayList<GapFiller>();
    if (longestLineDays > 0) {
      fillers.add(new LineFiller(known, longestLineDays));
    }
    for (var station : neighbours) {
      if (asOf.isEmpty() || !station.firstDay().isAfter(asOf.get())) {
        var stationKnown = asOf.map(station::upTo).orElse(station);
        fillers.add(new NeighbourFiller(known, stationKnown, leastPairs));
      }
    }
    if (normals.isPresent()) {
      var climate = asOf.map(normals.get()::asOf).orElse(normals.get());
      fillers.add(new NormalsFiller(known, climate));
      if (!climate.place().equals(known.place())) {
        notes.add("the normals of " + climate.place() + " hold for " + known.place() + " too");
      }
    }
    return fillers;
  }

  /**
   * Fills gaps between two known days on a straight line, the minimum and the maximum each for
   * itself. Longer gaps stay open, for a straight line through a week of weather is a guess; so do
   * gaps at the ends, where there is no second known day.
   *
   * @param series daily extremes
   * @param longestDays longest gap that is filled, in days, 0 or more
   * @return the filled series and what was done
   * @throws InputProblem when the longest gap is negative
   */
  public static FilledDays interpolateShortGaps(DailyTemperatures series, int longestDays) {
    return withDefaults().interpolateUpTo(longestDays).fill(series);
  }

  @Override
  public String toString() {
    var ways = new ArrayList<String>();
    if (longestLineDays > 0) {
      ways.add(
          "straight lines up to " + longestLineDays + (longestLineDays == 1 ? " day" : " days"));
    }
    neighbours.forEach(station -> ways.add("neighbour " + station.place()));
    normals.ifPresent(climate -> ways.add(climate.toString()));
    asOf.ifPresent(day -> ways.add("as of " + day));
    return ways.isEmpty() ? "nothing allowed" : String.join(", ", ways);
  }
}
