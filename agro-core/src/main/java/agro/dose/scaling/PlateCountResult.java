package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.units.CountPerVolume;
import agro.units.QuantityRange;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * Colony-forming units of a sample.
 *
 * @param concentration count per volume of the undiluted sample
 * @param interval 95 % interval from the chance of spreading alone
 * @param marks one mark for each plate, in order
 * @param findings plates that are not countable
 * @param working the steps
 */
public record PlateCountResult(
    CountPerVolume concentration,
    QuantityRange<CountPerVolume> interval,
    List<PlateMark> marks,
    List<DoseFinding> findings,
    Working working)
    implements ScalingResult {

  /** Copies the lists. */
  public PlateCountResult {
    Objects.requireNonNull(concentration, "concentration");
    Objects.requireNonNull(interval, "interval");
    marks = List.copyOf(marks);
    findings = List.copyOf(findings);
    Objects.requireNonNull(working, "working");
  }
}
