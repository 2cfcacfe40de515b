package agro.weather.siting;

import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * Air temperatures carried to another height.
 *
 * @param days daily extremes at the field's height
 * @param lapse the lapse that was used
 * @param stationMetres height of the station above sea level in m
 * @param fieldMetres height of the field in m
 * @param minimumShiftCelsius what was added to the minima, in °C
 * @param maximumShiftCelsius what was added to the maxima, in °C
 * @param crossedDays days on which the shifted minimum would be above the shifted maximum
 */
public record LapseEstimate(
    DailyTemperatures days,
    HeightLapse lapse,
    double stationMetres,
    double fieldMetres,
    double minimumShiftCelsius,
    double maximumShiftCelsius,
    int crossedDays)
    implements Presentable {

  /** Refuses nulls. */
  public LapseEstimate {
    Objects.requireNonNull(days, "days");
    Objects.requireNonNull(lapse, "lapse");
  }

  /**
   * The steps of the calculation.
   *
   * @return the shifts of minima and maxima
   */
  public Working working() {
    return Working.of("Air temperature at another height")
        .step(
            "shift of the daily minimum",
            "ΔT = -lapse × (field - station) / 100 m",
            substitution(lapse.minimumPer100Metres()),
            Numbers.fixed(minimumShiftCelsius, 2) + " °C",
            SitingSources.ISO_2533)
        .step(
            "shift of the daily maximum",
            "ΔT = -lapse × (field - station) / 100 m",
            substitution(lapse.maximumPer100Metres()),
            Numbers.fixed(maximumShiftCelsius, 2) + " °C",
            SitingSources.ISO_2533);
  }

  private String substitution(double per100Metres) {
    return "-"
        + Numbers.plain(per100Metres)
        + " °C × ("
        + Numbers.plain(fieldMetres)
        + " m - "
        + Numbers.plain(stationMetres)
        + " m) / 100 m";
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("Air temperature carried to another height")
            .fact("Series", days.toString())
            .fact("Station", Numbers.plain(stationMetres) + " m above sea level")
            .fact("Field", Numbers.plain(fieldMetres) + " m above sea level")
            .paragraph(
                "The standard atmosphere is a mean over days and places. In clear, still nights cold"
                    + " air drains into hollows and a lower field is colder, not warmer: the minima"
                    + " may be wrong by several °C and in the wrong direction. A few weeks of"
                    + " readings at the field, and an offset fitted for minima and maxima apart, are"
                    + " always better.");
    if (crossedDays > 0) {
      page.paragraph(
          "On "
              + crossedDays
              + " days the shifted minimum would be above the shifted maximum; there both are their"
              + " mean.");
    }
    return page.working(working()).sources(List.of(SitingSources.ISO_2533)).build();
  }
}
