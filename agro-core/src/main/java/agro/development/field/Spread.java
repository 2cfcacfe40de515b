package agro.development.field;

/** Mean and scatter of degree-days over seasons. */
record Spread(double meanDegreeDaysC, double sdDegreeDaysC, double sdDays, double variation) {

  static Spread of(double[] degreeDaysC, double[] days) {
    double mean = Moments.mean(degreeDaysC);
    double sd = Math.sqrt(Moments.covariance(degreeDaysC, degreeDaysC));
    double daily = 0;
    for (int i = 0; i < days.length; i++) {
      daily += degreeDaysC[i] / days[i] / days.length;
    }
    return new Spread(
        mean,
        sd,
        daily > 0 ? sd / daily : Double.POSITIVE_INFINITY,
        mean > 0 ? sd / mean : Double.POSITIVE_INFINITY);
  }
}
