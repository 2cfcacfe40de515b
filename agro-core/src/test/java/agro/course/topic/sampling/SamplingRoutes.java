package agro.course.topic.sampling;

import agro.course.CourseUnits;
import agro.course.Difficulty;
import agro.course.Exercise;
import java.util.ArrayList;
import java.util.List;

/**
 * The answers by plain arithmetic from the givens: running sums in place of sums of squares, powers
 * in place of logarithms, searches in place of formulas, and a printed table of Student's t.
 */
final class SamplingRoutes {

  /** Student's t, two-sided 5 %, for 5 to 9 degrees of freedom: qt(0.975, 5:9) of R 4.2.2. */
  private static final double[] STUDENT = {
    2.570581835636314, 2.446911851144969, 2.364624251592784, 2.306004135204166, 2.262157162798205
  };

  private SamplingRoutes() {}

  static List<Object> trapNights(Exercise exercise) {
    var givens = exercise.givens();
    double open = 0;
    for (int trap = 0; trap < givens.number("traps"); trap++) {
      for (int night = 0; night < givens.number("nights"); night++) {
        open += trap == 0 && night < givens.number("failed") ? 0 : 1;
      }
    }
    return List.of(givens.number("caught") / open);
  }

  static List<Object> area(Exercise exercise) {
    var givens = exercise.givens();
    double mean = givens.number("mean");
    if (exercise.key().difficulty() == Difficulty.BASIC) {
      return List.of(givens.number("stand") * mean);
    }
    double squareMetres =
        exercise.context().units().equals(CourseUnits.METRIC) ? 10_000 : 4046.8564224;
    double plants = squareMetres / (givens.base("row") * givens.base("plant"));
    return List.of(plants, plants * mean, plants * mean * givens.base("field") / squareMetres);
  }

  /** The fewest plants whose standard error is small enough, by trying. */
  private static double fewest(double variance, double mean, double error) {
    int n = 1;
    while (Math.sqrt(variance / n) / mean > error * (1 + 1e-12)) {
      n++;
    }
    return n;
  }

  static List<Object> size(Exercise exercise) {
    var givens = exercise.givens();
    double mean = givens.number("mean");
    double error = givens.number("error");
    double random = fewest(mean, mean, error);
    return switch (exercise.key().difficulty()) {
      case BASIC -> List.of(random);
      case ROUTINE -> {
        double n = fewest(mean + mean * mean / givens.number("k"), mean, error);
        yield List.of(random, n, n * givens.number("minutes") / 60);
      }
      case DEMANDING -> {
        double variance =
            Math.exp(Math.log(givens.number("a")) + givens.number("b") * Math.log(mean));
        double n = fewest(variance, mean, error);
        yield List.of(variance, n, n * givens.number("minutes") / 60);
      }
    };
  }

  /** The mean at which so many plants stay empty, by halving; k above 1e8 stands for chance. */
  private static double meanOfShare(double share, double k) {
    double low = 0;
    double high = 1e6;
    for (int i = 0; i < 200; i++) {
      double middle = (low + high) / 2;
      double empty = k > 1e8 ? Math.exp(-middle) : Math.pow(k / (k + middle), k);
      if (empty > 1 - share) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  static List<Object> presence(Exercise exercise) {
    var givens = exercise.givens();
    double share = givens.number("infested") / givens.number("plants");
    double random = meanOfShare(share, 1e9);
    if (exercise.key().difficulty() == Difficulty.BASIC) {
      return List.of(random);
    }
    double clumped = meanOfShare(share, givens.number("k"));
    return exercise.key().difficulty() == Difficulty.ROUTINE
        ? List.of(100 * share, random, clumped)
        : List.of(100 * share, clumped, clumped * givens.number("stand"));
  }

  /** Mean and variance by the running sums of Welford (1962). */
  private static double[] moments(List<Double> counts) {
    double mean = 0;
    double squares = 0;
    int n = 0;
    for (double x : counts) {
      n++;
      double step = x - mean;
      mean += step / n;
      squares += step * (x - mean);
    }
    return new double[] {mean, squares / (n - 1)};
  }

  static List<Object> spread(Exercise exercise) {
    var counts = exercise.givens().numbers("counts");
    double[] moments = moments(counts);
    return List.of(moments[0], moments[1], Math.sqrt(moments[1]) / Math.sqrt(counts.size()));
  }

  static List<Object> strata(Exercise exercise) {
    var givens = exercise.givens();
    double edge = moments(givens.numbers("edge"))[0];
    double middle = moments(givens.numbers("middle"))[0];
    // A field of a hundred plants.
    double plants = givens.number("percent");
    return List.of(edge, middle, (plants * edge + (100 - plants) * middle) / 100);
  }

  static List<Object> interval(Exercise exercise) {
    var givens = exercise.givens();
    int n = (int) givens.number("n");
    double error = Math.sqrt(givens.number("variance")) / Math.sqrt(n);
    double half = STUDENT[n - 6] * error;
    double off = givens.number("threshold") - givens.number("mean");
    return List.of(error, half, Math.abs(off) <= half ? "open" : off > 0 ? "below" : "above");
  }

  static List<Object> stopReading(Exercise exercise) {
    var givens = exercise.givens();
    double n = givens.number("plants");
    int treat = 0;
    while ((treat - givens.number("high")) / givens.number("slope") < n - 1e-9) {
      treat++;
    }
    int leave = 0;
    while ((leave + 1 - givens.number("low")) / givens.number("slope") <= n + 1e-9) {
      leave++;
    }
    double total = givens.number("total");
    return List.of(
        (double) treat,
        (double) leave,
        total >= treat ? "treat" : total <= leave ? "leave" : "look-on");
  }

  static List<Object> frequencies(Exercise exercise) {
    var plants = exercise.givens().numbers("plants");
    var counts = new ArrayList<Double>();
    for (int x = 0; x < plants.size(); x++) {
      for (int plant = 0; plant < plants.get(x); plant++) {
        counts.add((double) x);
      }
    }
    double[] moments = moments(counts);
    double excess = moments[1] / moments[0] - 1;
    return List.of(moments[0], moments[1], moments[0] / excess, moments[0] + excess);
  }

  static List<Object> powerLaw(Exercise exercise) {
    var givens = exercise.givens();
    var means = givens.numbers("means");
    var variances = givens.numbers("variances");
    double b =
        (Math.log10(variances.get(1)) - Math.log10(variances.get(0)))
            / (Math.log10(means.get(1)) - Math.log10(means.get(0)));
    double a = variances.get(1) / Math.pow(means.get(1), b);
    double mean = givens.number("mean");
    // Between the two fields by the ratio of means alone.
    double variance = variances.get(0) * Math.pow(mean / means.get(0), b);
    return List.of(b, a, variance, fewest(variance, mean, givens.number("error")));
  }

  /** Logarithm of the ratio of likelihoods of a count, from the probabilities themselves. */
  private static double ratio(int count, double low, double high, double k) {
    return Math.log(probability(count, high, k) / probability(count, low, k));
  }

  private static double probability(int count, double mean, double k) {
    double p = k > 0 ? Math.pow(1 + mean / k, -k) : Math.exp(-mean);
    for (int x = 1; x <= count; x++) {
      p *= k > 0 ? mean / (mean + k) * (k + x - 1) / x : mean / x;
    }
    return p;
  }

  static List<Object> stopLines(Exercise exercise) {
    var givens = exercise.givens();
    double none = ratio(0, givens.number("low"), givens.number("high"), givens.number("k"));
    double one = ratio(1, givens.number("low"), givens.number("high"), givens.number("k"));
    double weight = one - none;
    double alpha = givens.number("alpha");
    double beta = givens.number("beta");
    double evidence = givens.number("total") * weight + givens.number("plants") * none;
    return List.of(
        -none / weight,
        Math.log(beta / (1 - alpha)) / weight,
        Math.log((1 - beta) / alpha) / weight,
        evidence >= Math.log((1 - beta) / alpha)
            ? "treat"
            : evidence <= Math.log(beta / (1 - alpha)) ? "leave" : "look-on");
  }
}
