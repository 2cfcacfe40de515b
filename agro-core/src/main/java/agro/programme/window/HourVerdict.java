package agro.programme.window;

import java.util.List;

/**
 * What the limits say of one hour.
 *
 * @param hour the hour with its weather
 * @param refusing the limits that it does not meet
 * @param unknown the limits for which a value is missing
 */
public record HourVerdict(WeatherHour hour, List<HourLimit> refusing, List<HourLimit> unknown) {

  /** Copies the lists. */
  public HourVerdict {
    refusing = List.copyOf(refusing);
    unknown = List.copyOf(unknown);
  }

  /**
   * Whether the hour meets all limits that can be judged.
   *
   * @return false also when a value is missing
   */
  public boolean meetsAll() {
    return refusing.isEmpty() && unknown.isEmpty();
  }

  /**
   * The letters of the limits that refuse the hour.
   *
   * @return for example {@code "wr"}; {@code "?"} where nothing refuses it but a value is missing;
   *     empty where all limits are met
   */
  public String letters() {
    var letters = new StringBuilder();
    refusing.stream().map(HourLimit::letter).distinct().forEach(letters::append);
    return letters.isEmpty() && !unknown.isEmpty() ? "?" : letters.toString();
  }
}
