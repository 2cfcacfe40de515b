package agro.weather.siting;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.MediumKind;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.List;

/**
 * What sun on an unshielded sensor, and a clear sky above it at night, do to the daily extremes of
 * air. For showing the effect; it is not meant for correction, because the error of a day hangs on
 * sun and wind.
 *
 * @param maximumCelsius how much too warm the daily maximum is, in °C
 * @param minimumCelsius how much too cold the daily minimum is, in °C, 0 or more
 */
public record RadiationError(double maximumCelsius, double minimumCelsius) implements Presentable {

  private static final double MOST_CELSIUS = 30;

  /**
   * Checks the size.
   *
   * @throws InputProblem when an error is negative or above 30 °C
   */
  public RadiationError {
    if (!(maximumCelsius >= 0 && maximumCelsius <= MOST_CELSIUS)
        || !(minimumCelsius >= 0 && minimumCelsius <= MOST_CELSIUS)) {
      throw InputProblem.of(
              "a radiation error of " + maximumCelsius + " and " + minimumCelsius + " °C")
          .expected("0 to 30 °C")
          .because("sun makes the maximum too warm, a clear sky the minimum too cold")
          .mend("give both as sizes, for example 3 and 0");
    }
  }

  /**
   * An error of the maximum alone.
   *
   * @param celsius how much too warm it is, in °C
   * @return the error
   */
  public static RadiationError ofMaximum(double celsius) {
    return new RadiationError(celsius, 0);
  }

  /**
   * What an unshielded sensor would have written where a shielded one stood.
   *
   * @param shielded daily extremes of air in a shelter
   * @return the extremes with the error, of origin {@link DayOrigin#MODELLED}
   * @throws InputProblem when the series is of soil
   */
  public DailyTemperatures spoil(DailyTemperatures shielded) {
    shielded.medium().require(MediumKind.AIR, "the radiation error");
    var builder = DailyTemperatures.builder(shielded.firstDay(), shielded.lastDay());
    for (int i = 0; i < shielded.size(); i++) {
      var day = shielded.day(i);
      if (shielded.originAt(i) != DayOrigin.MISSING) {
        builder.put(
            day,
            shielded.minCelsius(day) - minimumCelsius,
            shielded.maxCelsius(day) + maximumCelsius,
            shielded.minStandardErrorCelsius(day),
            shielded.maxStandardErrorCelsius(day),
            DayOrigin.MODELLED);
      }
    }
    return builder.build(shielded.place() + ", sensor in the sun", shielded.medium());
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Sun on the sensor")
        .fact("Maximum too warm by", Numbers.plain(maximumCelsius) + " °C")
        .fact("Minimum too cold by", Numbers.plain(minimumCelsius) + " °C")
        .paragraph(
            "Measured errors: 2 to 4 °C at midday under a clear sky without wind even in a shield"
                + " without a fan; up to 2.8 °C without ventilation in the sun. The error is largest"
                + " on still, clear days and vanishes in wind and under cloud, so no fixed figure"
                + " mends a log.")
        .paragraph(
            "Degree-days follow only in part: 3 °C more on a maximum of 35 °C adds 1.5 °C·d in a day"
                + " without a cutoff, and about 0.5 °C·d with a horizontal cutoff at 30 °C (lower"
                + " threshold 10 °C, minimum 15 °C, sine).")
        .sources(List.of(SitingSources.LIN_2001, SitingSources.TEICHMANN_2024))
        .build();
  }
}
