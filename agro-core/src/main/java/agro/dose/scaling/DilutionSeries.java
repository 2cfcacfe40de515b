package agro.dose.scaling;

import agro.units.CountPerVolume;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * A dilution series.
 *
 * @param tubes the tubes in order, without the undiluted sample
 * @param working the steps
 */
public record DilutionSeries(List<Tube> tubes, Working working) implements ScalingResult {

  /**
   * One tube.
   *
   * @param step number of the step, from 1
   * @param dilution share of the undiluted sample, between 0 and 1
   * @param concentration what is in the tube
   */
  public record Tube(int step, double dilution, CountPerVolume concentration) {
    /** Refuses null. */
    public Tube {
      Objects.requireNonNull(concentration, "concentration");
    }
  }

  /** Copies the list. */
  public DilutionSeries {
    tubes = List.copyOf(tubes);
    Objects.requireNonNull(working, "working");
  }

  /**
   * The last tube.
   *
   * @return the tube with the weakest dilution
   */
  public Tube last() {
    return tubes.get(tubes.size() - 1);
  }
}
