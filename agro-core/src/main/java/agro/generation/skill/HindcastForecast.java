package agro.generation.skill;

import agro.generation.DateDistribution;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * One date of one forecast of a past season, beside what came.
 *
 * @param scheme which seasons it learnt from
 * @param year season that was forecast
 * @param firstDay first day of that season
 * @param lastDay last day of that season
 * @param event what was forecast
 * @param lead how long before the event the forecast was issued
 * @param issueDate day of issue; nothing later was known
 * @param dates the forecast
 * @param observed the date that the whole season shows
 * @param references plain forecasts for the same event on the same day, where they could be made
 */
public record HindcastForecast(
    HindcastScheme scheme,
    int year,
    LocalDate firstDay,
    LocalDate lastDay,
    FlightEvent event,
    LeadTime lead,
    LocalDate issueDate,
    DateDistribution dates,
    ObservedDate observed,
    Map<SkillReference, DateDistribution> references) {

  private static final int OUTCOMES = 501;

  /** Copies the map and refuses an event that cannot be scored. */
  public HindcastForecast {
    Objects.requireNonNull(scheme, "scheme");
    Objects.requireNonNull(event, "event");
    Objects.requireNonNull(lead, "lead");
    Objects.requireNonNull(issueDate, "issueDate");
    Objects.requireNonNull(dates, "dates");
    references = Map.copyOf(references);
    if (!observed.known()) {
      throw new IllegalArgumentException("a forecast is scored by a known date: " + observed);
    }
  }

  /**
   * Days from the start of the season to its end, where "not this season" begins.
   *
   * @return the horizon of the scores
   */
  public double horizonDays() {
    return ChronoUnit.DAYS.between(firstDay, lastDay) + 1.0;
  }

  /**
   * The observed date as a number, with the season's end in place of "not this season".
   *
   * @return days since the start of the season
   */
  public double observedDays() {
    return Math.min(observed.days(), horizonDays());
  }

  /**
   * The median date of the forecast as a number, with the season's end in place of "not this
   * season".
   *
   * @return days since the start of the season
   */
  public double medianDays() {
    return Math.min(dates.quantileDays(0.5), horizonDays());
  }

  /**
   * Forecast less observation.
   *
   * @return days, positive when the forecast was late
   */
  public double errorDays() {
    return medianDays() - observedDays();
  }

  /**
   * Ranked probability score up to the season's end.
   *
   * @return days
   */
  public double rankedProbabilityDays() {
    return rankedProbability(dates);
  }

  /**
   * The same score of a reference.
   *
   * @param reference the reference
   * @return days, or nothing when the reference could not be made
   */
  public Optional<Double> rankedProbabilityDays(SkillReference reference) {
    return Optional.ofNullable(references.get(reference)).map(this::rankedProbability);
  }

  private double rankedProbability(DateDistribution distribution) {
    var outcomes = new double[OUTCOMES];
    for (var i = 0; i < OUTCOMES; i++) {
      outcomes[i] = distribution.quantileDays((i + 0.5) / OUTCOMES);
    }
    return RankedProbability.upTo(outcomes, observed.days(), horizonDays());
  }

  /**
   * Absolute error of the median of a reference.
   *
   * @param reference the reference
   * @return days, or nothing when the reference could not be made
   */
  public Optional<Double> absoluteErrorDays(SkillReference reference) {
    return Optional.ofNullable(references.get(reference))
        .map(each -> Math.abs(Math.min(each.quantileDays(0.5), horizonDays()) - observedDays()));
  }

  /**
   * Whether the observed date lies in the central interval of the forecast.
   *
   * @param probability chance that the interval claims
   * @return true inside, ends included; "not this season" lies inside an interval that reaches it
   */
  public boolean inside(double probability) {
    return observedDays() >= end((1 - probability) / 2)
        && observedDays() <= end(1 - (1 - probability) / 2);
  }

  /**
   * Width of the central interval of the forecast, cut at the season's end.
   *
   * @param probability chance that the interval claims
   * @return days
   */
  public double widthDays(double probability) {
    return end(1 - (1 - probability) / 2) - end((1 - probability) / 2);
  }

  /**
   * Interval score of the central interval of the forecast, cut at the season's end.
   *
   * @param probability chance that the interval claims
   * @return days
   */
  public double intervalScoreDays(double probability) {
    return IntervalScore.of(
        end((1 - probability) / 2), end(1 - (1 - probability) / 2), observedDays(), probability);
  }

  private double end(double probability) {
    return Math.min(dates.quantileDays(probability), horizonDays());
  }

  /**
   * Brier score of the chance that the event comes at all this season.
   *
   * @return 0 to 1
   */
  public double brierScore() {
    return BrierScore.of(1 - dates.chanceNotThisSeason(), observed.came());
  }
}
