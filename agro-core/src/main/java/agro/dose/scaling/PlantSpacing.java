package agro.dose.scaling;

import agro.units.Area;
import agro.units.Length;

/**
 * How plants stand in a field: plants per hectare = 10 000 m² / (row spacing × plant spacing).
 *
 * @param rows distance from row to row, above zero
 * @param plants distance from plant to plant in the row, above zero
 */
public record PlantSpacing(Length rows, Length plants) {

  /** Refuses plants without a distance. */
  public PlantSpacing {
    ScalingChecks.aboveZero(
        rows,
        "row spacing",
        "the ground of a plant is row spacing times plant spacing",
        "measure over ten rows and divide by ten");
    ScalingChecks.aboveZero(
        plants,
        "plant spacing",
        "the ground of a plant is row spacing times plant spacing",
        "measure over ten plants and divide by ten");
  }

  /**
   * The ground of one plant.
   *
   * @return row spacing times plant spacing
   */
  public Area groundOfPlant() {
    return rows.times(plants);
  }

  /**
   * The number of plants on an area.
   *
   * @param area the area
   * @return plants, not rounded
   */
  public double plantsOn(Area area) {
    return area.ratioTo(groundOfPlant());
  }

  @Override
  public String toString() {
    return rows + " × " + plants;
  }
}
