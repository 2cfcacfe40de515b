package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.working.Block;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.List;

/** A scaled dose with the steps that lead to it, its cautions and what a reader has to know. */
public interface ScalingResult extends Presentable {

  /**
   * The steps of the calculation, with all cautions.
   *
   * @return the working
   */
  Working working();

  /**
   * What was noticed on the way: a limit passed, a plate that cannot be counted, manure that is too
   * wet.
   *
   * @return the findings, possibly none
   */
  default List<DoseFinding> findings() {
    return List.of();
  }

  @Override
  default Presentation presentation() {
    if (findings().isEmpty()) {
      return Presentation.untitled(new Block.WorkingBlock(working()));
    }
    var builder = Presentation.titled("");
    findings().forEach(finding -> builder.paragraph(finding.toString()));
    return builder.working(working()).build();
  }
}
