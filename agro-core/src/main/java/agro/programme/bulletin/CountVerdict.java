package agro.programme.bulletin;

import agro.sampling.CountSample;
import agro.sampling.injury.TreatmentVerdict;
import agro.sampling.injury.UncertainNumber;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Counts in a field against the user's threshold.
 *
 * @param part the field, or the part of it, in the words of the scouting table
 * @param day day of the count
 * @param counts the counts
 * @param threshold the threshold; nothing if the user has recorded none for the pest and crop
 * @param chanceAbove chance that treating pays, or that the field is above the threshold; nothing
 *     without a threshold
 * @param verdict what the chance speaks for; nothing without a threshold
 */
public record CountVerdict(
    String part,
    LocalDate day,
    CountSample counts,
    Optional<PestThreshold> threshold,
    Optional<Double> chanceAbove,
    Optional<TreatmentVerdict> verdict) {

  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  /** Refuses nulls. */
  public CountVerdict {
    Objects.requireNonNull(counts, "counts");
    Objects.requireNonNull(threshold, "threshold");
    Objects.requireNonNull(chanceAbove, "chanceAbove");
    Objects.requireNonNull(verdict, "verdict");
  }

  static CountVerdict of(
      String part, LocalDate day, CountSample counts, Optional<PestThreshold> threshold) {
    var usable = threshold.filter(each -> each.unit().equals(counts.unit()));
    return new CountVerdict(
        part,
        day,
        counts,
        usable,
        usable.map(each -> each.chanceAbove(counts)),
        usable.map(each -> each.verdict(counts)));
  }

  /** The part without the name of its field. */
  String shortPart(String field) {
    return part.startsWith(field + " ") ? part.substring(field.length() + 1) : part;
  }

  /**
   * Lower end of the interval that holds the mean of the field with nine chances in ten.
   *
   * @return animals for each unit
   */
  public double low() {
    return UncertainNumber.densityOf(counts).quantile(LOW);
  }

  /**
   * Upper end of the interval that holds the mean of the field with nine chances in ten.
   *
   * @return animals for each unit
   */
  public double high() {
    return UncertainNumber.densityOf(counts).quantile(HIGH);
  }
}
