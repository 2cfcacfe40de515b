package agro.programme.window;

import agro.programme.FarmField;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the limits look at beside the hour itself. */
record HourContext(
    FarmField field, Optional<SunTimes> sun, NavigableMap<Instant, WeatherHour> hours) {

  LocalDate day(WeatherHour hour) {
    return hour.start().atZone(field.zone()).toLocalDate();
  }

  /** Rain of running hours; nothing when one of them is missing. */
  OptionalDouble rain(Instant from, int count) {
    double sum = 0;
    for (int i = 0; i < count; i++) {
      var hour = hours.get(from.plus(Duration.ofHours(i)));
      var rain = hour == null ? Optional.<WeatherHour.Span>empty() : hour.of(WeatherKind.RAIN);
      if (rain.isEmpty()) {
        return OptionalDouble.empty();
      }
      sum += rain.get().high();
    }
    return OptionalDouble.of(sum);
  }
}
