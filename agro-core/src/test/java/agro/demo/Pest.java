package agro.demo;

/**
 * An invented life history: what an individual needs, in degree-days above the threshold on the
 * true hourly scale. The published requirement stands in the season folder; the truth of the vale
 * need not agree with it.
 */
enum Pest {
  /** Flights stand apart. */
  LEEK_MOTH("leek moth", 7.0, new Life(110, 30, 440, 25), new Catch(60, 2.0, 1.6)),
  /** Broods overlap. */
  DIAMONDBACK_MOTH("diamondback moth", 7.06, new Life(105, 38, 263, 15), new Catch(45, 1.6, 1.2));

  /** Between-individual spread of the requirement, as a share. */
  static final double INDIVIDUAL_CV = 0.075;

  /** Between-season spread of the requirement, as a share. */
  static final double SEASON_CV = 0.035;

  /** Between-season spread of the start, °C·d. */
  static final double START_SD = 14;

  /**
   * Degree-days of the stages.
   *
   * @param start median emergence of the overwintered adults from the season's start
   * @param startSpread standard deviation of that emergence between individuals
   * @param eggToAdult from egg to adult
   * @param firstEgg from adult to its first egg
   */
  record Life(double start, double startSpread, double eggToAdult, double firstEgg) {}

  /**
   * Moths that one trap in order catches in a typical season.
   *
   * @param firstFlight moths of the first flight
   * @param secondGrowth second flight over the first
   * @param laterGrowth each later flight over the one before
   */
  record Catch(double firstFlight, double secondGrowth, double laterGrowth) {}

  final String title;
  final double lowerCelsius;
  final Life life;
  final Catch size;

  Pest(String title, double lowerCelsius, Life life, Catch size) {
    this.title = title;
    this.lowerCelsius = lowerCelsius;
    this.life = life;
    this.size = size;
  }
}
