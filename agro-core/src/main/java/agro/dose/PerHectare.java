package agro.dose;

import agro.units.Numbers;
import agro.working.Working;

/**
 * How much of what stands below the line of a kind of rate a hectare of ground holds.
 *
 * @param conversion the conversion that asks
 * @param kind kind of rate
 * @param reference whether the canopy is the one that the label states
 */
record PerHectare(RateConversion conversion, RateKind kind, boolean reference) {

  private static final double SQUARE_METRES_PER_HECTARE = 10_000;

  /** The number on a hectare, in the unit of {@link RateBelow#unit}. */
  double number() {
    return switch (kind) {
      case PRODUCT_PER_TREATED_AREA ->
          need(StatedFigure.BAND_WIDTH) / need(StatedFigure.ROW_SPACING);
      case PRODUCT_PER_SPRAY_VOLUME -> need(StatedFigure.SPRAY_VOLUME);
      case PRODUCT_PER_PLANT -> need(StatedFigure.PLANTS);
      case PRODUCT_PER_TRAY -> need(StatedFigure.PLANTS) / need(StatedFigure.CELLS_PER_TRAY);
      case PRODUCT_PER_ROW_LENGTH -> SQUARE_METRES_PER_HECTARE / need(StatedFigure.ROW_SPACING);
      case PRODUCT_PER_SEED_MASS -> need(StatedFigure.SEED_RATE);
      case PRODUCT_PER_SEED_COUNT ->
          need(StatedFigure.SEED_RATE) * 1_000_000 / need(StatedFigure.THOUSAND_SEED_MASS);
      case PRODUCT_PER_WET_SUBSTRATE -> need(StatedFigure.WET_SUBSTRATE);
      case PRODUCT_PER_DRY_SUBSTRATE -> need(StatedFigure.DRY_SUBSTRATE);
      case PRODUCT_PER_TREE_ROW_VOLUME, PRODUCT_PER_LEAF_WALL_AREA -> need(canopyFigure());
      case PRODUCT_PER_SPOT -> need(StatedFigure.SPOTS);
      default -> 1;
    };
  }

  private StatedFigure canopyFigure() {
    if (kind == RateKind.PRODUCT_PER_TREE_ROW_VOLUME) {
      return reference ? StatedFigure.LABEL_TREE_ROW_VOLUME : StatedFigure.TREE_ROW_VOLUME;
    }
    return reference ? StatedFigure.LABEL_LEAF_WALL_AREA : StatedFigure.LEAF_WALL_AREA;
  }

  private double need(StatedFigure figure) {
    return figure(figure).number();
  }

  private FieldFigures.Figure figure(StatedFigure figure) {
    return conversion.figures().need(figure, conversion.rate(), conversion.target());
  }

  /** The working with the step that finds the number. */
  Working steps(Working working) {
    if (kind == RateKind.PRODUCT_PER_AREA) {
      return working;
    }
    var name = "On a hectare of ground";
    var result = AmountPrint.shown(number()) + " " + RateBelow.unit(kind);
    return switch (kind) {
      case PRODUCT_PER_TREATED_AREA ->
          working.step(
              name,
              "treated share = band width ÷ row distance",
              two(StatedFigure.BAND_WIDTH, "÷", StatedFigure.ROW_SPACING),
              result);
      case PRODUCT_PER_TRAY ->
          working.step(
              name,
              "trays = plants ÷ cells per tray",
              two(StatedFigure.PLANTS, "÷", StatedFigure.CELLS_PER_TRAY),
              result);
      case PRODUCT_PER_ROW_LENGTH ->
          working.step(
              name,
              "length of row = 10 000 m² ÷ row distance",
              "10 000 m² ÷ " + one(StatedFigure.ROW_SPACING),
              result);
      case PRODUCT_PER_SEED_COUNT ->
          working.step(
              name,
              "seeds = seed rate ÷ mass of a thousand seeds × 1000",
              two(StatedFigure.SEED_RATE, "÷", StatedFigure.THOUSAND_SEED_MASS) + " × 1000",
              result);
      case PRODUCT_PER_PLANT -> stated(working, StatedFigure.PLANTS, result);
      case PRODUCT_PER_TREE_ROW_VOLUME, PRODUCT_PER_LEAF_WALL_AREA -> canopy(working, result);
      default -> working.step(name, "", "", result + ", as stated");
    };
  }

  private Working canopy(Working working, String result) {
    var figure = figure(canopyFigure());
    var source =
        kind == RateKind.PRODUCT_PER_TREE_ROW_VOLUME
            ? DoseSources.LANDERS_TREE_ROWS
            : DoseSources.EPPO_2021;
    return working.step(
        RateConversion.capital(canopyFigure().words()),
        figure.formula(),
        figure.substitution(),
        result + "/ha",
        source);
  }

  private Working stated(Working working, StatedFigure figure, String result) {
    var value = figure(figure);
    return working.step(
        RateConversion.capital(figure.words()), value.formula(), value.substitution(), result);
  }

  private String one(StatedFigure figure) {
    return Numbers.plain(need(figure)) + " " + figure.unit();
  }

  private String two(StatedFigure first, String sign, StatedFigure second) {
    return one(first) + " " + sign + " " + one(second);
  }
}
