package agro.dose.scaling;

import agro.dose.PlantingPlace;
import agro.dose.ProductAmount;
import agro.dose.ProductPerPlant;
import agro.dose.ProductPerTray;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A dose for seedlings, per 1000 plants or per tray, for the plants at hand.
 *
 * @param rate product per plants
 * @param plants number of plants, above zero
 * @param cells cells of a tray; nothing if the plants stand in none
 */
public record NurseryDose(ProductPerPlant rate, double plants, OptionalInt cells) {

  /** Refuses no plants and trays without cells. */
  public NurseryDose {
    Objects.requireNonNull(rate, "rate");
    ScalingChecks.aboveZero(
        plants,
        "number of plants",
        "the product is in proportion to it",
        "count the plants, or the trays times their cells");
    cells.ifPresent(NurseryDose::requireCells);
  }

  /**
   * Plants that are counted.
   *
   * @param rate product per plants, for example per 1000
   * @param plants number of plants
   * @return the dose
   */
  public static NurseryDose ofPlants(ProductPerPlant rate, double plants) {
    return new NurseryDose(rate, plants, OptionalInt.empty());
  }

  /**
   * Trays that are counted.
   *
   * @param rate product per tray
   * @param trays number of trays, above zero
   * @param cells cells of a tray, 1 or more
   * @return the dose, as product per plant
   */
  public static NurseryDose ofTrays(ProductPerTray rate, double trays, int cells) {
    requireCells(cells);
    ScalingChecks.aboveZero(
        trays, "number of trays", "the product is in proportion to it", "count the trays");
    var perPlant = new ProductPerPlant(rate.perTray(), cells, PlantingPlace.SEEDLING);
    return new NurseryDose(perPlant, trays * cells, OptionalInt.of(cells));
  }

  private static void requireCells(int cells) {
    if (cells < 1) {
      throw InputProblem.of("a tray has " + cells + " cells")
          .expected("1 or more")
          .because("the dose of a plant is the dose of the tray divided by its cells")
          .mend("count the cells along both sides and multiply");
    }
  }

  /**
   * Works out the product, printed in metric units.
   *
   * @return product for all plants, per plant, per 1000 plants and per tray, and the steps
   */
  public NurseryDoseResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Works out the product.
   *
   * @param style units of print
   * @return product for all plants, per plant, per 1000 plants and per tray, and the steps
   */
  public NurseryDoseResult evaluate(QuantityStyle style) {
    var total = rate.on(plants);
    var perPlant = rate.perPlant();
    var perThousand = new ProductPerPlant(rate.on(1000), 1000, rate.place());
    Optional<ProductAmount> perTray =
        cells.isPresent() ? Optional.of(rate.on(cells.getAsInt())) : Optional.empty();
    var working =
        Working.of("Dose for seedlings")
            .step(
                "product per plant",
                "rate / plants that it is for",
                rate.toString(),
                perPlant.print(style),
                ScalingSources.UNITS_ALONE)
            .step(
                "product for all plants",
                "product per plant × plants",
                perPlant.print(style) + " × " + Numbers.plain(plants),
                total.print(style))
            .step(
                "the same rate per 1000 plants" + (perTray.isPresent() ? " and per tray" : ""),
                "",
                "",
                perThousand.print(style)
                    + perTray.map(tray -> "; " + tray.print(style) + " per tray").orElse(""))
            .withCautions(Caution.all());
    return new NurseryDoseResult(total, perPlant, perThousand, perTray, working);
  }
}
