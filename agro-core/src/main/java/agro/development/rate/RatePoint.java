package agro.development.rate;

/**
 * An observed rate as a fit uses it.
 *
 * @param cabinet name of the cabinet, empty when none is given
 * @param celsius temperature, measured if that is known, else set
 * @param rate rate of development, 1/d; 0 where no animal developed
 * @param standardError standard error of the rate from the spread between animals; NaN if unknown
 * @param weight weight in the sum of squares
 */
public record RatePoint(
    String cabinet, double celsius, double rate, double standardError, double weight) {}
