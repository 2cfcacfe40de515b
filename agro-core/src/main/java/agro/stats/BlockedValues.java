package agro.stats;

import agro.report.InputProblem;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/**
 * One value for each treatment in each block, with cells that may be missing. Blocks and treatments
 * keep the order of their first row.
 */
public final class BlockedValues {

  private final List<String> blocks;
  private final List<String> treatments;
  private final double[][] cells;

  private BlockedValues(List<String> blocks, List<String> treatments, double[][] cells) {
    this.blocks = blocks;
    this.treatments = treatments;
    this.cells = cells;
  }

  /**
   * Rows that name their block and their treatment. A missing plot is a row that is not there.
   *
   * @param blocks block of each row
   * @param treatments treatment of each row
   * @param values value of each row, finite
   * @return the table
   * @throws InputProblem if there are fewer than two blocks or treatments, numbers of rows differ,
   *     a value is not finite, or a treatment stands twice in a block
   */
  public static BlockedValues of(List<String> blocks, List<String> treatments, double[] values) {
    if (blocks.size() != values.length || treatments.size() != values.length) {
      throw InputProblem.of(
              blocks.size()
                  + " block names, "
                  + treatments.size()
                  + " treatment names and "
                  + values.length
                  + " values")
          .expected("one block and one treatment for each value")
          .because("a value belongs to one plot")
          .mend("give the three columns of the same rows");
    }
    var blockNames = List.copyOf(new LinkedHashSet<>(blocks));
    var treatmentNames = List.copyOf(new LinkedHashSet<>(treatments));
    require("block", blockNames);
    require("treatment", treatmentNames);
    double[][] cells = new double[blockNames.size()][treatmentNames.size()];
    for (double[] each : cells) {
      Arrays.fill(each, Double.NaN);
    }
    var blockAt = places(blockNames);
    var treatmentAt = places(treatmentNames);
    for (int i = 0; i < values.length; i++) {
      enter(
          cells,
          blockAt.get(blocks.get(i)),
          treatmentAt.get(treatments.get(i)),
          values[i],
          "Treatment " + treatments.get(i) + " in block " + blocks.get(i));
    }
    return new BlockedValues(blockNames, treatmentNames, cells);
  }

  private static Map<String, Integer> places(List<String> names) {
    var places = new HashMap<String, Integer>();
    names.forEach(name -> places.put(name, places.size()));
    return places;
  }

  private static void require(String kind, List<String> names) {
    if (names.size() < 2) {
      throw InputProblem.of("There is " + (names.isEmpty() ? "no " : "one ") + kind)
          .expected("at least two " + kind + "s")
          .because("treatments are compared within blocks, and blocks are the replicates")
          .mend("check the column that names the " + kind + "s");
    }
  }

  private static void enter(double[][] cells, int block, int treatment, double value, String plot) {
    if (!Double.isFinite(value)) {
      throw InputProblem.of(plot + " has the value " + value)
          .expected("a finite number")
          .because("a missing plot must be seen as missing")
          .mend("leave out the row of a plot without a value");
    }
    if (!Double.isNaN(cells[block][treatment])) {
      throw InputProblem.of(plot + " stands in two rows")
          .expected("one value for each treatment in a block")
          .because("two samples from one plot, or two plots, are not two blocks")
          .mend("take the mean of the rows of each treatment in a block first");
    }
    cells[block][treatment] = value;
  }

  /**
   * Names of the blocks.
   *
   * @return in the order of their first rows
   */
  public List<String> blocks() {
    return blocks;
  }

  /**
   * Names of the treatments.
   *
   * @return in the order of their first rows
   */
  public List<String> treatments() {
    return treatments;
  }

  /**
   * Whether a treatment has a value in a block.
   *
   * @param block place of the block, from 0
   * @param treatment place of the treatment, from 0
   * @return false for a missing plot
   */
  public boolean has(int block, int treatment) {
    return !Double.isNaN(cells[block][treatment]);
  }

  /**
   * The value of a treatment in a block.
   *
   * @param block place of the block, from 0
   * @param treatment place of the treatment, from 0
   * @return the value
   * @throws IllegalArgumentException if the plot is missing
   */
  public double value(int block, int treatment) {
    if (!has(block, treatment)) {
      throw new IllegalArgumentException(
          "treatment " + treatments.get(treatment) + " is missing in block " + blocks.get(block));
    }
    return cells[block][treatment];
  }

  /**
   * The values of one block.
   *
   * @param block place of the block, from 0
   * @return a copy, NaN where a plot is missing
   */
  public double[] block(int block) {
    return cells[block].clone();
  }

  /**
   * Number of plots that have a value.
   *
   * @return at least two
   */
  public int present() {
    return (int)
        Arrays.stream(cells).flatMapToDouble(Arrays::stream).filter(x -> !Double.isNaN(x)).count();
  }

  /**
   * Whether every treatment has a value in every block.
   *
   * @return true without missing plots
   */
  public boolean isComplete() {
    return present() == blocks.size() * treatments.size();
  }

  /**
   * Refuses a table with missing plots.
   *
   * @param cure what to do instead, without a full stop
   * @throws InputProblem naming the first missing plot
   */
  public void requireComplete(String cure) {
    for (int block = 0; block < blocks.size(); block++) {
      for (int treatment = 0; treatment < treatments.size(); treatment++) {
        if (!has(block, treatment)) {
          throw InputProblem.of(
                  "Treatment "
                      + treatments.get(treatment)
                      + " has no value in block "
                      + blocks.get(block))
              .expected("every treatment in every block")
              .because("treatments are ranked against each other within each block")
              .mend(cure);
        }
      }
    }
  }
}
