package agro.development.field;

import agro.source.Bibliography;
import agro.source.Reference;

/**
 * What makes a base temperature x the best one for n durations d with mean temperatures T. With y =
 * d T and degree-days G = d (T − x) = y − x d; A = var(y), B = cov(y, d), C = var(d), m = mean(y),
 * q = mean(d), all variances with n − 1. The closed forms hold while no day is colder than x.
 */
public enum BaseCriterion {
  /**
   * The standard deviation of the degree-days is least: x = B / C. It is biased, for it shrinks as
   * x rises only because the degree-days themselves shrink.
   */
  LEAST_SD_DEGREE_DAYS("least standard deviation in degree-days", Bibliography.ARNOLD_1959) {
    @Override
    double closedForm(Moments of) {
      return of.covarianceYd() / of.varianceD();
    }
  },
  /**
   * The standard deviation in days, SD(G) / (mean(T) − x), is least: x = (B Tm − A) / (C Tm − B).
   */
  LEAST_SD_DAYS("least standard deviation in days", Bibliography.YANG_LOGAN_COFFEY_1995) {
    @Override
    double closedForm(Moments of) {
      return (of.covarianceYd() * of.meanT() - of.varianceY())
          / (of.varianceD() * of.meanT() - of.covarianceYd());
    }
  },
  /** The coefficient of variation is least: x = (B m / q − A) / (C m / q − B). */
  LEAST_VARIATION("least coefficient of variation", Bibliography.YANG_LOGAN_COFFEY_1995) {
    @Override
    double closedForm(Moments of) {
      double ratio = of.meanY() / of.meanD();
      return (of.covarianceYd() * ratio - of.varianceY())
          / (of.varianceD() * ratio - of.covarianceYd());
    }
  },
  /** The regression of degree-days on mean temperature has no slope: x = cov(T, y) / cov(T, d). */
  NO_SLOPE_ON_TEMPERATURE(
      "no slope of degree-days on temperature", Bibliography.YANG_LOGAN_COFFEY_1995) {
    @Override
    double closedForm(Moments of) {
      return of.covarianceTy() / of.covarianceTd();
    }
  },
  /** The regression 1/d = a + b T crosses zero: x = −a / b. */
  RATE_INTERCEPT("intercept of the rate on temperature", Bibliography.ARNOLD_1959) {
    @Override
    double closedForm(Moments of) {
      double slope = of.covarianceRateT() / of.varianceT();
      return of.meanT() - of.meanRate() / slope;
    }
  },
  /** The reduced major axis of y on d: x = sign(B) sd(y) / sd(d). */
  REDUCED_MAJOR_AXIS("reduced major axis", Bibliography.IKEMOTO_TAKAI_2000) {
    @Override
    double closedForm(Moments of) {
      return Math.signum(of.covarianceYd()) * Math.sqrt(of.varianceY() / of.varianceD());
    }
  };

  private final String words;
  private final Reference source;

  BaseCriterion(String words, Reference source) {
    this.words = words;
    this.source = source;
  }

  /** The base temperature when every day counts in full; NaN or infinite when it is not defined. */
  abstract double closedForm(Moments of);

  /**
   * Whether days below the base change the criterion, so that it must be searched on daily
   * temperatures.
   *
   * @return false for the two that use durations and mean temperatures alone
   */
  public boolean needsDegreeDays() {
    return this != RATE_INTERCEPT && this != REDUCED_MAJOR_AXIS;
  }

  /**
   * The criterion in words.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }

  /**
   * Where it is published.
   *
   * @return the source
   */
  public Reference source() {
    return source;
  }
}
