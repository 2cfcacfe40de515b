package agro.dose;

import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Objects;

/**
 * The spray volume for the rows of an orchard, with its steps and cautions.
 *
 * @param asked rows, spray for full canopy and density
 * @param rows tree-row volume per hectare of ground
 * @param spray spray volume per ground area
 * @param working the steps
 */
public record TreeRowSprayResult(
    TreeRowSpray asked, TreeRowVolume rows, SprayVolume spray, Working working)
    implements Presentable {

  /** Refuses nulls. */
  public TreeRowSprayResult {
    Objects.requireNonNull(asked, "asked");
    Objects.requireNonNull(rows, "rows");
    Objects.requireNonNull(spray, "spray");
    Objects.requireNonNull(working, "working");
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled(working.title())
        .fact("Rows", asked.canopy().toString())
        .fact("Spray volume", AmountPrint.shown(spray.perArea().litresPerHectare()) + " L/ha")
        .working(working)
        .build();
  }
}
