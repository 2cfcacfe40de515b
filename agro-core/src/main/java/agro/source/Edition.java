package agro.source;

import java.time.LocalDate;
import java.util.Objects;

/**
 * A named state of a data set that changes over the years, such as a table of published thresholds.
 *
 * @param name name of the data set
 * @param version version as its keeper writes it
 * @param date day on which this state was fixed
 */
public record Edition(String name, String version, LocalDate date) {

  /** Checks that the edition is named. */
  public Edition {
    Objects.requireNonNull(date, "date");
    if (name.isBlank() || version.isBlank()) {
      throw new IllegalArgumentException("an edition needs a name and a version");
    }
  }

  @Override
  public String toString() {
    return name + ", edition " + version + " of " + date;
  }
}
