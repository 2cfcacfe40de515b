package agro.generation;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.OptionalDouble;

/**
 * How a lure fades: a trap catches {@code 2^(-age / half-life)} of what it would with a new lure,
 * with the age in days since the lure was renewed, or since the trap was set.
 *
 * @param halfLifeDays days after which a trap catches half; nothing when it is to be estimated
 */
public record LureFade(OptionalDouble halfLifeDays) {

  /** Shortest half-life that is believed or sought. */
  static final double SHORTEST_DAYS = 2;

  /** Longest half-life that is sought; a longer one cannot be told from a lure that never fades. */
  static final double LONGEST_DAYS = 200;

  /** Checks the half-life. */
  public LureFade {
    if (halfLifeDays.isPresent() && !(halfLifeDays.getAsDouble() >= SHORTEST_DAYS)) {
      throw InputProblem.of("a lure with a half-life of " + halfLifeDays.getAsDouble() + " days")
          .expected("a half-life of " + (int) SHORTEST_DAYS + " days or more")
          .because("a catch is set beside what a new lure would have taken")
          .mend("state the half-life in days, or let it be estimated");
    }
  }

  /**
   * A lure whose half-life is known.
   *
   * @param days days after which a trap catches half
   * @return the fade
   */
  public static LureFade halfLife(double days) {
    return new LureFade(OptionalDouble.of(days));
  }

  /**
   * A lure whose half-life is estimated from the counts, by profile likelihood over 2 to 200 days.
   *
   * @return the fade
   */
  public static LureFade estimated() {
    return new LureFade(OptionalDouble.empty());
  }

  /** Catch beside that with a new lure. */
  static double strength(long ageDays, double halfLifeDays) {
    return Math.exp(-Math.log(2) * ageDays / halfLifeDays);
  }

  /**
   * The fade in words.
   *
   * @return a phrase for print
   */
  public String words() {
    return halfLifeDays.isPresent()
        ? "lures lose half their strength in " + Numbers.plain(halfLifeDays.getAsDouble()) + " days"
        : "lures fade with an estimated half-life";
  }
}
