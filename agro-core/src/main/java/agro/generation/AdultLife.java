package agro.generation;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.Locale;
import java.util.Objects;

/**
 * How long adults live and fly, so that a catch is told apart from the emergence before it: the
 * catch of a night comes from all adults that have emerged and still live.
 *
 * <p>With an adult life in the fit, the fitted curve is the emergence. Its middle lies before the
 * middle of the flight by about the mean life; the interval from emergence to emergence is that
 * from flight to flight as long as nights are about equally warm.
 *
 * @param form how lives are spread about their mean
 * @param meanDays mean life in days, above 0 and at most 200
 */
public record AdultLife(Form form, double meanDays) {

  private static final double LONGEST_MEAN = 200;

  /** How the lives of adults are spread. */
  public enum Form {
    /** The same chance to die on every day, {@code S(a) = exp(-a / mean)}. */
    EXPONENTIAL {
      @Override
      double survival(double days, double mean) {
        return Math.exp(-days / mean);
      }

      @Override
      double livedUpTo(double days, double mean) {
        return mean * (1 - Math.exp(-days / mean));
      }
    },
    /** Every life from nothing to twice the mean alike, {@code S(a) = 1 - a / (2 mean)}. */
    UNIFORM {
      @Override
      double survival(double days, double mean) {
        return Math.max(0, 1 - days / (2 * mean));
      }

      @Override
      double livedUpTo(double days, double mean) {
        var within = Math.min(days, 2 * mean);
        return within - within * within / (4 * mean);
      }
    };

    abstract double survival(double days, double mean);

    /** The integral of the survival. */
    abstract double livedUpTo(double days, double mean);
  }

  /** Checks the mean. */
  public AdultLife {
    Objects.requireNonNull(form, "form");
    if (!(meanDays > 0 && meanDays <= LONGEST_MEAN)) {
      throw InputProblem.of("adults live " + meanDays + " days on average")
          .expected("a mean life above 0 and at most " + (int) LONGEST_MEAN + " days")
          .because("the catch is spread over the nights that an adult lives")
          .mend("state the mean life in days, or leave it out");
    }
  }

  /**
   * The same chance to die on every day.
   *
   * @param meanDays mean life in days
   * @return the life
   */
  public static AdultLife exponential(double meanDays) {
    return new AdultLife(Form.EXPONENTIAL, meanDays);
  }

  /**
   * Every life from nothing to twice the mean alike.
   *
   * @param meanDays mean life in days
   * @return the life
   */
  public static AdultLife uniform(double meanDays) {
    return new AdultLife(Form.UNIFORM, meanDays);
  }

  /**
   * Share of the adults alive at an age.
   *
   * @param days age in days, 0 or more
   * @return 1 at 0, falling to 0
   */
  public double survival(double days) {
    return form.survival(days, meanDays);
  }

  /** Mean survival over one night of life, counted from 0. */
  double survivalOverNight(int night) {
    return form.livedUpTo(night + 1.0, meanDays) - form.livedUpTo(night, meanDays);
  }

  /**
   * The life in words.
   *
   * @return a phrase for print
   */
  public String words() {
    return form.name().toLowerCase(Locale.ROOT)
        + " with a mean of "
        + Numbers.plain(meanDays)
        + " days";
  }
}
