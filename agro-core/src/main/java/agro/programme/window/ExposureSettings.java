package agro.programme.window;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Which days are weighed and what is asked of them.
 *
 * @param wantedShare share of the generation that should be exposed, 0 to 1
 * @param from first day that is weighed; nothing for the day of issue
 * @param to last day that is weighed; nothing for as long as the stage is there
 * @param intervalDays least days between the two treatments of a pair; nothing if no pair is asked
 *     for
 */
public record ExposureSettings(
    double wantedShare,
    Optional<LocalDate> from,
    Optional<LocalDate> to,
    OptionalInt intervalDays) {

  /** Refuses shares and days that are none. */
  public ExposureSettings {
    if (!(wantedShare >= 0 && wantedShare <= 1)) {
      throw InputProblem.of("a wanted share of " + Numbers.plain(wantedShare))
          .expected("a share from 0 to 1")
          .because("no more than all animals can be exposed")
          .mend("write 60 % as 0.6");
    }
    if (from.isPresent() && to.isPresent() && to.get().isBefore(from.get())) {
      throw InputProblem.of("days from " + from.get() + " to " + to.get())
          .expected("a last day on or after the first one")
          .because("no day lies between them")
          .mend("exchange the two days");
    }
    if (intervalDays.isPresent() && intervalDays.getAsInt() < 1) {
      throw InputProblem.of("an interval of " + intervalDays.getAsInt() + " days in a pair")
          .expected("at least 1 day")
          .because("two treatments on one day are one treatment")
          .mend("give the least interval of the label; a label without one leaves 1 day");
    }
  }

  /**
   * Half of the generation, all days from the day of issue on, no pairs.
   *
   * @return the settings
   */
  public static ExposureSettings withDefaults() {
    return new ExposureSettings(0.5, Optional.empty(), Optional.empty(), OptionalInt.empty());
  }

  /**
   * The same settings with another share.
   *
   * @param share share that should be exposed, 0 to 1
   * @return new settings
   */
  public ExposureSettings wanting(double share) {
    return new ExposureSettings(share, from, to, intervalDays);
  }

  /**
   * The same settings for stated days.
   *
   * @param first first day that is weighed
   * @param last last day that is weighed
   * @return new settings
   */
  public ExposureSettings between(LocalDate first, LocalDate last) {
    return new ExposureSettings(wantedShare, Optional.of(first), Optional.of(last), intervalDays);
  }

  /**
   * The same settings with pairs of days.
   *
   * @param days least days between the two, as on the label
   * @return new settings
   */
  public ExposureSettings withPairsAtLeast(int days) {
    return new ExposureSettings(wantedShare, from, to, OptionalInt.of(days));
  }
}
