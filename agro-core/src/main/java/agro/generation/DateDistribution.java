package agro.generation;

import agro.units.Numbers;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A date that is not known for certain, the chance that it does not come this season included.
 *
 * <p>Held as equally likely outcomes in days since the start of the season's first day; an outcome
 * that does not come by the season's last day is infinite and stays in every quantile.
 */
public final class DateDistribution {

  private final LocalDate firstDay;
  private final double[] days;

  private DateDistribution(LocalDate firstDay, double[] sortedDays) {
    this.firstDay = firstDay;
    days = sortedDays;
  }

  /**
   * A distribution of equally likely outcomes.
   *
   * @param firstDay first day of the season
   * @param days days since the start of that day, with fractions; positive infinity for "not this
   *     season"; at least one value, none NaN or negative infinity
   * @return the distribution
   */
  public static DateDistribution ofOutcomes(LocalDate firstDay, double[] days) {
    var sorted = days.clone();
    Arrays.sort(sorted);
    if (sorted.length == 0
        || Double.isNaN(sorted[sorted.length - 1])
        || sorted[0] == Double.NEGATIVE_INFINITY) {
      throw new IllegalArgumentException(
          "outcomes of a date are numbers or positive infinity, at least one");
    }
    return new DateDistribution(Objects.requireNonNull(firstDay), sorted);
  }

  /**
   * The date by which a share of the outcomes has come.
   *
   * @param probability above 0 and below 1
   * @return the date, or nothing when so many outcomes do not come this season
   */
  public Optional<LocalDate> quantile(double probability) {
    var value = quantileDays(probability);
    return Double.isFinite(value)
        ? Optional.of(firstDay.plusDays((long) Math.floor(value)))
        : Optional.empty();
  }

  /**
   * The quantile as a number.
   *
   * @param probability above 0 and below 1
   * @return days since the start of the first day; positive infinity for "not this season"
   */
  public double quantileDays(double probability) {
    if (!(probability > 0 && probability < 1)) {
      throw new IllegalArgumentException(
          "a probability lies between 0 and 1, but got " + probability);
    }
    return days[Math.min(days.length - 1, (int) (probability * days.length))];
  }

  /**
   * Days from a day to the date by which a share of the outcomes has come.
   *
   * @param day for example the day of issue
   * @param probability above 0 and below 1
   * @return whole days, negative when the date lies before; empty when so many outcomes do not come
   *     this season
   */
  public OptionalInt daysFrom(LocalDate day, double probability) {
    var date = quantile(probability);
    return date.isPresent()
        ? OptionalInt.of(Math.toIntExact(ChronoUnit.DAYS.between(day, date.get())))
        : OptionalInt.empty();
  }

  /**
   * The date that is as likely passed as not.
   *
   * @return the median, or nothing when it is more likely that the date does not come this season
   */
  public Optional<LocalDate> median() {
    return quantile(0.5);
  }

  /**
   * The central interval that holds the date with a probability.
   *
   * @param probability for example 0.9, above 0 and below 1
   * @return the interval
   */
  public DateInterval interval(double probability) {
    return new DateInterval(
        quantile((1 - probability) / 2), quantile(1 - (1 - probability) / 2), probability);
  }

  /**
   * The chance that the date does not come this season.
   *
   * @return 0 to 1
   */
  public double chanceNotThisSeason() {
    var infinite = 0;
    for (var i = days.length - 1; i >= 0 && Double.isInfinite(days[i]); i--) {
      infinite++;
    }
    return (double) infinite / days.length;
  }

  /**
   * The chance that the date has come by the end of a day.
   *
   * @param day the day
   * @return 0 to 1
   */
  public double chanceBy(LocalDate day) {
    var end = ChronoUnit.DAYS.between(firstDay, day) + 1.0;
    var come = 0;
    for (var value : days) {
      come += value < end ? 1 : 0;
    }
    return (double) come / days.length;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DateDistribution that
        && firstDay.equals(that.firstDay)
        && Arrays.equals(days, that.days);
  }

  @Override
  public int hashCode() {
    return 31 * firstDay.hashCode() + Arrays.hashCode(days);
  }

  @Override
  public String toString() {
    return median().map(LocalDate::toString).orElse("not this season")
        + " (median; not this season with chance "
        + Numbers.fixed(chanceNotThisSeason(), 2)
        + ")";
  }
}
