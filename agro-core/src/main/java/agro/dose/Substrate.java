package agro.dose;

import java.util.Locale;
import java.util.Optional;

/** What carries an agent that is mixed in by mass. */
public enum Substrate {
  /** Farmyard manure. */
  MANURE,
  /** Compost. */
  COMPOST,
  /** Growing substrate. */
  SUBSTRATE,
  /** Soil. */
  SOIL;

  /** The substrate that a lower-case word names. */
  static Optional<Substrate> named(String word) {
    if (word.equals("farmyard manure")) {
      return Optional.of(MANURE);
    }
    for (var substrate : values()) {
      if (substrate.words().equals(word)) {
        return Optional.of(substrate);
      }
    }
    return Optional.empty();
  }

  /**
   * The substrate in words.
   *
   * @return one lower-case word
   */
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }
}
