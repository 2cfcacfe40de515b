package agro.generation;

import agro.units.Numbers;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Map;

/**
 * The chance that a date does not come this season, by cause.
 *
 * @param chances chance of each cause, 0 to 1; a cause that is not named has none
 */
public record NotThisSeason(Map<SeasonEnd, Double> chances) {

  /** Copies the chances. */
  public NotThisSeason {
    var copy = new EnumMap<SeasonEnd, Double>(SeasonEnd.class);
    copy.putAll(chances);
    chances = Map.copyOf(copy);
  }

  /**
   * Want of warmth as the only cause.
   *
   * @param chance its chance, 0 to 1
   * @return the causes
   */
  static NotThisSeason warmth(double chance) {
    return new NotThisSeason(Map.of(SeasonEnd.WARMTH, chance));
  }

  /**
   * The chance of one cause.
   *
   * @param cause the cause
   * @return 0 to 1
   */
  public double chance(SeasonEnd cause) {
    return chances.getOrDefault(cause, 0.0);
  }

  /**
   * The chance of all causes together.
   *
   * @return 0 to 1
   */
  public double total() {
    var sum = 0.0;
    for (var cause : SeasonEnd.values()) {
      sum += chance(cause);
    }
    return sum;
  }

  /**
   * The chance and, where there is another cause than warmth, the share of each cause.
   *
   * @return for example {@code "20 %: warmth 12 %, day length 8 %"}
   */
  public String words() {
    var named = new ArrayList<String>();
    var others = false;
    for (var cause : SeasonEnd.values()) {
      if (chance(cause) > 0) {
        named.add(cause.words() + " " + perCent(chance(cause)));
        others |= cause != SeasonEnd.WARMTH;
      }
    }
    var whole = perCent(total());
    return others && total() >= 0.01 ? whole + ": " + String.join(", ", named) : whole;
  }

  /** A chance in whole per cent; certainty is not for a forecast. */
  private static String perCent(double chance) {
    if (chance < 0.01) {
      return "below 1" + DayWords.NO_BREAK + "%";
    }
    return (chance > 0.99 ? "above 99" : Numbers.fixed(100 * chance, 0)) + DayWords.NO_BREAK + "%";
  }
}
