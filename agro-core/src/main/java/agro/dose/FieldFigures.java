package agro.dose;

import agro.report.InputProblem;
import agro.units.Length;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.Numbers;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What is stated of a field. A rate is turned into another kind through these figures and through
 * nothing else; a figure that is missing is named.
 *
 * @param stated the figures with how they were found
 */
public record FieldFigures(Map<StatedFigure, Figure> stated) {

  private static final double SQUARE_METRES_PER_HECTARE = 10_000;

  /**
   * One figure.
   *
   * @param number number in the unit of the figure, above zero
   * @param formula how it was computed, or empty if it was stated as it is
   * @param substitution the formula with its numbers, or empty
   */
  public record Figure(double number, String formula, String substitution) {}

  /** Copies the map. */
  public FieldFigures {
    stated =
        stated.isEmpty()
            ? Map.of()
            : Collections.unmodifiableMap(new EnumMap<StatedFigure, Figure>(stated));
  }

  /**
   * Nothing stated yet.
   *
   * @return a record without figures
   */
  public static FieldFigures none() {
    return new FieldFigures(Map.of());
  }

  /**
   * States the volume that the sprayer puts out.
   *
   * @param spray spray volume per area of the field
   * @return the figures with this one
   */
  public FieldFigures spray(SprayVolume spray) {
    return with(StatedFigure.SPRAY_VOLUME, spray.perArea().litresPerHectare());
  }

  /**
   * States the distance from row to row.
   *
   * @param spacing distance, above zero
   * @return the figures with this one
   */
  public FieldFigures rows(Length spacing) {
    return with(StatedFigure.ROW_SPACING, spacing.metres());
  }

  /**
   * States rows and plants in the row, and with them the plants on a hectare: 10 000 m² ÷ (row
   * distance × plant distance).
   *
   * @param rowSpacing distance from row to row, above zero
   * @param plantSpacing distance from plant to plant in the row, above zero
   * @return the figures with both
   */
  public FieldFigures plants(Length rowSpacing, Length plantSpacing) {
    double row = requireAboveZero(StatedFigure.ROW_SPACING, rowSpacing.metres());
    double plant = requireAboveZero(StatedFigure.PLANTS, plantSpacing.metres());
    return rows(rowSpacing)
        .with(
            StatedFigure.PLANTS,
            new Figure(
                SQUARE_METRES_PER_HECTARE / (row * plant),
                "plants per ha = 10 000 m² ÷ (row distance × plant distance)",
                "10 000 m² ÷ (" + Numbers.plain(row) + " m × " + Numbers.plain(plant) + " m)"));
  }

  /**
   * States the plants on a hectare as they were counted.
   *
   * @param perHectare plants per hectare, above zero
   * @return the figures with this one
   */
  public FieldFigures plants(double perHectare) {
    return with(StatedFigure.PLANTS, perHectare);
  }

  /**
   * States the cells of a tray, one plant each.
   *
   * @param cells one or more
   * @return the figures with this one
   */
  public FieldFigures cellsPerTray(int cells) {
    return with(StatedFigure.CELLS_PER_TRAY, cells);
  }

  /**
   * States the seed rate.
   *
   * @param rate seed per area
   * @return the figures with this one
   */
  public FieldFigures seedRate(MassPerArea rate) {
    return with(StatedFigure.SEED_RATE, rate.kilogramsPerHectare());
  }

  /**
   * States the mass of a thousand seeds.
   *
   * @param mass the mass
   * @return the figures with this one
   */
  public FieldFigures thousandSeedMass(Mass mass) {
    return with(StatedFigure.THOUSAND_SEED_MASS, mass.kilograms() * 1000);
  }

  /**
   * States the manure, compost or soil for an area, weighed with its water.
   *
   * @param rate wet mass per area
   * @return the figures with this one
   */
  public FieldFigures wetSubstrate(MassPerArea rate) {
    return with(StatedFigure.WET_SUBSTRATE, rate.kilogramsPerHectare() / 1000);
  }

  /**
   * States the dry matter of manure, compost or soil for an area.
   *
   * @param rate dry mass per area
   * @return the figures with this one
   */
  public FieldFigures drySubstrate(MassPerArea rate) {
    return with(StatedFigure.DRY_SUBSTRATE, rate.kilogramsPerHectare() / 1000);
  }

  /**
   * States the bands that are treated on the rows.
   *
   * @param width width of a band, above zero and not wider than the rows are apart
   * @param rowSpacing distance from row to row
   * @return the figures with both
   * @throws InputProblem if the bands overlap
   */
  public FieldFigures bands(Length width, Length rowSpacing) {
    if (width.compareTo(rowSpacing) > 0) {
      throw InputProblem.of("bands " + width + " wide on rows " + rowSpacing + " apart")
          .expected("bands that are not wider than the rows are apart")
          .because("bands that overlap treat the ground between them twice")
          .mend("look whether width and distance were swapped, or treat the whole field");
    }
    return rows(rowSpacing).with(StatedFigure.BAND_WIDTH, width.metres());
  }

  /**
   * States the rows of the orchard as they stand.
   *
   * @param canopy height, width and distance of the rows
   * @return the figures with tree-row volume and leaf-wall area
   */
  public FieldFigures canopy(Canopy canopy) {
    return canopy(canopy, StatedFigure.TREE_ROW_VOLUME, StatedFigure.LEAF_WALL_AREA);
  }

  /**
   * States the canopy that the label itself names as the one its rate per ground area is meant for.
   * The orchard as it stands is not this canopy.
   *
   * @param canopy reference canopy of the label
   * @return the figures with tree-row volume and leaf-wall area of the reference
   */
  public FieldFigures labelCanopy(Canopy canopy) {
    return canopy(canopy, StatedFigure.LABEL_TREE_ROW_VOLUME, StatedFigure.LABEL_LEAF_WALL_AREA);
  }

  private FieldFigures canopy(Canopy canopy, StatedFigure volume, StatedFigure walls) {
    var height = Numbers.plain(canopy.treatedHeight().metres()) + " m";
    var width = Numbers.plain(canopy.width().metres()) + " m";
    var distance = Numbers.plain(canopy.rowDistance().metres()) + " m";
    return with(
            volume,
            new Figure(
                canopy.treeRowVolume().cubicMetresPerHectare(),
                "TRV = height × width × 10 000 m² ÷ row distance",
                height + " × " + width + " × 10 000 m² ÷ " + distance))
        .with(
            walls,
            new Figure(
                canopy.leafWallArea().squareMetresPerHectare(),
                "LWA = 2 × treated height × 10 000 m² ÷ row distance",
                "2 × " + height + " × 10 000 m² ÷ " + distance));
  }

  /**
   * States the spots on a hectare.
   *
   * @param perHectare spots per hectare, above zero
   * @return the figures with this one
   */
  public FieldFigures spots(double perHectare) {
    return with(StatedFigure.SPOTS, perHectare);
  }

  private FieldFigures with(StatedFigure figure, double number) {
    return with(figure, new Figure(number, "", ""));
  }

  private FieldFigures with(StatedFigure figure, Figure value) {
    requireAboveZero(figure, value.number());
    var more = new EnumMap<StatedFigure, Figure>(StatedFigure.class);
    more.putAll(stated);
    more.put(figure, value);
    return new FieldFigures(more);
  }

  private static double requireAboveZero(StatedFigure figure, double number) {
    if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of("a " + figure.words() + " of " + Numbers.plain(number))
          .expected("a finite number above zero")
          .because("rates are multiplied and divided by it")
          .mend("measure it in the field, or leave it out if it is not known");
    }
    return number;
  }

  /** The figure, or a refusal that says which one is missing and what for. */
  Figure need(StatedFigure figure, ProductRate rate, RateKind target) {
    var value = stated.get(figure);
    if (value == null) {
      throw InputProblem.of(
              rate
                  + ", "
                  + rate.kind().words()
                  + ", was to become "
                  + target.words()
                  + ", and the "
                  + figure.words()
                  + " is not stated")
          .expected("the " + figure.words() + " in " + figure.unit())
          .because(FieldRefusals.why(figure))
          .mend("state it with FieldFigures." + figure.method());
    }
    return value;
  }
}
