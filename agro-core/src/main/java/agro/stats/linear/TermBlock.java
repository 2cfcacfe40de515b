package agro.stats.linear;

import java.util.List;
import java.util.Map;

/** The columns of one term in a design. */
sealed interface TermBlock permits CrossedBlock, CellBlock {

  /** Name of each column. */
  List<String> names();

  /** Numbers of an observation. */
  double[] row(int observation);

  /**
   * Levels that the term has in the data: the number of its degrees of freedom if nothing lacks.
   */
  int cells();

  /**
   * Mean of the rows when some factors are held at a level.
   *
   * @param held place of the level by factor
   * @return NaN where there is no such cell
   */
  double[] meanRow(Map<Factor, Integer> held, MeanWeights weights);
}
