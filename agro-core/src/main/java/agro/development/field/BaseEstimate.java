package agro.development.field;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The base temperature by one criterion, and how much the degree-days above it scatter.
 *
 * @param criterion what was sought
 * @param celsius base temperature in °C, or nothing when the data do not determine one
 * @param meanDegreeDaysC mean of the degree-days above it in °C·d
 * @param sdDegreeDaysC their standard deviation in °C·d
 * @param sdDays the standard deviation in days: in degree-days over the mean daily degree-days
 * @param variation coefficient of variation, 0 to 1
 * @param interval interval from resampled seasons, when asked for
 * @param remark what the reader should know, or empty
 */
public record BaseEstimate(
    BaseCriterion criterion,
    OptionalDouble celsius,
    double meanDegreeDaysC,
    double sdDegreeDaysC,
    double sdDays,
    double variation,
    Optional<BaseInterval> interval,
    String remark) {

  /** Refuses nulls. */
  public BaseEstimate {
    Objects.requireNonNull(criterion, "criterion");
    Objects.requireNonNull(celsius, "celsius");
    Objects.requireNonNull(interval, "interval");
    Objects.requireNonNull(remark, "remark");
  }

  BaseEstimate withInterval(Optional<BaseInterval> newInterval) {
    return new BaseEstimate(
        criterion, celsius, meanDegreeDaysC, sdDegreeDaysC, sdDays, variation, newInterval, remark);
  }
}
