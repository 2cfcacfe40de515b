package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.dose.ProductAmount;
import agro.units.Numbers;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * An amount in measures of the field.
 *
 * @param exactLow measures for the low end, not rounded
 * @param exactHigh measures for the high end, not rounded
 * @param choices fewest and most that keep the range; if none does, the nearest below and above
 * @param findings a warning where no count keeps the range
 * @param working the steps
 */
public record MeasureCountResult(
    double exactLow,
    double exactHigh,
    List<Choice> choices,
    List<DoseFinding> findings,
    Working working)
    implements ScalingResult {

  /**
   * What can be measured out.
   *
   * @param count measures, whole or in parts
   * @param amount product that they hold
   * @param departure share by which that is below the low or above the high end; 0 inside the range
   */
  public record Choice(double count, ProductAmount amount, double departure) {
    /** Refuses null. */
    public Choice {
      Objects.requireNonNull(amount, "amount");
    }

    String words() {
      if (departure == 0) {
        return "as asked for";
      }
      var percent = Numbers.significant(100 * Math.abs(departure), 3) + " %";
      return percent + (departure < 0 ? " too little" : " too much");
    }
  }

  /** Copies the lists. */
  public MeasureCountResult {
    choices = List.copyOf(choices);
    findings = List.copyOf(findings);
    Objects.requireNonNull(working, "working");
  }
}
