package agro.programme.window;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.sun.SunHeight;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A limit that the user sets for the hours of treatment. No figure is built in. */
public sealed interface HourLimit {

  /**
   * Readings of one kind within bounds; all readings of the hour have to keep them.
   *
   * @param kind what is read, not rain
   * @param least lowest value in m/s, °C or %; nothing for none
   * @param most highest value; nothing for none
   */
  record Within(WeatherKind kind, OptionalDouble least, OptionalDouble most) implements HourLimit {
    /** Refuses bounds out of order, and rain. */
    public Within {
      double low = least.orElse(Double.NEGATIVE_INFINITY);
      double high = most.orElse(Double.POSITIVE_INFINITY);
      if (kind == WeatherKind.RAIN || !(low <= high) || (least.isEmpty() && most.isEmpty())) {
        throw InputProblem.of(
                kind.words() + " from " + Numbers.plain(low) + " to " + Numbers.plain(high))
            .expected("at least one bound, in order; rain is limited over hours")
            .because("no hour could be told from another")
            .mend("exchange the bounds, or use the limits before and after rain");
      }
    }

    @Override
    public Optional<String> notJudged(HourContext context, Set<WeatherKind> kinds) {
      return missing(kind, kinds);
    }

    @Override
    public HourAnswer judge(WeatherHour hour, HourContext context) {
      return hour.of(kind)
          .map(
              span ->
                  answer(
                      span.low() >= least.orElse(Double.NEGATIVE_INFINITY)
                          && span.high() <= most.orElse(Double.POSITIVE_INFINITY)))
          .orElse(HourAnswer.UNKNOWN);
    }

    @Override
    public String name() {
      return kind.words();
    }

    @Override
    public String letter() {
      return switch (kind) {
        case WIND -> "w";
        case GUST -> "g";
        case TEMPERATURE -> "t";
        case HUMIDITY -> "h";
        case RAIN -> "r";
      };
    }

    @Override
    public String words() {
      var unit = "\u00a0" + HourColumns.unit(kind);
      var low = least.isPresent() ? Numbers.plain(least.getAsDouble()) : "";
      var high = most.isPresent() ? Numbers.plain(most.getAsDouble()) : "";
      if (low.isEmpty()) {
        return kind.words() + " at most " + high + unit;
      }
      return high.isEmpty()
          ? kind.words() + " at least " + low + unit
          : kind.words() + " " + low + " to " + high + unit;
    }
  }

  /**
   * Little or no rain in the hours before, for leaves that have to be dry.
   *
   * @param hours hours before the hour of treatment, at least 1
   * @param mostMm most rain in them, 0 or more
   */
  record RainBefore(int hours, double mostMm) implements HourLimit {
    /** Refuses hours and rain that are none. */
    public RainBefore {
      requireRain(hours, mostMm);
    }

    @Override
    public Optional<String> notJudged(HourContext context, Set<WeatherKind> kinds) {
      return missing(WeatherKind.RAIN, kinds);
    }

    @Override
    public HourAnswer judge(WeatherHour hour, HourContext context) {
      return rainAnswer(context.rain(hour.start().minus(Duration.ofHours(hours)), hours), mostMm);
    }

    @Override
    public String name() {
      return "rain before";
    }

    @Override
    public String letter() {
      return "b";
    }

    @Override
    public String words() {
      return "at most " + Numbers.plain(mostMm) + "\u00a0mm of rain in the " + hours + " h before";
    }
  }

  /**
   * Little or no rain in the hour of treatment and in the hours after it.
   *
   * @param hours hours after the hour of treatment, 0 for that hour alone
   * @param mostMm most rain in all of them, 0 or more
   */
  record RainAfter(int hours, double mostMm) implements HourLimit {
    /** Refuses hours and rain that are none. */
    public RainAfter {
      requireRain(hours + 1, mostMm);
    }

    @Override
    public Optional<String> notJudged(HourContext context, Set<WeatherKind> kinds) {
      return missing(WeatherKind.RAIN, kinds);
    }

    @Override
    public HourAnswer judge(WeatherHour hour, HourContext context) {
      return rainAnswer(context.rain(hour.start(), hours + 1), mostMm);
    }

    @Override
    public String name() {
      return "rain";
    }

    @Override
    public String letter() {
      return "r";
    }

    @Override
    public String words() {
      return "at most "
          + Numbers.plain(mostMm)
          + "\u00a0mm of rain in that hour and the "
          + hours
          + " h after";
    }
  }

  /**
   * Not in hours in which cold air may lie under warmer air, by the rule of the user: little wind
   * between an evening and a morning.
   *
   * @param windBelowMetresPerSecond wind below which the air may lie still, above 0
   * @param beforeSunset from how long before sunset on
   * @param afterSunrise until how long after sunrise
   */
  record InversionRisk(
      double windBelowMetresPerSecond, Duration beforeSunset, Duration afterSunrise)
      implements HourLimit {
    /** Refuses a wind that is none. */
    public InversionRisk {
      if (!(windBelowMetresPerSecond > 0)) {
        throw InputProblem.of("still air below " + windBelowMetresPerSecond + " m/s")
            .expected("a wind above 0")
            .because("no wind is below it")
            .mend("give the wind below which spray might hang in the air");
      }
    }

    @Override
    public Optional<String> notJudged(HourContext context, Set<WeatherKind> kinds) {
      var wind = missing(WeatherKind.WIND, kinds);
      return wind.isPresent() ? wind : noSun(context);
    }

    @Override
    public HourAnswer judge(WeatherHour hour, HourContext context) {
      var sun = context.sun().orElseThrow();
      if (!sun.touchesNight(hour.start(), context.day(hour), beforeSunset, afterSunrise)) {
        return HourAnswer.MEETS;
      }
      return hour.of(WeatherKind.WIND)
          .map(span -> answer(span.low() >= windBelowMetresPerSecond))
          .orElse(HourAnswer.UNKNOWN);
    }

    @Override
    public String name() {
      return "still air";
    }

    @Override
    public String letter() {
      return "i";
    }

    @Override
    public String words() {
      return "no still air below "
          + Numbers.plain(windBelowMetresPerSecond)
          + "\u00a0m/s from "
          + TimeWords.words(beforeSunset)
          + " before sunset to "
          + TimeWords.words(afterSunrise)
          + " after sunrise";
    }
  }

  /**
   * Only in the evening and the night.
   *
   * @param beforeSunset from how long before sunset on; negative for later
   */
  record EveningOnly(Duration beforeSunset) implements HourLimit {
    @Override
    public Optional<String> notJudged(HourContext context, Set<WeatherKind> kinds) {
      return noSun(context);
    }

    @Override
    public HourAnswer judge(WeatherHour hour, HourContext context) {
      return answer(
          context
              .sun()
              .orElseThrow()
              .liesInEvening(hour.start(), context.day(hour), beforeSunset, Duration.ZERO));
    }

    @Override
    public String name() {
      return "not evening";
    }

    @Override
    public String letter() {
      return "e";
    }

    @Override
    public String words() {
      return "from "
          + (beforeSunset.isNegative()
              ? TimeWords.words(beforeSunset.negated()) + " after"
              : TimeWords.words(beforeSunset) + " before")
          + " sunset to sunrise";
    }
  }

  /**
   * Only by daylight, from sunrise to sunset ({@link SunHeight#UPPER_EDGE_SEEN}).
   *
   * @param margin time after sunrise and before sunset that is left out; negative to add twilight
   */
  record DaylightOnly(Duration margin) implements HourLimit {
    @Override
    public Optional<String> notJudged(HourContext context, Set<WeatherKind> kinds) {
      return noSun(context);
    }

    @Override
    public HourAnswer judge(WeatherHour hour, HourContext context) {
      return answer(
          !context
              .sun()
              .orElseThrow()
              .touchesNight(hour.start(), context.day(hour), margin, margin));
    }

    @Override
    public String name() {
      return "dark";
    }

    @Override
    public String letter() {
      return "d";
    }

    @Override
    public String words() {
      return "by daylight"
          + (margin.isZero()
              ? ""
              : ", " + TimeWords.words(margin.abs()) + (margin.isNegative() ? " more" : " less"));
    }
  }

  /**
   * Not while bees fly: from sunrise to sunset, with time added on both sides, while it is warm
   * enough. An hour without a temperature counts as warm.
   *
   * @param margin time before sunrise and after sunset in which some still fly
   * @param leastCelsius temperature from which bees fly; nothing for any
   */
  record NoBees(Duration margin, OptionalDouble leastCelsius) implements HourLimit {
    @Override
    public Optional<String> notJudged(HourContext context, Set<WeatherKind> kinds) {
      return noSun(context);
    }

    @Override
    public HourAnswer judge(WeatherHour hour, HourContext context) {
      boolean cold =
          leastCelsius.isPresent()
              && hour.of(WeatherKind.TEMPERATURE)
                  .filter(span -> span.high() < leastCelsius.getAsDouble())
                  .isPresent();
      var sun = context.sun().orElseThrow();
      return answer(
          cold || sun.liesInEvening(hour.start(), context.day(hour), margin.negated(), margin));
    }

    @Override
    public String name() {
      return "bees";
    }

    @Override
    public String letter() {
      return "p";
    }

    @Override
    public String words() {
      return "not while bees fly, "
          + (margin.isZero() ? "" : TimeWords.words(margin) + " before ")
          + "sunrise to "
          + (margin.isZero() ? "" : TimeWords.words(margin) + " after ")
          + "sunset"
          + (leastCelsius.isPresent()
              ? " at " + Numbers.plain(leastCelsius.getAsDouble()) + "\u00a0°C or more"
              : "");
    }
  }

  /**
   * Hours of the clock in which the user works.
   *
   * @param from from when
   * @param to until when; before the beginning for hours past midnight
   */
  record WorkingHours(LocalTime from, LocalTime to) implements HourLimit {
    @Override
    public Optional<String> notJudged(HourContext context, Set<WeatherKind> kinds) {
      return Optional.empty();
    }

    @Override
    public HourAnswer judge(WeatherHour hour, HourContext context) {
      int start = hour.start().atZone(context.field().zone()).toLocalTime().toSecondOfDay();
      int end = start + 3600;
      int open = from.toSecondOfDay();
      int close = to.toSecondOfDay();
      boolean within = open < close ? start >= open && end <= close : start >= open || end <= close;
      return answer(within);
    }

    @Override
    public String name() {
      return "clock";
    }

    @Override
    public String letter() {
      return "k";
    }

    @Override
    public String words() {
      return "between " + from + " and " + to;
    }
  }

  /**
   * Why the limit cannot be judged at all.
   *
   * @param context field, sun and hours
   * @param kinds kinds of which the file has a column
   * @return nothing when it can
   */
  Optional<String> notJudged(HourContext context, Set<WeatherKind> kinds);

  /**
   * What the limit says of an hour.
   *
   * @param hour the hour
   * @param context field, sun and hours
   * @return met, not met, or unknown for want of a value
   */
  HourAnswer judge(WeatherHour hour, HourContext context);

  /**
   * What refuses an hour, in short.
   *
   * @return a word or two in lower case
   */
  String name();

  /**
   * The letter that stands for it on a sheet.
   *
   * @return one lower-case letter
   */
  String letter();

  /**
   * The limit in words.
   *
   * @return a phrase in lower case
   */
  String words();

  private static HourAnswer answer(boolean meets) {
    return meets ? HourAnswer.MEETS : HourAnswer.REFUSES;
  }

  private static HourAnswer rainAnswer(OptionalDouble rain, double mostMm) {
    return rain.isPresent() ? answer(rain.getAsDouble() <= mostMm) : HourAnswer.UNKNOWN;
  }

  private static Optional<String> missing(WeatherKind kind, Set<WeatherKind> kinds) {
    return kinds.contains(kind)
        ? Optional.empty()
        : Optional.of(kind.words() + " is not in the file: not judged");
  }

  private static Optional<String> noSun(HourContext context) {
    return context.sun().isPresent()
        ? Optional.empty()
        : Optional.of("latitude and longitude of the field are not recorded: not judged");
  }

  private static void requireRain(int hours, double mostMm) {
    if (hours < 1 || hours > 240 || !(mostMm >= 0)) {
      throw InputProblem.of(Numbers.plain(mostMm) + " mm of rain in " + hours + " h")
          .expected("hours up to ten days, and rain of 0 mm or more")
          .because("rain is added up over these hours")
          .mend("give whole hours; 0 mm for no rain at all");
    }
  }
}
