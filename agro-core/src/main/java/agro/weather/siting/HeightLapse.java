package agro.weather.siting;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.MediumKind;

/**
 * Air temperature carried to another height above sea level with a fixed lapse: a last resort where
 * no offset was fitted. At night cold air drains into hollows, so a lower field may well be colder;
 * {@code StationOffset} of the package {@code climate} fits minima and maxima apart from a few
 * weeks of common days and is always to be preferred.
 *
 * @param minimumPer100Metres fall of the daily minimum with 100 m of height, in °C
 * @param maximumPer100Metres fall of the daily maximum with 100 m of height, in °C
 * @param standardErrorCelsius standard error of a carried extreme in °C, 0 or more
 */
public record HeightLapse(
    double minimumPer100Metres, double maximumPer100Metres, double standardErrorCelsius) {

  /** Fall of temperature with 100 m of height in the standard atmosphere (ISO 2533). */
  public static final double STANDARD_PER_100_METRES = 0.65;

  private static final double MOST_PER_100_METRES = 5;

  /**
   * Refuses lapses that only another unit explains.
   *
   * @throws InputProblem when a lapse is above 5 °C per 100 m either way, or the error negative
   */
  public HeightLapse {
    if (!(Math.abs(minimumPer100Metres) <= MOST_PER_100_METRES)
        || !(Math.abs(maximumPer100Metres) <= MOST_PER_100_METRES)
        || !(standardErrorCelsius >= 0)) {
      throw InputProblem.of(
              "lapses of "
                  + minimumPer100Metres
                  + " and "
                  + maximumPer100Metres
                  + " °C per 100 m, standard error "
                  + standardErrorCelsius)
          .expected("lapses within 5 °C per 100 m and an error of 0 or more")
          .because("the standard atmosphere has 0.65 °C per 100 m")
          .mend("give the lapse per 100 m; 6.5 °C per km is 0.65");
    }
  }

  /**
   * The standard atmosphere, 0.65 °C per 100 m, for minima and maxima alike.
   *
   * @return the lapse, without a standard error
   */
  public static HeightLapse standard() {
    return new HeightLapse(STANDARD_PER_100_METRES, STANDARD_PER_100_METRES, 0);
  }

  /**
   * This lapse with a standard error.
   *
   * @param celsius standard error in °C, 0 or more
   * @return a new lapse
   */
  public HeightLapse withStandardError(double celsius) {
    return new HeightLapse(minimumPer100Metres, maximumPer100Metres, celsius);
  }

  /**
   * Carries a station's air temperatures to a field.
   *
   * @param station daily extremes of air
   * @param stationMetres height of the station above sea level in m
   * @param fieldMetres height of the field in m
   * @return the extremes at the field's height; observed days become {@link DayOrigin#MODELLED}
   * @throws InputProblem when the series is of soil or a height is not finite
   */
  public LapseEstimate carry(DailyTemperatures station, double stationMetres, double fieldMetres) {
    station.medium().require(MediumKind.AIR, "the lapse with height");
    if (!Double.isFinite(stationMetres) || !Double.isFinite(fieldMetres)) {
      throw InputProblem.of("heights of " + stationMetres + " m and " + fieldMetres + " m")
          .expected("two finite heights above sea level in m")
          .because("the shift is their difference times the lapse")
          .mend("give both heights in metres");
    }
    double hundreds = (fieldMetres - stationMetres) / 100;
    double minimumShift = 0.0 - minimumPer100Metres * hundreds;
    double maximumShift = 0.0 - maximumPer100Metres * hundreds;
    var builder = DailyTemperatures.builder(station.firstDay(), station.lastDay());
    int crossed = 0;
    for (int i = 0; i < station.size(); i++) {
      var day = station.day(i);
      if (station.originAt(i) == DayOrigin.MISSING) {
        continue;
      }
      double low = station.minCelsius(day) + minimumShift;
      double high = station.maxCelsius(day) + maximumShift;
      if (low > high) {
        crossed++;
        low = 0.5 * (low + high);
        high = low;
      }
      var origin = station.originAt(i);
      builder.put(
          day,
          low,
          high,
          Math.hypot(station.minStandardErrorCelsius(day), standardErrorCelsius),
          Math.hypot(station.maxStandardErrorCelsius(day), standardErrorCelsius),
          origin == DayOrigin.OBSERVED || origin == DayOrigin.PARTLY_FILLED
              ? DayOrigin.MODELLED
              : origin);
    }
    return new LapseEstimate(
        builder.build(station.place(), station.medium()),
        this,
        stationMetres,
        fieldMetres,
        minimumShift,
        maximumShift,
        crossed);
  }
}
