package agro.development.field;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;

/**
 * One season or site with its daily temperatures, for criteria that count days below the base as
 * nothing.
 *
 * @param label season or site
 * @param temperatures daily extremes without a missing day from the start to the event
 * @param start first day that counts
 * @param event day on which the event was seen, which itself does not count
 */
public record FieldSeasonLog(
    String label, DailyTemperatures temperatures, LocalDate start, LocalDate event) {

  /**
   * Checks the days.
   *
   * @throws InputProblem when the event is not after the start, or a day between is missing
   */
  public FieldSeasonLog {
    Objects.requireNonNull(label, "label");
    if (!event.isAfter(start)) {
      throw InputProblem.of(label + ": an event on " + event + " and a start on " + start)
          .expected("an event after the start")
          .because("there are no days between them")
          .mend("look whether the two are swapped or of different years");
    }
    var run = temperatures.between(start, event.minusDays(1));
    if (!run.missingDays().isEmpty()) {
      throw InputProblem.of(label + ": no temperatures on " + run.missingDays().get(0))
          .expected("extremes for every day from the start to the event")
          .because("a day left out would count as a day without development")
          .mend("fill the gap first, or leave the season out");
    }
  }

  private DailyTemperatures run() {
    return temperatures.between(start, event.minusDays(1));
  }

  /** Lowest temperatures of the days from the start to the day before the event, in °C. */
  double[] minimaCelsius() {
    return run().minimaCelsius();
  }

  /** Highest temperatures of the days from the start to the day before the event, in °C. */
  double[] maximaCelsius() {
    return run().maximaCelsius();
  }

  /**
   * Number of days and their mean temperature, the middle between the extremes.
   *
   * @return the duration
   */
  public FieldDuration duration() {
    var minima = minimaCelsius();
    var maxima = maximaCelsius();
    double sum = 0;
    for (int i = 0; i < minima.length; i++) {
      sum += 0.5 * (minima[i] + maxima[i]);
    }
    return new FieldDuration(label, ChronoUnit.DAYS.between(start, event), sum / minima.length);
  }
}
