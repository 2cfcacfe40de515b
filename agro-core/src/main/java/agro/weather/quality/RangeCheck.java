package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.Medium;
import agro.weather.MediumKind;

/**
 * Values outside a range.
 *
 * @param rule {@link QualityRule#SENSOR_RANGE}, {@link QualityRule#WORLD_RANGE} or {@link
 *     QualityRule#LOCAL_RANGE}
 * @param lowestCelsius lowest value that passes, in °C
 * @param highestCelsius highest value that passes, in °C
 */
public record RangeCheck(QualityRule rule, double lowestCelsius, double highestCelsius)
    implements QualityCheck, ReadingsTest, DailyTest {

  /** Highest and lowest soil temperature that is plausible at a depth (value from memory). */
  private static final double SOIL_CELSIUS = 50;

  /**
   * Checks the range.
   *
   * @throws InputProblem when the range is empty or the rule is not one of a range
   */
  public RangeCheck {
    if (rule != QualityRule.SENSOR_RANGE
        && rule != QualityRule.WORLD_RANGE
        && rule != QualityRule.LOCAL_RANGE) {
      throw InputProblem.of("a range for the rule \"" + rule.words() + "\"")
          .expected("one of the three rules of a range")
          .because("the other rules have limits of another kind")
          .mend("take RangeCheck.sensor, RangeCheck.local or RangeCheck.world");
    }
    if (!(lowestCelsius < highestCelsius)) {
      throw InputProblem.of("a range from " + lowestCelsius + " to " + highestCelsius + " °C")
          .expected("a lowest value below the highest one")
          .because("nothing could pass")
          .mend("give the lowest value first, for example -40 and 60");
    }
  }

  /**
   * What the sensor can give.
   *
   * @param lowestCelsius lowest value in °C
   * @param highestCelsius highest value in °C
   * @return the check
   */
  public static RangeCheck sensor(double lowestCelsius, double highestCelsius) {
    return new RangeCheck(QualityRule.SENSOR_RANGE, lowestCelsius, highestCelsius);
  }

  /**
   * What can occur at the place.
   *
   * @param lowestCelsius lowest value in °C
   * @param highestCelsius highest value in °C
   * @return the check
   */
  public static RangeCheck local(double lowestCelsius, double highestCelsius) {
    return new RangeCheck(QualityRule.LOCAL_RANGE, lowestCelsius, highestCelsius);
  }

  /**
   * The records of the world, -89.2 and 56.7 °C; soil is held against -50 to 50 °C instead.
   *
   * @return the check
   */
  public static RangeCheck world() {
    return new RangeCheck(QualityRule.WORLD_RANGE, -89.2, 56.7);
  }

  @Override
  public String limits() {
    return Numbers.plain(lowestCelsius) + " to " + Numbers.plain(highestCelsius) + " °C";
  }

  private RangeCheck in(Medium medium) {
    return rule == QualityRule.WORLD_RANGE && medium.kind() == MediumKind.SOIL
        ? new RangeCheck(
            rule, Math.max(lowestCelsius, -SOIL_CELSIUS), Math.min(highestCelsius, SOIL_CELSIUS))
        : this;
  }

  private boolean passes(double celsius) {
    return !(celsius < lowestCelsius || celsius > highestCelsius);
  }

  private double limit(double celsius) {
    return celsius < lowestCelsius ? lowestCelsius : highestCelsius;
  }

  private String why() {
    return switch (rule) {
      case SENSOR_RANGE -> "no sensor for air or soil gives this: a code for missing, or a fault";
      case WORLD_RANGE -> "never measured in this medium: a fault, another unit or a wrong column";
      default -> "not to be expected at this place";
    };
  }

  @Override
  public void flag(ReadingsInTest series) {
    var range = in(series.medium());
    for (int place : series.usable()) {
      double celsius = series.celsius(place);
      if (!range.passes(celsius)) {
        series.fail(rule, place, place, celsius, range.limit(celsius), "°C", why());
      }
    }
  }

  @Override
  public void flag(DaysInTest series) {
    var range = in(series.medium());
    for (int day = 0; day < series.size(); day++) {
      for (var element : DaysInTest.EXTREMES) {
        double celsius = series.celsius(element, day);
        if (!range.passes(celsius)) {
          series.fail(rule, element, day, day, celsius, range.limit(celsius), "°C", why());
        }
      }
    }
  }
}
