package agro.development.rate;

/**
 * What a search needs to know of the data: where they lie and how fast development got.
 *
 * @param lowest lowest temperature, °C
 * @param highest highest temperature, °C
 * @param lowestAlive lowest temperature with development, °C
 * @param highestAlive highest temperature with development, °C
 * @param fastest temperature of the fastest rate, °C
 * @param fastestRate the fastest rate, 1/d
 * @param constants reference temperature and gas constant
 */
record DataSpan(
    double lowest,
    double highest,
    double lowestAlive,
    double highestAlive,
    double fastest,
    double fastestRate,
    ArrheniusConstants constants) {

  static DataSpan of(double[] celsius, double[] rates, ArrheniusConstants constants) {
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    double lowestAlive = Double.POSITIVE_INFINITY;
    double highestAlive = Double.NEGATIVE_INFINITY;
    int best = 0;
    for (int i = 0; i < celsius.length; i++) {
      lowest = Math.min(lowest, celsius[i]);
      highest = Math.max(highest, celsius[i]);
      if (rates[i] > 0) {
        lowestAlive = Math.min(lowestAlive, celsius[i]);
        highestAlive = Math.max(highestAlive, celsius[i]);
      }
      best = rates[i] > rates[best] ? i : best;
    }
    return new DataSpan(
        lowest, highest, lowestAlive, highestAlive, celsius[best], rates[best], constants);
  }
}
