package agro.weather.siting;

import agro.source.Reference;
import agro.weather.DailyTemperatures;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Daily extremes that were read at an hour of the day, brought as near to calendar days as what is
 * known allows.
 *
 * @param days the days
 * @param hour hour of observation
 * @param bias the mean bias that was taken off; empty when none was known
 */
public record ObservationCorrection(
    DailyTemperatures days, ObservationHour hour, Optional<ObservationBias> bias)
    implements Presentable {

  static final List<Reference> SOURCES =
      List.of(
          SitingSources.BAKER_1975,
          SitingSources.SCHAAL_DALE_1977,
          SitingSources.KARL_1986,
          SitingSources.MITCHELL_1958);

  /** Refuses nulls. */
  public ObservationCorrection {
    Objects.requireNonNull(days, "days");
    Objects.requireNonNull(hour, "hour");
    Objects.requireNonNull(bias, "bias");
  }

  /**
   * What still is wrong with the days.
   *
   * @return sentences
   */
  public List<String> warnings() {
    var warnings = new ArrayList<String>();
    if (hour.isMorning()) {
      warnings.add("Each maximum was put on the day before its reading.");
    }
    if (bias.isPresent()) {
      warnings.add(
          "The mean bias of each month was taken off. A single day may still be wrong by several °C;"
              + " its standard error says how much.");
    } else if (hour.isMidnight()) {
      warnings.add(
          "Days from midnight to midnight carry a cold night over, too, when the coldest moment is"
              + " at midnight.");
    } else {
      warnings.add(
          hour.isMorning()
              ? "Cold mornings are carried over: minima are too cold on average, and degree-days too"
                  + " few."
              : "Hot afternoons are carried over: maxima are too warm on average, and degree-days too"
                  + " many.");
      warnings.add(
          "The carry-over stays in, because no log of the same climate was given to tell its size."
              + " With a log: ObservationHour.fit(readings).correct(days).");
    }
    return List.copyOf(warnings);
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("Daily extremes read at " + hour.words())
            .fact("Series", days.toString());
    warnings().forEach(page::paragraph);
    bias.ifPresent(known -> page.table(known.table()));
    return page.sources(SOURCES).build();
  }
}
