package agro.programme.interval;

import agro.programme.FarmField;
import agro.programme.Spraying;
import java.time.LocalDate;

/**
 * An application that counts for a limit.
 *
 * @param spraying the application
 * @param firstDay day of its start on the clock of the field
 * @param day day of its end on the clock of the field
 */
record CountedUse(Spraying spraying, LocalDate firstDay, LocalDate day) {

  static CountedUse of(Spraying spraying, FarmField field) {
    return new CountedUse(spraying, spraying.firstDay(field.zone()), spraying.day(field.zone()));
  }
}
