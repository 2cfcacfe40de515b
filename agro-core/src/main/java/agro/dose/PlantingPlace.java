package agro.dose;

import java.util.Optional;

/** What a rate per plant counts. */
public enum PlantingPlace {
  /** A plant. */
  PLANT("plant"),
  /** A tree. */
  TREE("tree"),
  /** A vine. */
  VINE("vine"),
  /** A bush. */
  BUSH("bush"),
  /** A palm. */
  PALM("palm"),
  /** A seedling. */
  SEEDLING("seedling"),
  /** A hill of plants that stand together. */
  HILL("hill"),
  /** A planting hole. */
  HOLE("hole"),
  /** A planting pit. */
  PIT("pit"),
  /** A pot. */
  POT("pot");

  private final String words;

  PlantingPlace(String words) {
    this.words = words;
  }

  /** The place that a word in the singular names. */
  static Optional<PlantingPlace> named(String word) {
    for (var place : values()) {
      if (place.words.equals(word)) {
        return Optional.of(place);
      }
    }
    return Optional.empty();
  }

  /**
   * The place in words.
   *
   * @return singular
   */
  public String words() {
    return words;
  }

  /**
   * Several of them.
   *
   * @return plural
   */
  public String plural() {
    return this == BUSH ? "bushes" : words + "s";
  }
}
