package agro.generation;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Two dates that hold an uncertain date between them.
 *
 * @param from first date; nothing when even that is "not this season"
 * @param to last date; nothing when the interval reaches into "not this season"
 * @param probability chance that the date lies between them
 */
public record DateInterval(Optional<LocalDate> from, Optional<LocalDate> to, double probability) {

  /** Refuses nulls. */
  public DateInterval {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
  }
}
