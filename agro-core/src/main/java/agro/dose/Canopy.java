package agro.dose;

import agro.report.InputProblem;
import agro.units.Length;

/**
 * The rows of an orchard or vineyard as they stand.
 *
 * @param treatedHeight height of the canopy that is treated, above zero
 * @param width width of the canopy across the row, above zero
 * @param rowDistance distance from row to row, above zero
 */
public record Canopy(Length treatedHeight, Length width, Length rowDistance) {

  private static final double SQUARE_METRES_PER_HECTARE = 10_000;

  /** Refuses rows without height, width or distance. */
  public Canopy {
    requireAboveZero("treated height", treatedHeight);
    requireAboveZero("canopy width", width);
    requireAboveZero("row distance", rowDistance);
  }

  private static void requireAboveZero(String name, Length length) {
    if (!(length.metres() > 0)) {
      throw InputProblem.of("a " + name + " of " + length)
          .expected("a length above zero")
          .because("area and volume of the rows are computed from height, width and distance")
          .mend("measure the " + name + " in the orchard");
    }
  }

  /**
   * Both sides of all rows on a hectare: 2 × treated height × 10 000 ÷ row distance.
   *
   * @return leaf-wall area per hectare of ground
   * @see DoseSources#EPPO_2021
   */
  public LeafWallArea leafWallArea() {
    return new LeafWallArea(
        2 * treatedHeight.metres() * SQUARE_METRES_PER_HECTARE / rowDistance.metres());
  }

  /**
   * The volume of all rows on a hectare: height × width × 10 000 ÷ row distance. The distance
   * divides: wider rows mean fewer of them.
   *
   * @return tree-row volume per hectare of ground
   * @see DoseSources#LANDERS_TREE_ROWS
   */
  public TreeRowVolume treeRowVolume() {
    return new TreeRowVolume(
        treatedHeight.metres() * width.metres() * SQUARE_METRES_PER_HECTARE / rowDistance.metres());
  }

  @Override
  public String toString() {
    return treatedHeight + " high, " + width + " wide, rows " + rowDistance + " apart";
  }
}
