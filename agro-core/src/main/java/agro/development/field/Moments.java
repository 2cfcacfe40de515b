package agro.development.field;

import java.util.List;

/** Means, variances and covariances of durations, temperatures, their products and rates. */
record Moments(
    double meanD,
    double meanT,
    double meanY,
    double meanRate,
    double varianceD,
    double varianceT,
    double varianceY,
    double covarianceYd,
    double covarianceTy,
    double covarianceTd,
    double covarianceRateT) {

  static Moments of(List<FieldDuration> durations) {
    int n = durations.size();
    var d = durations.stream().mapToDouble(FieldDuration::days).toArray();
    var t = durations.stream().mapToDouble(FieldDuration::meanCelsius).toArray();
    var y = durations.stream().mapToDouble(FieldDuration::warmthSum).toArray();
    var rate = new double[n];
    for (int i = 0; i < n; i++) {
      rate[i] = 1 / d[i];
    }
    return new Moments(
        mean(d),
        mean(t),
        mean(y),
        mean(rate),
        covariance(d, d),
        covariance(t, t),
        covariance(y, y),
        covariance(y, d),
        covariance(t, y),
        covariance(t, d),
        covariance(rate, t));
  }

  static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  static double covariance(double[] a, double[] b) {
    double meanA = mean(a);
    double meanB = mean(b);
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += (a[i] - meanA) * (b[i] - meanB);
    }
    return sum / (a.length - 1);
  }
}
