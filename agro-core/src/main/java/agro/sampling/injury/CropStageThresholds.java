package agro.sampling.injury;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Thresholds that change with the stage of the crop. Stages are numbers of the BBCH scale, 0 to 99.
 *
 * @param measure what the thresholds are stated in
 * @param ranges ranges of stages with a threshold each, in order and without overlap
 */
public record CropStageThresholds(PestMeasure measure, List<StageRange> ranges)
    implements Presentable {

  /**
   * A threshold for some stages of the crop.
   *
   * @param fromStage first stage, 0 to 99
   * @param toStage last stage, not before the first
   * @param threshold the threshold, above 0
   * @param source who states it
   */
  public record StageRange(int fromStage, int toStage, double threshold, Reference source) {
    /** Checks stages and threshold. */
    public StageRange {
      Objects.requireNonNull(source, "source");
      if (fromStage < 0
          || toStage > 99
          || fromStage > toStage
          || !(threshold > 0 && Double.isFinite(threshold))) {
        throw InputProblem.of(
                "a threshold of " + threshold + " for stages " + fromStage + " to " + toStage)
            .expected("stages 0 to 99 in order, and a threshold above 0")
            .because("a count is held against the threshold of its stage")
            .mend("correct the range or the threshold");
      }
    }

    private String words() {
      return fromStage == toStage ? "" + fromStage : fromStage + " to " + toStage;
    }
  }

  /**
   * Checks the order.
   *
   * @throws InputProblem when there is no range, or ranges overlap or stand out of order
   */
  public CropStageThresholds {
    Objects.requireNonNull(measure, "measure");
    ranges = List.copyOf(ranges);
    for (int i = 0; i < ranges.size(); i++) {
      if (i > 0 && ranges.get(i).fromStage() <= ranges.get(i - 1).toStage()) {
        throw InputProblem.of(
                "stages " + ranges.get(i - 1).words() + " and then " + ranges.get(i).words())
            .expected("ranges in order that do not overlap")
            .because("a stage would have two thresholds")
            .mend("let each range begin behind the end of the one before");
      }
    }
    if (ranges.isEmpty()) {
      throw InputProblem.of("no threshold for any stage")
          .expected("at least one range of stages")
          .because("there is nothing to hold a count against")
          .mend("state the threshold and the stages for which it holds");
    }
  }

  /**
   * The threshold at a stage.
   *
   * @param stage stage of the crop, 0 to 99
   * @return the range with its threshold
   * @throws InputProblem when no threshold is stated for the stage
   */
  public StageRange at(int stage) {
    return ranges.stream()
        .filter(range -> range.fromStage() <= stage && stage <= range.toStage())
        .findFirst()
        .orElseThrow(() -> unknown(stage));
  }

  private InputProblem unknown(int stage) {
    return InputProblem.of("crop stage " + stage)
        .expected(
            "one of the stages "
                + ranges.stream().map(StageRange::words).collect(Collectors.joining(", ")))
        .because("no threshold is stated for it, and one of another stage may be far off")
        .mend("state a threshold with its source, or do not decide by a threshold at this stage");
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var range : ranges) {
      rows.add(
          List.of(
              Cell.text(range.words()),
              Cell.text(Numbers.plain(range.threshold())),
              Cell.text(range.source().citation())));
    }
    return Presentation.titled("Thresholds by crop stage")
        .table(
            ResultTable.of(
                "Thresholds",
                List.of(
                    Column.of("Stage", "BBCH"),
                    Column.of("Threshold", measure.words()),
                    Column.of("Source")),
                rows))
        .build();
  }
}
