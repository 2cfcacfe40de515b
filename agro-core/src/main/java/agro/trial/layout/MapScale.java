package agro.trial.layout;

import agro.trial.PlotPlace;

/**
 * From metres in the field to millimetres on paper.
 *
 * @param ground sizes
 * @param rows rows of plots
 * @param columns columns of plots
 * @param left left edge of the field on paper
 * @param top upper edge of the field on paper
 * @param scale millimetres on paper for a metre
 */
record MapScale(TrialGround ground, int rows, int columns, double left, double top, double scale) {

  static MapScale fitting(TrialGround ground, int rows, int columns, double[] box) {
    double scale = Math.min(box[2] / width(ground, columns), box[3] / length(ground, rows));
    double free = box[2] - scale * width(ground, columns);
    return new MapScale(ground, rows, columns, box[0] + free / 2, box[1], scale);
  }

  static double width(TrialGround ground, int columns) {
    return columns * ground.plotWidth().inBaseUnit()
        + (columns - 1) * ground.pathInRow().inBaseUnit();
  }

  static double length(TrialGround ground, int rows) {
    return rows * ground.plotLength().inBaseUnit()
        + (rows - 1) * ground.pathBetweenRows().inBaseUnit();
  }

  double x(PlotPlace place) {
    return left
        + scale
            * (place.column() - 1)
            * (ground.plotWidth().inBaseUnit() + ground.pathInRow().inBaseUnit());
  }

  double y(PlotPlace place) {
    return top
        + scale
            * (place.row() - 1)
            * (ground.plotLength().inBaseUnit() + ground.pathBetweenRows().inBaseUnit());
  }

  double plotWidth() {
    return scale * ground.plotWidth().inBaseUnit();
  }

  double plotLength() {
    return scale * ground.plotLength().inBaseUnit();
  }

  double width() {
    return scale * width(ground, columns);
  }

  double length() {
    return scale * length(ground, rows);
  }
}
