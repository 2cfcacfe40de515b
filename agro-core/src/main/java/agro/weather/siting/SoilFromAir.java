package agro.weather.siting;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.MediumKind;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Soil temperature worked out from air temperature: the air is taken for the surface, its daily
 * swing is damped with depth, and its daily means spread down by conduction, which damps and delays
 * the season and spells of weather. A last resort where no soil was measured. Immutable.
 */
public final class SoilFromAir {

  /** Days of the past that are looked at. */
  static final int MEMORY_DAYS = 400;

  private static final double EARLIEST_MINIMUM_HOUR = 5;
  private static final double MAXIMUM_HOUR = 15;
  private static final double DAY_HOURS = 24;

  private final double depthMetres;
  private final SoilDiffusivity diffusivity;
  private final OptionalDouble standardError;
  private final OptionalDouble meanOfYear;
  private final double leastKnownShare;

  private SoilFromAir(
      double depthMetres,
      SoilDiffusivity diffusivity,
      OptionalDouble standardError,
      OptionalDouble meanOfYear,
      double leastKnownShare) {
    this.depthMetres = depthMetres;
    this.diffusivity = diffusivity;
    this.standardError = standardError;
    this.meanOfYear = meanOfYear;
    this.leastKnownShare = leastKnownShare;
  }

  /**
   * Soil at a depth.
   *
   * @param depthMetres depth in m, above 0
   * @param diffusivity thermal diffusivity of the soil
   * @return the model, without a standard error of its own
   * @throws InputProblem when the depth is not above zero
   */
  public static SoilFromAir at(double depthMetres, SoilDiffusivity diffusivity) {
    var medium = new Medium.Soil(depthMetres);
    return new SoilFromAir(
        medium.depthMetres(),
        Objects.requireNonNull(diffusivity, "diffusivity"),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        0.7);
  }

  /**
   * Soil of a kind at a depth.
   *
   * @param depthMetres depth in m, above 0
   * @param kind kind of soil
   * @return the model
   */
  public static SoilFromAir at(double depthMetres, SoilKind kind) {
    return at(depthMetres, kind.diffusivity());
  }

  /**
   * This model with a standard error, as found where soil and air were measured side by side.
   *
   * @param celsius standard error of a daily extreme in °C, 0 or more
   * @return a new model
   * @throws InputProblem when it is negative
   */
  public SoilFromAir withStandardError(double celsius) {
    if (!(celsius >= 0)) {
      throw InputProblem.of("a standard error of " + celsius + " °C")
          .expected("0 °C or more")
          .because("it is a standard deviation")
          .mend("leave it out when it is not known");
    }
    return new SoilFromAir(
        depthMetres, diffusivity, OptionalDouble.of(celsius), meanOfYear, leastKnownShare);
  }

  /**
   * This model with the mean air temperature of the year, which stands for the time before the log.
   *
   * @param celsius mean in °C
   * @return a new model whose first days are not missing
   */
  public SoilFromAir withMeanOfYear(double celsius) {
    return new SoilFromAir(
        depthMetres, diffusivity, standardError, OptionalDouble.of(celsius), leastKnownShare);
  }

  /**
   * This model with another share of the past that has to be known for a day to have a figure.
   *
   * @param share above 0 to 1; 0.7 unless stated
   * @return a new model
   * @throws InputProblem when the share is out of range
   */
  public SoilFromAir withLeastKnownShare(double share) {
    if (!(share > 0 && share <= 1)) {
      throw InputProblem.of("a share of " + share)
          .expected("above 0 and at most 1")
          .because("it is the part of the depth's memory that the log covers")
          .mend("give for example 0.7");
    }
    return new SoilFromAir(depthMetres, diffusivity, standardError, meanOfYear, share);
  }

  /**
   * Works out the soil's daily extremes.
   *
   * @param air daily extremes of air
   * @return the soil's extremes of the same days, with origin {@link DayOrigin#MODELLED}; days are
   *     missing where the air is, and where too little of the depth's memory is known
   * @throws InputProblem when the series is of soil
   */
  public SoilEstimate estimate(DailyTemperatures air) {
    air.medium().require(MediumKind.AIR, "the damping of air temperature");
    var wave = DampedWave.daily(diffusivity, depthMetres);
    double[] weights =
        SoilKernel.weights(diffusivity.squareMetresPerSecond(), depthMetres, MEMORY_DAYS);
    var builder = DailyTemperatures.builder(air.firstDay(), air.lastDay());
    var means = new double[air.size()];
    var variances = new double[air.size()];
    for (int day = 0; day < air.size(); day++) {
      var date = air.day(day);
      double low = air.minStandardErrorCelsius(date);
      double high = air.maxStandardErrorCelsius(date);
      means[day] = 0.5 * (air.minCelsius(date) + air.maxCelsius(date));
      variances[day] = 0.25 * (low * low + high * high);
    }
    for (int day = 0; day < air.size(); day++) {
      put(builder, air, day, means, variances, weights, wave);
    }
    var soil = builder.build(air.place(), new Medium.Soil(depthMetres));
    return new SoilEstimate(
        soil, air.medium(), diffusivity, depthMetres, standardError, meanOfYear, leastKnownShare);
  }

  private void put(
      DailyTemperatures.Builder builder,
      DailyTemperatures air,
      int day,
      double[] means,
      double[] variances,
      double[] weights,
      DampedWave wave) {
    if (air.originAt(day) == DayOrigin.MISSING) {
      return;
    }
    double known = 0;
    double sum = 0;
    double variance = 0;
    for (int j = 0; j <= day && j < weights.length; j++) {
      double mean = means[day - j];
      if (!Double.isNaN(mean)) {
        known += weights[j];
        sum += weights[j] * mean;
        variance += weights[j] * weights[j] * variances[day - j];
      }
    }
    if (known < leastKnownShare && meanOfYear.isEmpty()) {
      return;
    }
    double mean =
        meanOfYear.isPresent() ? sum + (1 - known) * meanOfYear.getAsDouble() : sum / known;
    double share = meanOfYear.isPresent() ? 1 : known;
    double low = mean - wave.amplitudeFactor() * halfRange(air, day, EARLIEST_MINIMUM_HOUR, wave);
    double high = mean + wave.amplitudeFactor() * halfRange(air, day, MAXIMUM_HOUR, wave);
    double own = standardError.orElse(0);
    double error =
        Math.sqrt(own * own + variance / (share * share) + rangeVariance(air, day, wave));
    builder.put(air.day(day), low, high, error, error, DayOrigin.MODELLED);
  }

  /** Half the range of the air day whose extreme arrives at the depth on a day. */
  private static double halfRange(
      DailyTemperatures air, int day, double hourOfExtreme, DampedWave wave) {
    int later = (int) ((hourOfExtreme + wave.lagHours()) / DAY_HOURS);
    int source = Math.max(0, day - later);
    var date = air.day(air.originAt(source) == DayOrigin.MISSING ? day : source);
    return 0.5 * (air.maxCelsius(date) - air.minCelsius(date));
  }

  private static double rangeVariance(DailyTemperatures air, int day, DampedWave wave) {
    var date = air.day(day);
    double low = air.minStandardErrorCelsius(date);
    double high = air.maxStandardErrorCelsius(date);
    double factor = 0.5 * wave.amplitudeFactor();
    return factor * factor * (low * low + high * high);
  }
}
