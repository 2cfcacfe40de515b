package agro.development;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.ThermalTime;
import agro.working.Presentable;
import agro.working.Presentation;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Degree-days of many stations added up over one run of days, which can be counted from any day of
 * the run: a sum of a stretch is the difference of two sums, with a rounding error far below 1e-6
 * °C·d over a century. A missing day adds nothing, and no figure is given for a stretch that
 * contains one. Immutable once it has been handed out.
 */
public final class StationSums implements Presentable {

  private static final int[] NONE = {};
  private static final int BYTES_OF_A_SUM = 8;

  private final DegreeDayModel model;
  private final List<String> places;
  private final LocalDate firstDay;
  private final int days;

  /** Sum at the end of each day since the first day, station by station. */
  private final double[] sums;

  /** Missing days of each station in ascending order. */
  private final int[][] missing;

  StationSums(DegreeDayModel model, List<String> places, LocalDate firstDay, int days) {
    this.model = model;
    this.places = List.copyOf(places);
    this.firstDay = firstDay;
    this.days = days;
    long size = (long) places.size() * days;
    if (size > Integer.MAX_VALUE - BYTES_OF_A_SUM) {
      throw InputProblem.of(places.size() + " stations of " + days + " days")
          .expected("at most two thousand million station-days at a time")
          .because("the sums would not fit into one array")
          .mend("give the stations in several parts");
    }
    sums = new double[(int) size];
    missing = new int[places.size()][];
  }

  /** Where the degree-days of single days go before {@link #addUp}. */
  double[] daily() {
    return sums;
  }

  /** Turns the degree-days of a station into sums. */
  void addUp(int station) {
    int from = station * days;
    int lacking = 0;
    var gaps = NONE;
    double sum = 0;
    for (int i = 0; i < days; i++) {
      double day = sums[from + i];
      if (Double.isNaN(day)) {
        gaps = lacking < gaps.length ? gaps : Arrays.copyOf(gaps, Math.max(8, 2 * lacking));
        gaps[lacking++] = i;
      } else {
        sum += day;
      }
      sums[from + i] = sum;
    }
    missing[station] = Arrays.copyOf(gaps, lacking);
  }

  /**
   * The rule for the degree-days of a day.
   *
   * @return the model
   */
  public DegreeDayModel model() {
    return model;
  }

  /**
   * The stations in their order.
   *
   * @return names of the places
   */
  public List<String> places() {
    return places;
  }

  /**
   * First day of the run.
   *
   * @return a day that may be missing at some stations
   */
  public LocalDate firstDay() {
    return firstDay;
  }

  /**
   * Last day of the run.
   *
   * @return a day that may be missing at some stations
   */
  public LocalDate lastDay() {
    return firstDay.plusDays(days - 1L);
  }

  /**
   * Number of missing days of a station.
   *
   * @param station number of the station, from 0
   * @return 0 or more
   */
  public int missingDays(int station) {
    return missing[station].length;
  }

  /**
   * Memory that the sums take.
   *
   * @return bytes, without the names of the places
   */
  public long bytes() {
    long gaps = 0;
    for (var each : missing) {
      gaps += (long) Integer.BYTES * each.length;
    }
    return (long) BYTES_OF_A_SUM * sums.length + gaps;
  }

  /**
   * Degree-days of a stretch at one station.
   *
   * @param station number of the station, from 0
   * @param from first day that counts
   * @param to last day that counts, not before {@code from}
   * @return °C·d; NaN when a day of the stretch is missing
   * @throws InputProblem when the stretch is empty or reaches outside the run
   */
  public double degreeDaysC(int station, LocalDate from, LocalDate to) {
    int first = requireInside(from);
    int last = requireInside(to);
    if (last < first) {
      throw InputProblem.of("degree-days from " + from + " to " + to)
          .expected("a last day that is not before the first one")
          .because("there is no day to add up")
          .mend("swap the two days");
    }
    return limit(station, first) <= last ? Double.NaN : sum(station, last) - before(station, first);
  }

  /**
   * Degree-days of a stretch at all stations.
   *
   * @param from first day that counts
   * @param to last day that counts, not before {@code from}
   * @return a new array with a value in °C·d for each station; NaN where a day is missing
   * @throws InputProblem when the stretch is empty or reaches outside the run
   */
  public double[] degreeDaysC(LocalDate from, LocalDate to) {
    var result = new double[places.size()];
    for (int station = 0; station < result.length; station++) {
      result[station] = degreeDaysC(station, from, to);
    }
    return result;
  }

  /**
   * Days from the beginning of a day until a sum is reached at one station. Within a day the sum is
   * taken to grow evenly.
   *
   * @param station number of the station, from 0
   * @param start first day that counts, such as a biofix
   * @param degreeDaysC the sum in °C·d
   * @return days with their fraction; positive infinity when the sum is not reached by the end of
   *     the run, negative infinity for a negative sum, NaN when a missing day comes first or the
   *     sum is NaN
   * @throws InputProblem when the start is outside the run
   */
  public double daysUntil(int station, LocalDate start, double degreeDaysC) {
    return daysUntil(station, requireInside(start), degreeDaysC);
  }

  /**
   * Days from the beginning of a day until a sum is reached, at all stations.
   *
   * @param start first day that counts, such as a biofix
   * @param degreeDaysC the sum in °C·d
   * @return a new array with the days of each station, as {@link #daysUntil(int, LocalDate,
   *     double)} gives them
   * @throws InputProblem when the start is outside the run
   */
  public double[] daysUntil(LocalDate start, double degreeDaysC) {
    int first = requireInside(start);
    var result = new double[places.size()];
    for (int station = 0; station < result.length; station++) {
      result[station] = daysUntil(station, first, degreeDaysC);
    }
    return result;
  }

  private double daysUntil(int station, int first, double degreeDaysC) {
    if (!(degreeDaysC > 0)) {
      return degreeDaysC < 0 ? Double.NEGATIVE_INFINITY : degreeDaysC;
    }
    int limit = limit(station, first);
    double base = before(station, first);
    if (limit == first || degreeDaysC > sum(station, limit - 1) - base) {
      return limit == days ? Double.POSITIVE_INFINITY : Double.NaN;
    }
    int low = first + daysBelow(station, first, degreeDaysC);
    double before = low == first ? 0 : sum(station, low - 1) - base;
    return low - first + (degreeDaysC - before) / (sum(station, low) - base - before);
  }

  /**
   * The moment at which a sum is reached at one station.
   *
   * @param station number of the station, from 0
   * @param start first day that counts, such as a biofix
   * @param requirement thermal time since the beginning of the start day, not negative
   * @return the day and the share of it that has gone by, or nothing when the sum is not reached by
   *     the end of the run
   * @throws InputProblem when the start is outside the run, the sum is negative, or a missing day
   *     comes before it is reached
   */
  public Optional<Reached> reached(int station, LocalDate start, ThermalTime requirement) {
    double elapsed = daysUntil(station, start, requirement.degreeDaysC());
    if (elapsed == Double.POSITIVE_INFINITY) {
      return Optional.empty();
    }
    if (!(elapsed >= 0)) {
      throw InputProblem.of(
              "the day on which " + requirement + " are reached at " + places.get(station))
          .expected("a sum that is not negative, and no missing day from " + start + " until then")
          .because("a day left out would count as a day without development")
          .mend("fill the gaps of the station first, or count from a later start");
    }
    int day = Math.max(0, (int) Math.ceil(elapsed) - 1);
    return Optional.of(new Reached(start.plusDays(day), elapsed - day));
  }

  /** Number of a day in the run. */
  int indexOf(LocalDate day) {
    return requireInside(day);
  }

  /** Number of days of the run. */
  int days() {
    return days;
  }

  /** Whether a station misses no day from one on. */
  boolean isWholeFrom(int station, int first) {
    return limit(station, first) == days;
  }

  /** Sum from the beginning of one day to the end of another, whatever is missing. */
  double sumBetween(int station, int first, int last) {
    return sum(station, last) - before(station, first);
  }

  /**
   * First day, counted from one on, at whose end the sum since the beginning of that one is not
   * below a wanted sum; the number of days that are left when there is none.
   */
  int daysBelow(int station, int first, double wanted) {
    double base = before(station, first);
    int low = first;
    int high = days;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sum(station, middle) - base < wanted) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low - first;
  }

  private double sum(int station, int day) {
    return sums[station * days + day];
  }

  private double before(int station, int day) {
    return day == 0 ? 0 : sum(station, day - 1);
  }

  /** First missing day from a day on, or the number of days when there is none. */
  private int limit(int station, int from) {
    var gaps = missing[station];
    int place = Arrays.binarySearch(gaps, from);
    int next = place < 0 ? -place - 1 : place;
    return next < gaps.length ? gaps[next] : days;
  }

  private int requireInside(LocalDate day) {
    long index = ChronoUnit.DAYS.between(firstDay, day);
    if (index < 0 || index >= days) {
      throw InputProblem.of("the degree-day sums on " + day)
          .expected("a day from " + firstDay + " to " + lastDay())
          .because("nothing is known outside the days that were added up")
          .mend("ask for a day inside the run, or add up longer series");
    }
    return (int) index;
  }

  @Override
  public Presentation presentation() {
    long lacking = 0;
    for (var each : missing) {
      lacking += each.length;
    }
    return Presentation.titled("Degree-day sums")
        .fact("stations", Integer.toString(places.size()))
        .fact("days", firstDay + " to " + lastDay())
        .fact("station-days missing", lacking + " of " + sums.length)
        .fact("model", model.toString())
        .fact("memory", Numbers.fixed(bytes() / 1e6, 1) + " MB")
        .sources(List.of(model.method().source(), model.cutoff().source()))
        .build();
  }

  @Override
  public String toString() {
    return model + ", " + places.size() + " stations, " + firstDay + " to " + lastDay();
  }
}
