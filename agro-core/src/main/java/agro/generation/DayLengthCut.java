package agro.generation;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.Numbers;
import agro.weather.sun.DayLength;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Short days send the pest into diapause: eggs laid after the day on which day length falls below a
 * critical one grow up, but give no further flight this season. Days that are as short in spring do
 * not count.
 *
 * @param rule day length at the place
 * @param criticalHours critical day length in hours, above 0 and below 24
 * @param source where the critical day length comes from
 */
public record DayLengthCut(DayLength rule, double criticalHours, Reference source) {

  private static final double HOURS = 24;

  /**
   * Checks the hours.
   *
   * @throws InputProblem when they are not between 0 and 24
   */
  public DayLengthCut {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(source, "source");
    if (!(criticalHours > 0 && criticalHours < HOURS)) {
      throw InputProblem.of("a critical day length of " + Numbers.plain(criticalHours) + " h")
          .expected("hours above 0 and below 24")
          .because("a day has 24 hours")
          .mend("give hours with a decimal point, for example 15.5 for fifteen and a half");
    }
  }

  /**
   * The first day, from the longest day of a season on, whose length is below the critical one.
   *
   * @param first first day of the season
   * @param last last day of the season
   * @return the day, which is the longest one itself where no day is long enough; empty when day
   *     length does not fall below the critical one by the last day
   */
  public Optional<LocalDate> firstShortDay(LocalDate first, LocalDate last) {
    var longest = first;
    for (var day = first; !day.isAfter(last); day = day.plusDays(1)) {
      longest = rule.hours(day) > rule.hours(longest) ? day : longest;
    }
    for (var day = longest; !day.isAfter(last); day = day.plusDays(1)) {
      if (rule.hours(day) < criticalHours) {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }
}
