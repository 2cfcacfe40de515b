package agro.programme.interval;

import agro.programme.FarmField;
import agro.report.InputProblem;
import agro.weather.sun.DayLength;
import agro.weather.sun.Latitude;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The hours in which bees fly, from rules that the user sets. */
public sealed interface BeeFlight {

  /**
   * The hours of one day.
   *
   * @param from from when bees fly
   * @param to until when
   */
  record Hours(ZonedDateTime from, ZonedDateTime to) {}

  /**
   * The same hours of the clock every day.
   *
   * @param from from when bees fly
   * @param to until when
   */
  record ByTheClock(LocalTime from, LocalTime to) implements BeeFlight {
    /** Refuses an end before the beginning. */
    public ByTheClock {
      if (!to.isAfter(from)) {
        throw InputProblem.of("bees that fly from " + from + " to " + to)
            .expected("an end after the beginning, on one day")
            .because("bees fly by day")
            .mend("exchange the two hours");
      }
    }

    @Override
    public Optional<Hours> on(FarmField field, LocalDate day) {
      return Optional.of(
          new Hours(
              ZonedDateTime.of(day, from, field.zone()), ZonedDateTime.of(day, to, field.zone())));
    }
  }

  /**
   * From sunrise to sunset, with time added on both sides.
   *
   * @param margin time before sunrise and after sunset in which some still fly
   */
  record BySun(Duration margin) implements BeeFlight {
    @Override
    public Optional<Hours> on(FarmField field, LocalDate day) {
      if (field.latitudeDegrees().isEmpty() || field.longitudeDegrees().isEmpty()) {
        return Optional.empty();
      }
      double degrees = field.latitudeDegrees().getAsDouble();
      var latitude = degrees < 0 ? Latitude.south(-degrees) : Latitude.north(degrees);
      var light = DayLength.at(latitude).daylight(day);
      var noon = day.atTime(12, 0).atZone(field.zone());
      double east = field.longitudeDegrees().getAsDouble();
      var midnight = day.atStartOfDay().atOffset(noon.getOffset()).toZonedDateTime();
      return Optional.of(
          new Hours(
              after(midnight, light.sunriseOnClock(east, noon.getOffset()))
                  .minus(margin)
                  .withZoneSameInstant(field.zone()),
              after(midnight, light.sunsetOnClock(east, noon.getOffset()))
                  .plus(margin)
                  .withZoneSameInstant(field.zone())));
    }

    private static ZonedDateTime after(ZonedDateTime midnight, double hours) {
      return midnight.plusSeconds(Math.round(hours * 3600));
    }
  }

  /**
   * From sunrise to sunset while it is warm enough. An hour without a temperature counts as warm.
   *
   * @param leastCelsius temperature from which bees fly
   * @param celsius temperature by its moment
   */
  record ByTemperature(double leastCelsius, Map<Instant, Double> celsius) implements BeeFlight {
    /** Copies the temperatures. */
    public ByTemperature {
      celsius = Map.copyOf(celsius);
    }

    @Override
    public Optional<Hours> on(FarmField field, LocalDate day) {
      var light = new BySun(Duration.ZERO).on(field, day);
      if (light.isEmpty()) {
        return light;
      }
      var from = light.get().from();
      var to = light.get().to();
      var ordered = new TreeMap<>(celsius);
      while (from.isBefore(to) && tooCold(ordered, from)) {
        from = from.plusMinutes(15);
      }
      while (to.isAfter(from) && tooCold(ordered, to)) {
        to = to.minusMinutes(15);
      }
      return Optional.of(new Hours(from, to));
    }

    private boolean tooCold(TreeMap<Instant, Double> ordered, ZonedDateTime moment) {
      var before = ordered.floorEntry(moment.toInstant());
      boolean recent =
          before != null && Duration.between(before.getKey(), moment.toInstant()).toMinutes() < 90;
      return recent && before.getValue() < leastCelsius;
    }
  }

  /**
   * The hours in which bees fly on a day. Where there are none, both ends are the same.
   *
   * @param field the field
   * @param day the day
   * @return the hours; nothing if latitude or longitude of the field is not recorded
   */
  Optional<Hours> on(FarmField field, LocalDate day);

  /**
   * From sunrise to sunset.
   *
   * @return hours from the sun
   */
  static BeeFlight fromSunriseToSunset() {
    return new BySun(Duration.ZERO);
  }

  /**
   * Hours of the clock.
   *
   * @param from from when bees fly
   * @param to until when
   * @return these hours every day
   */
  static BeeFlight between(LocalTime from, LocalTime to) {
    return new ByTheClock(from, to);
  }
}
