package agro.dose.sprayer;

import agro.units.Length;
import agro.units.Speed;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Optional;

/**
 * The speed found on a timed course.
 *
 * @param course length of the course
 * @param speed course ÷ mean time
 * @param uncertainty uncertainty of the mean time; nothing if the course was timed once
 * @param working the steps, with cautions
 */
public record CourseSpeed(
    Length course, Speed speed, Optional<RelativeUncertainty> uncertainty, Working working)
    implements Presentable {

  @Override
  public Presentation presentation() {
    return working.presentation();
  }
}
