package agro.dose;

/** How a formulation is brought out. */
public enum FormulationUse {
  /** Diluted in water before use. */
  DILUTED_IN_WATER("diluted in water"),
  /** Used as it is. */
  UNDILUTED("used undiluted"),
  /** For the treatment of seed. */
  SEED("for seed"),
  /** Baits, fumigants, aerosols, oils and other uses. */
  SPECIAL("for a special use");

  private final String words;

  FormulationUse(String words) {
    this.words = words;
  }

  /**
   * The use in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
