package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A change between two readings that is too large for the time between them.
 *
 * @param tolerances largest changes by the time they take, in ascending order of time; between two
 *     of them the limit lies on a straight line, before the first it is that of the first, and
 *     after the last nothing is checked
 */
public record StepCheck(List<Tolerance> tolerances) implements QualityCheck, ReadingsTest {

  private static final double SECONDS_OF_HOUR = 3600;

  /**
   * The largest change over some time.
   *
   * @param within the time
   * @param celsius the largest change in °C, above 0
   */
  public record Tolerance(Duration within, double celsius) {
    /**
     * Checks that time and change are above zero.
     *
     * @throws InputProblem when one is not
     */
    public Tolerance {
      if (within.isNegative() || within.isZero() || !(celsius > 0)) {
        throw InputProblem.of("a tolerance of " + celsius + " °C within " + within)
            .expected("a change above 0 °C and a time above zero")
            .because("readings change as time goes on")
            .mend("give for example 4 °C and one hour");
      }
    }
  }

  /**
   * Checks the order.
   *
   * @throws InputProblem when there is none, or times or changes do not ascend
   */
  public StepCheck {
    tolerances = List.copyOf(tolerances);
    boolean inOrder = !tolerances.isEmpty();
    for (int i = 1; i < tolerances.size(); i++) {
      inOrder &= tolerances.get(i).within().compareTo(tolerances.get(i - 1).within()) > 0;
      inOrder &= tolerances.get(i).celsius() >= tolerances.get(i - 1).celsius();
    }
    if (!inOrder) {
      throw InputProblem.of("the tolerances " + tolerances)
          .expected("at least one, ascending in time and not falling in °C")
          .because("more time allows for more change")
          .mend("sort them, or take StepCheck.published()");
    }
  }

  /**
   * 4, 7, 9, 15 and 25 °C within 1, 2, 3, 6 and 12 hours (World Meteorological Organization 1993),
   * and 3 °C from one minute to the next (Zahumenský 2004, from memory).
   *
   * @return the check
   */
  public static StepCheck published() {
    var tolerances = new ArrayList<Tolerance>();
    tolerances.add(new Tolerance(Duration.ofMinutes(1), 3));
    tolerances.add(new Tolerance(Duration.ofHours(1), 4));
    tolerances.add(new Tolerance(Duration.ofHours(2), 7));
    tolerances.add(new Tolerance(Duration.ofHours(3), 9));
    tolerances.add(new Tolerance(Duration.ofHours(6), 15));
    tolerances.add(new Tolerance(Duration.ofHours(12), 25));
    return new StepCheck(tolerances);
  }

  /**
   * One limit in proportion to time.
   *
   * @param celsiusPerHour largest change within an hour, in °C
   * @return a check of readings up to twelve hours apart
   */
  public static StepCheck ofHourly(double celsiusPerHour) {
    return new StepCheck(
        List.of(
            new Tolerance(Duration.ofHours(1), celsiusPerHour),
            new Tolerance(Duration.ofHours(12), 12 * celsiusPerHour)));
  }

  /**
   * The largest change that passes.
   *
   * @param seconds time between two readings
   * @return °C; infinite beyond the longest time that is checked
   */
  public double toleranceCelsius(long seconds) {
    var before = tolerances.get(0);
    if (seconds <= before.within().toSeconds()) {
      return before.celsius();
    }
    for (var after : tolerances) {
      if (seconds <= after.within().toSeconds()) {
        double share =
            (double) (seconds - before.within().toSeconds())
                / (after.within().toSeconds() - before.within().toSeconds());
        return before.celsius() + share * (after.celsius() - before.celsius());
      }
      before = after;
    }
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public QualityRule rule() {
    return QualityRule.STEP;
  }

  @Override
  public String limits() {
    return tolerances.stream()
        .map(
            tolerance ->
                Numbers.plain(tolerance.celsius())
                    + " °C within "
                    + Numbers.significant(tolerance.within().toSeconds() / SECONDS_OF_HOUR, 2)
                    + " h")
        .collect(Collectors.joining(", "));
  }

  @Override
  public void flag(ReadingsInTest series) {
    int[] places = series.usable();
    for (int i = 1; i < places.length; i++) {
      long seconds = series.second(places[i]) - series.second(places[i - 1]);
      double change = series.celsius(places[i]) - series.celsius(places[i - 1]);
      double limit = toleranceCelsius(seconds);
      if (Math.abs(change) > limit) {
        series.note(
            rule(), places[i], places[i], change, limit, "°C", why(series, places, i, change));
      }
    }
  }

  private static String why(ReadingsInTest series, int[] places, int at, double change) {
    var minutes =
        Numbers.fixed((series.second(places[at]) - series.second(places[at - 1])) / 60.0, 0);
    var words =
        (change > 0 ? "rises " : "falls ")
            + Numbers.fixed(Math.abs(change), 1)
            + " °C in "
            + minutes
            + " min";
    return stays(series, places, at, change)
        ? words + " and stays there: a front, or a sensor that was moved, wetted or replaced"
        : words + ": sun on the sensor, a front, or a fault";
  }

  /** Whether most of a change is still there a day later, set against a day earlier. */
  private static boolean stays(ReadingsInTest series, int[] places, int at, double change) {
    double before = mean(series, places, at, -1);
    double after = mean(series, places, at, 1);
    return (after - before) / change > 0.5;
  }

  private static double mean(ReadingsInTest series, int[] places, int at, int direction) {
    int start = direction > 0 ? at : at - 1;
    double sum = 0;
    int count = 0;
    for (int i = start; i >= 0 && i < places.length; i += direction) {
      if (Math.abs(series.second(places[i]) - series.second(places[start])) >= 86_400) {
        break;
      }
      sum += series.celsius(places[i]);
      count++;
    }
    return sum / count;
  }
}
