package agro.development.rate;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Mean duration of development in one cabinet at constant temperature.
 *
 * @param cabinet name of the cabinet, empty when none is given
 * @param setCelsius temperature to which the cabinet was set
 * @param measuredCelsius temperature that was measured inside, if it was; fits use it then
 * @param meanDays mean duration in days, or empty where no animal developed
 * @param animals how many animals the mean is of, if known
 * @param deviationDays standard deviation of single durations in days, if known
 */
public record RearingMean(
    String cabinet,
    double setCelsius,
    OptionalDouble measuredCelsius,
    OptionalDouble meanDays,
    OptionalInt animals,
    OptionalDouble deviationDays) {

  /**
   * Checks all figures.
   *
   * @throws InputProblem for a figure that no rearing has
   */
  public RearingMean {
    Objects.requireNonNull(cabinet, "cabinet");
    RearingChecks.celsius(setCelsius, SourceLocation.NONE);
    measuredCelsius.ifPresent(value -> RearingChecks.celsius(value, SourceLocation.NONE));
    meanDays.ifPresent(value -> RearingChecks.days(value, SourceLocation.NONE));
    animals.ifPresent(value -> RearingChecks.count(value, SourceLocation.NONE));
    deviationDays.ifPresent(value -> RearingChecks.deviation(value, SourceLocation.NONE));
  }

  /**
   * A mean without number and spread.
   *
   * @param celsius temperature of the cabinet
   * @param days mean duration
   * @return the mean
   */
  public static RearingMean of(double celsius, double days) {
    return new RearingMean(
        "",
        celsius,
        OptionalDouble.empty(),
        OptionalDouble.of(days),
        OptionalInt.empty(),
        OptionalDouble.empty());
  }

  /**
   * A temperature at which no animal developed: a rate of zero, which is data.
   *
   * @param celsius temperature of the cabinet
   * @return the record
   */
  public static RearingMean noDevelopment(double celsius) {
    return new RearingMean(
        "",
        celsius,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalInt.empty(),
        OptionalDouble.empty());
  }

  /**
   * This mean with the number of animals and the standard deviation of their durations.
   *
   * @param animals number of animals
   * @param deviationDays standard deviation of single durations in days
   * @return a new mean
   */
  public RearingMean withSpread(int animals, double deviationDays) {
    return new RearingMean(
        cabinet,
        setCelsius,
        measuredCelsius,
        meanDays,
        OptionalInt.of(animals),
        OptionalDouble.of(deviationDays));
  }

  /**
   * This mean with the temperature that was measured in the cabinet.
   *
   * @param celsius the temperature
   * @return a new mean
   */
  public RearingMean withMeasured(double celsius) {
    return new RearingMean(
        cabinet, setCelsius, OptionalDouble.of(celsius), meanDays, animals, deviationDays);
  }

  /**
   * This mean as one of a named cabinet.
   *
   * @param name name of the cabinet
   * @return a new mean
   */
  public RearingMean inCabinet(String name) {
    return new RearingMean(name, setCelsius, measuredCelsius, meanDays, animals, deviationDays);
  }

  /**
   * The temperature that a fit uses.
   *
   * @return the measured one if there is one, else the set one, °C
   */
  public double celsius() {
    return measuredCelsius.orElse(setCelsius);
  }

  /**
   * Rate of development.
   *
   * @return one over the mean duration, 0 where no animal developed
   */
  public double rate() {
    return meanDays.isPresent() ? 1 / meanDays.getAsDouble() : 0;
  }

  /**
   * Standard error of the rate, from the spread between animals alone: SE(1/D) = SE(D)/D².
   *
   * @return NaN where number, spread or development are missing, or the spread is zero
   */
  public double rateStandardError() {
    if (meanDays.isEmpty() || animals.isEmpty() || deviationDays.orElse(0) == 0) {
      return Double.NaN;
    }
    double mean = meanDays.getAsDouble();
    return deviationDays.getAsDouble() / Math.sqrt(animals.getAsInt()) / (mean * mean);
  }
}
