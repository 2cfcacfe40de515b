package agro.stats.linear;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A linear combination of means.
 *
 * @param name what it means
 * @param coefficients factor of each mean, in the order of the levels
 */
public record Contrast(String name, List<Double> coefficients) {

  private static final double ZERO = 1e-9;

  /**
   * Copies the factors.
   *
   * @throws InputProblem if all factors are zero or one is not finite
   */
  public Contrast {
    coefficients = List.copyOf(coefficients);
    double size = 0;
    for (double each : coefficients) {
      size += Math.abs(each);
    }
    if (!(size > 0 && Double.isFinite(size))) {
      throw InputProblem.of("factors " + coefficients + " of contrast " + name)
          .expected("finite factors that are not all zero")
          .because("the combination would be nothing")
          .mend("give the factors of the comparison");
    }
  }

  /**
   * A combination by its factors.
   *
   * @param name what it means
   * @param coefficients factor of each mean, in the order of the levels
   * @return the combination
   */
  public static Contrast of(String name, double... coefficients) {
    return new Contrast(name, Arrays.stream(coefficients).boxed().toList());
  }

  /**
   * Orthogonal polynomials of a quantitative factor: linear, quadratic, cubic and so on, each of
   * unit length, for levels at equal or unequal distances.
   *
   * @param degree highest degree, below the number of levels
   * @param levels value of each level, in the order of the levels, all different
   * @return as many contrasts as the degree
   * @throws InputProblem if a value comes twice or the degree is too high
   */
  public static List<Contrast> polynomials(int degree, double... levels) {
    double[] equal = new double[levels.length];
    Arrays.fill(equal, 1);
    return polynomials(degree, levels, equal);
  }

  /**
   * Orthogonal polynomials for means of unequal replication: their sums of squares add up.
   *
   * @param degree highest degree, below the number of levels
   * @param levels value of each level, in the order of the levels, all different
   * @param replication number of observations of each level
   * @return as many contrasts as the degree
   * @throws InputProblem if a value comes twice or the degree is too high
   */
  public static List<Contrast> polynomials(int degree, double[] levels, double[] replication) {
    long different = Arrays.stream(levels).distinct().count();
    if (different < levels.length || degree < 1 || degree >= levels.length) {
      throw InputProblem.of("polynomials of degree " + degree + " on " + Arrays.toString(levels))
          .expected("different levels and a degree from 1 to " + (levels.length - 1))
          .because("a polynomial of degree k needs k + 1 places")
          .mend("correct the levels or lower the degree");
    }
    double low = Arrays.stream(levels).min().orElseThrow();
    double high = Arrays.stream(levels).max().orElseThrow();
    var basis = new ArrayList<double[]>();
    var contrasts = new ArrayList<Contrast>();
    for (int power = 0; power <= degree; power++) {
      double[] p = new double[levels.length];
      for (int i = 0; i < p.length; i++) {
        double x = (levels[i] - low) / (high - low) * 2 - 1;
        p[i] = power == 0 ? 1 : basis.get(power - 1)[i] * x;
      }
      orthogonalise(p, basis, replication);
      orthogonalise(p, basis, replication);
      basis.add(p);
      if (power > 0) {
        contrasts.add(weighted(degreeName(power), p, replication));
      }
    }
    return List.copyOf(contrasts);
  }

  private static void orthogonalise(double[] p, List<double[]> basis, double[] weight) {
    for (double[] q : basis) {
      double product = 0;
      double square = 0;
      for (int i = 0; i < p.length; i++) {
        product += weight[i] * p[i] * q[i];
        square += weight[i] * q[i] * q[i];
      }
      for (int i = 0; i < p.length; i++) {
        p[i] -= product / square * q[i];
      }
    }
  }

  private static Contrast weighted(String name, double[] p, double[] weight) {
    double square = 0;
    for (int i = 0; i < p.length; i++) {
      square += weight[i] * p[i] * weight[i] * p[i];
    }
    double[] unit = new double[p.length];
    for (int i = 0; i < p.length; i++) {
      unit[i] = weight[i] * p[i] / Math.sqrt(square);
    }
    return of(name, unit);
  }

  private static String degreeName(int power) {
    return switch (power) {
      case 1 -> "linear";
      case 2 -> "quadratic";
      case 3 -> "cubic";
      case 4 -> "quartic";
      default -> "degree " + power;
    };
  }

  /**
   * The contrast of an interaction: this one of the first factor with another one of the second,
   * for means of both factors in the order of the first and within it of the second.
   *
   * @param other a contrast of the second factor
   * @return a contrast of all combinations
   */
  public Contrast times(Contrast other) {
    var product = new ArrayList<Double>();
    for (double a : coefficients) {
      for (double b : other.coefficients) {
        product.add(a * b);
      }
    }
    return new Contrast(name + " x " + other.name, product);
  }

  /**
   * Whether the factors sum to zero, so that it compares means.
   *
   * @return false for a sum or an average
   */
  public boolean isComparison() {
    double sum = 0;
    double size = 0;
    for (double each : coefficients) {
      sum += each;
      size += Math.abs(each);
    }
    return Math.abs(sum) <= ZERO * size;
  }
}
