package agro.programme.window;

import agro.units.Length;
import agro.units.Speed;
import agro.units.Temperature;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The user's own limits for hours of treatment. There are none to begin with; each is added by the
 * user, from the label, the law or experience.
 *
 * @param limits the limits
 */
public record SprayLimits(List<HourLimit> limits) {

  private static final double MILLIMETRES = 1000;

  /** Copies the list. */
  public SprayLimits {
    limits = List.copyOf(limits);
  }

  /**
   * No limit at all.
   *
   * @return limits to be filled
   */
  public static SprayLimits none() {
    return new SprayLimits(List.of());
  }

  /**
   * These limits and one more.
   *
   * @param limit the limit
   * @return new limits
   */
  public SprayLimits and(HourLimit limit) {
    var more = new ArrayList<>(limits);
    more.add(limit);
    return new SprayLimits(more);
  }

  /**
   * These limits and a highest wind.
   *
   * @param most highest wind
   * @return new limits
   */
  public SprayLimits windUpTo(Speed most) {
    return and(within(WeatherKind.WIND, OptionalDouble.empty(), most.metresPerSecond()));
  }

  /**
   * These limits and a span of wind.
   *
   * @param least lowest wind
   * @param most highest wind
   * @return new limits
   */
  public SprayLimits windBetween(Speed least, Speed most) {
    return and(
        within(
            WeatherKind.WIND, OptionalDouble.of(least.metresPerSecond()), most.metresPerSecond()));
  }

  /**
   * These limits and a strongest gust.
   *
   * @param most strongest gust
   * @return new limits
   */
  public SprayLimits gustsUpTo(Speed most) {
    return and(within(WeatherKind.GUST, OptionalDouble.empty(), most.metresPerSecond()));
  }

  /**
   * These limits and a span of temperature.
   *
   * @param least lowest temperature
   * @param most highest temperature
   * @return new limits
   */
  public SprayLimits temperatureBetween(Temperature least, Temperature most) {
    return and(within(WeatherKind.TEMPERATURE, OptionalDouble.of(least.celsius()), most.celsius()));
  }

  /**
   * These limits and a span of humidity.
   *
   * @param leastPercent lowest relative humidity in per cent
   * @param mostPercent highest relative humidity in per cent
   * @return new limits
   */
  public SprayLimits humidityBetween(double leastPercent, double mostPercent) {
    return and(within(WeatherKind.HUMIDITY, OptionalDouble.of(leastPercent), mostPercent));
  }

  private static HourLimit within(WeatherKind kind, OptionalDouble least, double most) {
    return new HourLimit.Within(kind, least, OptionalDouble.of(most));
  }

  /**
   * These limits and dry hours before.
   *
   * @param hours whole hours before the hour of treatment
   * @param most most rain in them
   * @return new limits
   */
  public SprayLimits rainBefore(int hours, Length most) {
    return and(new HourLimit.RainBefore(hours, MILLIMETRES * most.inBaseUnit()));
  }

  /**
   * These limits and dry hours after; the hour of treatment counts too.
   *
   * @param hours whole hours after the hour of treatment
   * @param most most rain in all of them
   * @return new limits
   */
  public SprayLimits rainAfter(int hours, Length most) {
    return and(new HourLimit.RainAfter(hours, MILLIMETRES * most.inBaseUnit()));
  }

  /**
   * These limits without hours in which the air may lie still under warmer air.
   *
   * @param below wind below which that may be
   * @param beforeSunset from how long before sunset on
   * @param afterSunrise until how long after sunrise
   * @return new limits
   */
  public SprayLimits noStillNightAir(Speed below, Duration beforeSunset, Duration afterSunrise) {
    return and(new HourLimit.InversionRisk(below.metresPerSecond(), beforeSunset, afterSunrise));
  }

  /**
   * These limits, by daylight only.
   *
   * @return new limits
   */
  public SprayLimits byDaylight() {
    return and(new HourLimit.DaylightOnly(Duration.ZERO));
  }

  /**
   * These limits without the hours in which bees fly.
   *
   * @param margin time before sunrise and after sunset in which some still fly
   * @return new limits
   */
  public SprayLimits notWhileBeesFly(Duration margin) {
    return and(new HourLimit.NoBees(margin, OptionalDouble.empty()));
  }

  /**
   * These limits within hours of the clock.
   *
   * @param from from when
   * @param to until when; before the beginning for hours past midnight
   * @return new limits
   */
  public SprayLimits between(LocalTime from, LocalTime to) {
    return and(new HourLimit.WorkingHours(from, to));
  }

  /**
   * These limits and what a treatment asks for by itself: hours without rain after its end, and for
   * the evening the hours from some time before sunset to sunrise.
   *
   * @param residue the treatment
   * @param eveningFrom how long before sunset the evening begins, for a treatment of the evening
   * @return new limits
   */
  public SprayLimits forTreatment(ResidueDays residue, Duration eveningFrom) {
    var more = this;
    if (residue.rainFreeHours() > 0) {
      more = more.and(new HourLimit.RainAfter((int) Math.ceil(residue.rainFreeHours()), 0));
    }
    return residue.evening() ? more.and(new HourLimit.EveningOnly(eveningFrom)) : more;
  }
}
