package agro.generation;

/**
 * Invented worlds in which a fit of flight timing is tried, for in none of them is the truth in
 * doubt. In the first four the flights are those of the fitted model; the others break it in ways
 * that real traps do.
 */
public enum FlightWorld {
  /** The fitted model is the generator, and the interval is the same in every season. */
  MODEL_TRUE("the fitted model is true"),
  /** Activity strays together from visit to visit: autoregressive 0.6, standard deviation 0.6. */
  ACTIVITY_CORRELATED("activity strays together between visits"),
  /** The interval differs between seasons with a coefficient of variation of 4 %. */
  INTERVAL_VARIES("the interval differs by 4 % between seasons"),
  /** Both of these. */
  ACTIVITY_AND_INTERVAL("activity strays together and the interval differs"),
  /**
   * Adults live 10 days on average (gamma of shape 3) and fly on every night of their life; lures
   * renewed every six weeks lose half their strength in 25 days.
   */
  ADULT_LIFE_AND_LURE_FADE("adults live for 10 days and lures fade"),
  /** On nights with a minimum below 8 °C next to nothing flies. */
  COLD_NIGHTS("nothing flies on cold nights"),
  /** A second arrival of a third to a half of the flight follows 70 to 110 °C·d behind. */
  TWO_ARRIVALS("the first flight comes in two arrivals");

  private final String words;

  FlightWorld(String words) {
    this.words = words;
  }

  /**
   * The world in words.
   *
   * @return a phrase for print
   */
  public String words() {
    return words;
  }

  /**
   * Whether the flights of this world are those of the fitted model.
   *
   * @return true for the first four
   */
  public boolean fitsTheModel() {
    return this == MODEL_TRUE || activityCorrelated() || intervalVaries();
  }

  boolean activityCorrelated() {
    return this == ACTIVITY_CORRELATED || this == ACTIVITY_AND_INTERVAL;
  }

  boolean intervalVaries() {
    return this == INTERVAL_VARIES || this == ACTIVITY_AND_INTERVAL;
  }
}
