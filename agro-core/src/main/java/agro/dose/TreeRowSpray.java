package agro.dose;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;

/**
 * The spray volume for the rows of an orchard: tree-row volume × spray volume for 1000 m³ of full
 * canopy × canopy density. Guides give the spray for full leaf; early in the season less than half
 * of it wets the trees.
 *
 * @param canopy the rows as they stand
 * @param litresPerThousandCubicMetres spray in L for 1000 m³ of full canopy, above zero
 * @param canopyDensity share of a full canopy, above 0 and up to 1
 */
public record TreeRowSpray(
    Canopy canopy, double litresPerThousandCubicMetres, double canopyDensity) {

  /** Refuses a spray of nothing. */
  public TreeRowSpray {
    Objects.requireNonNull(canopy, "canopy");
    if (!(litresPerThousandCubicMetres > 0
        && litresPerThousandCubicMetres < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of(litresPerThousandCubicMetres + " L of spray for 1000 m³ of canopy")
          .expected("a finite volume above zero")
          .because("the volume of the rows is multiplied by it")
          .mend("take the volume for full canopy from the guide that you follow");
    }
  }

  /**
   * Computes the spray volume.
   *
   * @return tree-row volume and spray volume with the steps
   * @throws InputProblem if the canopy density is no share
   */
  public TreeRowSprayResult evaluate() {
    var rows = canopy.treeRowVolume();
    var spray = rows.spray(litresPerThousandCubicMetres, canopyDensity);
    var height = Numbers.plain(canopy.treatedHeight().metres());
    var width = Numbers.plain(canopy.width().metres());
    var distance = Numbers.plain(canopy.rowDistance().metres());
    var volume = AmountPrint.shown(rows.cubicMetresPerHectare()) + " m³/ha";
    var working =
        Working.of("Spray volume from tree-row volume")
            .step(
                "Tree-row volume",
                "TRV = height × width × 10 000 m² ÷ row distance",
                height + " m × " + width + " m × 10 000 m² ÷ " + distance + " m",
                volume,
                DoseSources.LANDERS_TREE_ROWS)
            .step(
                "Spray volume",
                "spray = TRV ÷ 1000 m³ × spray for 1000 m³ × canopy density",
                volume
                    + " ÷ 1000 m³ × "
                    + Numbers.plain(litresPerThousandCubicMetres)
                    + " L × "
                    + Numbers.plain(canopyDensity),
                AmountPrint.shown(spray.perArea().litresPerHectare()) + " L/ha",
                DoseSources.LANDERS_TREE_ROWS);
    return new TreeRowSprayResult(this, rows, spray, working.withCautions(Caution.all()));
  }
}
