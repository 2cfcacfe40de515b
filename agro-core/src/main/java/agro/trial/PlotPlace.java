package agro.trial;

/**
 * Where a plot lies in the grid of a trial.
 *
 * @param row row, counted from 1
 * @param column column, counted from 1
 */
public record PlotPlace(int row, int column) {

  /** Refuses places outside the grid. */
  public PlotPlace {
    if (row < 1 || column < 1) {
      throw new IllegalArgumentException(
          "rows and columns of plots are counted from 1, but got row "
              + row
              + ", column "
              + column);
    }
  }

  @Override
  public String toString() {
    return "row " + row + ", column " + column;
  }
}
