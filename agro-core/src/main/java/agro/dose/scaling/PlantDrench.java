package agro.dose.scaling;

import agro.dose.PlantingPlace;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerPlant;
import agro.dose.ProductPerTreatedArea;
import agro.dose.SprayVolume;
import agro.units.Area;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;
import java.util.Optional;

/**
 * A drench of plants: the dose of the field shared among its plants, or the dose of a plant summed
 * over the field. Product per plant = dose per hectare / plants per hectare.
 *
 * @param perField product per area of field
 * @param spacing how the plants stand
 * @param water volume of solution per area of field; nothing if it is not known
 * @param wetted ground that is wetted around one plant; nothing if it is not known
 */
public record PlantDrench(
    ProductPerArea perField,
    PlantSpacing spacing,
    Optional<SprayVolume> water,
    Optional<Area> wetted) {

  /** Refuses wetted rings that overlap. */
  public PlantDrench {
    Objects.requireNonNull(perField, "perField");
    Objects.requireNonNull(spacing, "spacing");
    Objects.requireNonNull(water, "water");
    if (wetted.isPresent()) {
      ScalingChecks.aboveZero(
          wetted.get(),
          "wetted ground of a plant",
          "the dose on it is the dose of the plant divided by it",
          "measure the ring that gets wet");
      ScalingChecks.notAbove(
          wetted.get(),
          "wetted ground of a plant",
          spacing.groundOfPlant(),
          "ground of a plant",
          "wetted rings that overlap get the dose twice",
          "check the ring and the spacings");
    }
  }

  /**
   * A drench from the dose per area of field.
   *
   * @param rate product per area of field
   * @param spacing how the plants stand
   * @return the drench, without water and wetted ground
   */
  public static PlantDrench of(ProductPerArea rate, PlantSpacing spacing) {
    return new PlantDrench(rate, spacing, Optional.empty(), Optional.empty());
  }

  /**
   * A drench from the dose per plant.
   *
   * @param rate product per plant
   * @param spacing how the plants stand
   * @return the drench, without water and wetted ground
   */
  public static PlantDrench of(ProductPerPlant rate, PlantSpacing spacing) {
    double plants = spacing.plantsOn(new Area(10_000));
    return of(ProductPerArea.ofHectare(rate.on(plants)), spacing);
  }

  /**
   * The same drench in a volume of solution.
   *
   * @param solution solution per area of field
   * @return the drench
   */
  public PlantDrench in(SprayVolume solution) {
    return new PlantDrench(perField, spacing, Optional.of(solution), wetted);
  }

  /**
   * The same drench on a wetted ring.
   *
   * @param ring ground that is wetted around one plant
   * @return the drench
   */
  public PlantDrench wetting(Area ring) {
    return new PlantDrench(perField, spacing, water, Optional.of(ring));
  }

  /**
   * Drenches, printed in metric units.
   *
   * @return product and solution per plant and per area, and the steps
   */
  public PlantDrenchResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Drenches.
   *
   * @param style units of print
   * @return product and solution per plant and per area, and the steps
   */
  public PlantDrenchResult evaluate(QuantityStyle style) {
    double plants = spacing.plantsOn(new Area(10_000));
    var dose = perField.on(spacing.groundOfPlant());
    var perPlant = new ProductPerPlant(dose, 1, PlantingPlace.PLANT);
    var solution = water.map(volume -> volume.on(spacing.groundOfPlant()));
    var treated =
        wetted.map(
            ring -> ProductPerTreatedArea.ofHectare(dose.times(10_000 / ring.squareMetres())));
    var onPlant = perPlant.print(style);
    var table =
        new SideBySide("Drench and field")
            .row(
                "Product",
                treated.map(rate -> rate.print(style)).orElse("wetted ground not stated"),
                perField.print(style))
            .row("Product per plant", onPlant, onPlant)
            .table();
    var working = perPlantSteps(onPlant, style);
    if (solution.isPresent()) {
      working =
          working.step(
              "solution per plant",
              "solution per area / plants per area",
              style.print(water.get().perArea()) + " / (" + plantsText(style) + ")",
              style.print(solution.get()));
    }
    if (treated.isPresent()) {
      working =
          working.step(
              "product per wetted ground, beside the field",
              "product per plant / wetted ground of a plant",
              onPlant + " / " + style.print(wetted.get()),
              treated.get().print(style) + "; per area of field " + perField.print(style));
    }
    return new PlantDrenchResult(
        plants, perPlant, solution, perField, treated, table, working.withCautions(Caution.all()));
  }

  private Working perPlantSteps(String onPlant, QuantityStyle style) {
    var land = style.land().symbol();
    return Working.of("Drench per plant")
        .step(
            "plants per " + land,
            "area / (row spacing × plant spacing)",
            "1 "
                + land
                + " / ("
                + style.print(spacing.rows())
                + " × "
                + style.print(spacing.plants())
                + ")",
            plantsText(style),
            ScalingSources.UNITS_ALONE)
        .step(
            "product per plant",
            "dose per area / plants per area",
            perField.print(style) + " / (" + plantsText(style) + ")",
            onPlant);
  }

  private String plantsText(QuantityStyle style) {
    double plants = spacing.plantsOn(Area.of(1, style.land()));
    return Numbers.significant(plants, 7) + " plants/" + style.land().symbol();
  }
}
