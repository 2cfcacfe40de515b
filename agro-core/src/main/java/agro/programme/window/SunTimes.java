package agro.programme.window;

import agro.programme.FarmField;
import agro.weather.sun.DayLength;
import agro.weather.sun.Latitude;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;

/** Sunrise and sunset of a field as moments. */
record SunTimes(double latitude, double longitude) {

  static Optional<SunTimes> of(FarmField field) {
    return field.latitudeDegrees().isPresent() && field.longitudeDegrees().isPresent()
        ? Optional.of(
            new SunTimes(
                field.latitudeDegrees().getAsDouble(), field.longitudeDegrees().getAsDouble()))
        : Optional.empty();
  }

  Instant sunrise(LocalDate day) {
    var light = DayLength.at(new Latitude(latitude)).daylight(day);
    return moment(day, light.sunriseOnClock(longitude, ZoneOffset.UTC));
  }

  Instant sunset(LocalDate day) {
    var light = DayLength.at(new Latitude(latitude)).daylight(day);
    return moment(day, light.sunsetOnClock(longitude, ZoneOffset.UTC));
  }

  private static Instant moment(LocalDate day, double hour) {
    return day.atStartOfDay(ZoneOffset.UTC).toInstant().plusSeconds(Math.round(hour * 3600));
  }

  /** Whether an hour touches a night, which is longer by what is given. */
  boolean touchesNight(Instant start, LocalDate day, Duration beforeSunset, Duration afterSunrise) {
    var end = start.plus(Duration.ofHours(1));
    for (int i = -1; i <= 0; i++) {
      var evening = sunset(day.plusDays(i)).minus(beforeSunset);
      var morning = sunrise(day.plusDays(i + 1L)).plus(afterSunrise);
      if (start.isBefore(morning) && end.isAfter(evening)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a whole hour lies between an evening, begun earlier by what is given, and sunrise. */
  boolean liesInEvening(
      Instant start, LocalDate day, Duration beforeSunset, Duration beforeSunrise) {
    var end = start.plus(Duration.ofHours(1));
    for (int i = -1; i <= 0; i++) {
      var evening = sunset(day.plusDays(i)).minus(beforeSunset);
      if (!start.isBefore(evening)
          && !end.isAfter(sunrise(day.plusDays(i + 1L)).minus(beforeSunrise))) {
        return true;
      }
    }
    return false;
  }
}
