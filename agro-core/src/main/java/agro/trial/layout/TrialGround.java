package agro.trial.layout;

import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Length;
import agro.units.LengthUnit;
import java.util.Objects;
import java.util.Optional;

/**
 * The ground of a trial: sizes of plots and paths, and where the map's upper edge points. Blocks
 * are stacked down the map, so on a slope the upper edge is uphill and each block lies across the
 * slope.
 *
 * @param plotWidth size of a plot along a row
 * @param plotLength size of a plot across the rows
 * @param pathInRow path between neighbours in a row, possibly 0
 * @param pathBetweenRows path between rows, possibly 0
 * @param top where the upper edge of the map points
 * @param fallsTo where the slope falls, if there is one
 * @param note what else varies over the field, empty when nothing is known
 */
public record TrialGround(
    Length plotWidth,
    Length plotLength,
    Length pathInRow,
    Length pathBetweenRows,
    CompassPoint top,
    Optional<CompassPoint> fallsTo,
    String note) {

  /** Refuses plots without a size and negative paths. */
  public TrialGround {
    Objects.requireNonNull(top, "top");
    Objects.requireNonNull(fallsTo, "fallsTo");
    Objects.requireNonNull(note, "note");
    if (!(plotWidth.inBaseUnit() > 0 && plotLength.inBaseUnit() > 0)) {
      throw new IllegalArgumentException(
          "plots have a size, but got " + plotWidth + " by " + plotLength);
    }
    if (!(pathInRow.inBaseUnit() >= 0 && pathBetweenRows.inBaseUnit() >= 0)) {
      throw new IllegalArgumentException(
          "paths have a width of 0 or more, but got " + pathInRow + " and " + pathBetweenRows);
    }
  }

  /**
   * Ground with plots of a size, paths of 1 m between rows and none within them, north up.
   *
   * @param plotWidth size of a plot along a row
   * @param plotLength size of a plot across the rows
   * @return the ground
   */
  public static TrialGround of(Length plotWidth, Length plotLength) {
    return new TrialGround(
        plotWidth,
        plotLength,
        Length.of(0, LengthUnit.METRE),
        Length.of(1, LengthUnit.METRE),
        CompassPoint.NORTH,
        Optional.empty(),
        "");
  }

  /**
   * This ground with other paths.
   *
   * @param inRow path between neighbours in a row
   * @param betweenRows path between rows
   * @return new ground
   */
  public TrialGround withPaths(Length inRow, Length betweenRows) {
    return new TrialGround(plotWidth, plotLength, inRow, betweenRows, top, fallsTo, note);
  }

  /**
   * This ground with another direction of the map's upper edge.
   *
   * @param newTop where the upper edge points
   * @return new ground
   */
  public TrialGround withTop(CompassPoint newTop) {
    return new TrialGround(
        plotWidth, plotLength, pathInRow, pathBetweenRows, newTop, Optional.empty(), note);
  }

  /**
   * This ground on a slope: uphill is up on the map, and blocks lie across the slope.
   *
   * @param downhill where the slope falls
   * @return new ground
   */
  public TrialGround onSlope(CompassPoint downhill) {
    return new TrialGround(
        plotWidth,
        plotLength,
        pathInRow,
        pathBetweenRows,
        downhill.opposite(),
        Optional.of(downhill),
        note);
  }

  /**
   * This ground with a note on what else varies.
   *
   * @param newNote for example {@code "hedge along the west edge"}
   * @return new ground
   */
  public TrialGround withNote(String newNote) {
    return new TrialGround(
        plotWidth, plotLength, pathInRow, pathBetweenRows, top, fallsTo, newNote);
  }

  /**
   * Area of a plot.
   *
   * @return width times length
   */
  public Area plotArea() {
    return Area.of(plotWidth.inBaseUnit() * plotLength.inBaseUnit(), AreaUnit.SQUARE_METRE);
  }
}
