package agro.weather.log;

import java.util.Objects;

/**
 * A column of a log that holds the time or a part of it.
 *
 * @param name heading of the column
 * @param part what it holds
 */
public record TimePartColumn(String name, TimePart part) {
  /** Refuses nulls. */
  public TimePartColumn {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(part, "part");
  }
}
