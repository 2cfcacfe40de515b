package agro.trial.series;

import agro.stats.UpperTail;
import java.util.OptionalDouble;

/**
 * How far the dates are from equal variances and correlations of their differences, which the F
 * tests of a split plot in time suppose. The degrees of freedom of these tests are multiplied by
 * epsilon.
 *
 * @param greenhouseGeisser epsilon after Greenhouse and Geisser, from one over the intervals to 1;
 *     cautious
 * @param huynhFeldt epsilon after Huynh and Feldt with Lecoutre's correction as computed; above 1
 *     it counts as 1; nothing where there are too few plots
 * @param mauchly Mauchly's W; nothing where there are fewer degrees of freedom than intervals
 * @param mauchlyChance its chance; small samples see little, large ones everything
 */
public record Sphericity(
    double greenhouseGeisser,
    OptionalDouble huynhFeldt,
    OptionalDouble mauchly,
    OptionalDouble mauchlyChance) {

  /**
   * From the residuals of each date.
   *
   * @param residuals residuals by date, then by plot
   * @param errorDf degrees of freedom of the residuals of one date
   */
  static Sphericity of(double[][] residuals, int errorDf) {
    int size = residuals.length - 1;
    double[][] products = contrastProducts(residuals);
    double trace = 0;
    double squares = 0;
    for (int i = 0; i < size; i++) {
      trace += products[i][i];
      for (int j = 0; j < size; j++) {
        squares += products[i][j] * products[i][j];
      }
    }
    double epsilon = squares == 0 ? 1 : trace * trace / (size * squares);
    double below = size * (errorDf - size * epsilon);
    var huynh =
        below > 0
            ? OptionalDouble.of(((errorDf + 1) * size * epsilon - 2) / below)
            : OptionalDouble.empty();
    if (errorDf < size || size < 2 || trace == 0) {
      return new Sphericity(epsilon, huynh, OptionalDouble.empty(), OptionalDouble.empty());
    }
    double logW = logDeterminant(products) - size * Math.log(trace / size);
    return new Sphericity(
        epsilon,
        huynh,
        OptionalDouble.of(Math.exp(logW)),
        OptionalDouble.of(mauchlyChance(logW, size, errorDf)));
  }

  /** Sums of products of orthonormal contrasts between the dates (Helmert's). */
  private static double[][] contrastProducts(double[][] residuals) {
    int size = residuals.length - 1;
    int plots = residuals[0].length;
    double[][] contrasts = new double[size][plots];
    for (int i = 0; i < plots; i++) {
      double sum = residuals[0][i];
      for (int c = 0; c < size; c++) {
        contrasts[c][i] = (sum / (c + 1) - residuals[c + 1][i]) * Math.sqrt((c + 1.0) / (c + 2.0));
        sum += residuals[c + 1][i];
      }
    }
    double[][] products = new double[size][size];
    for (int a = 0; a < size; a++) {
      for (int b = 0; b < size; b++) {
        for (int i = 0; i < plots; i++) {
          products[a][b] += contrasts[a][i] * contrasts[b][i];
        }
      }
    }
    return products;
  }

  /** By elimination without exchange, which is stable for sums of products. */
  private static double logDeterminant(double[][] products) {
    int size = products.length;
    double[][] left = new double[size][];
    for (int i = 0; i < size; i++) {
      left[i] = products[i].clone();
    }
    double sum = 0;
    for (int k = 0; k < size; k++) {
      sum += Math.log(Math.max(left[k][k], Double.MIN_NORMAL));
      for (int i = k + 1; i < size; i++) {
        double factor = left[i][k] / Math.max(left[k][k], Double.MIN_NORMAL);
        for (int j = k; j < size; j++) {
          left[i][j] -= factor * left[k][j];
        }
      }
    }
    return sum;
  }

  /** Chi-squared approximation with its second term (Anderson 1958). */
  private static double mauchlyChance(double logW, int p, int df) {
    double rho = 1 - (2.0 * p * p + p + 2) / (6.0 * p * df);
    double second =
        (p + 2.0)
            * (p - 1)
            * (p - 2)
            * (2.0 * p * p * p + 6.0 * p * p + 3.0 * p + 2)
            / (288 * Math.pow(df * p * rho, 2));
    double statistic = Math.max(0, -df * rho * logW);
    double freedom = p * (p + 1) / 2.0 - 1;
    double first = UpperTail.chiSquared(statistic, freedom);
    double chance = first + second * (UpperTail.chiSquared(statistic, freedom + 4) - first);
    return Math.min(1, Math.max(0, chance));
  }

  /**
   * Chance of an F test whose degrees of freedom are multiplied by the cautious epsilon.
   *
   * @param f the ratio
   * @param df1 degrees of freedom above the line before
   * @param df2 degrees of freedom below the line before
   * @return the chance
   */
  public double cautiousChance(double f, double df1, double df2) {
    return UpperTail.f(f, greenhouseGeisser * df1, greenhouseGeisser * df2);
  }

  /**
   * The same with the epsilon of Huynh and Feldt.
   *
   * @param f the ratio
   * @param df1 degrees of freedom above the line before
   * @param df2 degrees of freedom below the line before
   * @return the chance; that of the cautious epsilon where the other does not exist
   */
  public double huynhFeldtChance(double f, double df1, double df2) {
    double epsilon = Math.min(1, huynhFeldt.orElse(greenhouseGeisser));
    return UpperTail.f(f, epsilon * df1, epsilon * df2);
  }

  @Override
  public String toString() {
    return "epsilon "
        + PlainFigure.of(greenhouseGeisser)
        + " (Greenhouse-Geisser)"
        + (huynhFeldt.isPresent()
            ? ", " + PlainFigure.of(huynhFeldt.getAsDouble()) + " (Huynh-Feldt)"
            : "");
  }
}
