package agro.trial.layout;

import java.util.Comparator;
import java.util.List;

/** The order in which one walks through a trial: along a row and back along the next one. */
final class WalkingOrder {

  private WalkingOrder() {}

  static List<PlotGrid.Cell> of(List<PlotGrid.Cell> cells) {
    return cells.stream()
        .sorted(
            Comparator.comparingInt((PlotGrid.Cell cell) -> cell.place().row())
                .thenComparingInt(WalkingOrder::columnAsWalked))
        .toList();
  }

  static boolean fromTheLeft(int row) {
    return row % 2 == 1;
  }

  private static int columnAsWalked(PlotGrid.Cell cell) {
    int column = cell.place().column();
    return fromTheLeft(cell.place().row()) ? column : -column;
  }
}
