package agro.dose.sprayer;

import agro.units.FlowRate;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What a catch test found.
 *
 * @param meanFlow mean flow of the nozzles that are not blocked
 * @param standardDeviation spread between those nozzles; nothing for a single one
 * @param uncertainty relative standard error of the mean flow; nothing for a single catch
 * @param findings one for each nozzle, in the order of the test
 * @param tolerance how far a nozzle may be from the mean
 * @param units units of print
 * @param working the steps, with cautions
 */
public record CatchTestResult(
    NozzleFlow meanFlow,
    Optional<FlowRate> standardDeviation,
    Optional<RelativeUncertainty> uncertainty,
    List<NozzleFinding> findings,
    NozzleTolerance tolerance,
    SprayUnits units,
    Working working)
    implements Presentable {

  /** Copies the findings. */
  public CatchTestResult {
    findings = List.copyOf(findings);
  }

  /**
   * The nozzles that are blocked or outside the tolerance around the mean.
   *
   * @return the findings, possibly none
   */
  public List<NozzleFinding> outliers() {
    return findings.stream().filter(one -> one.verdict() != NozzleVerdict.WITHIN).toList();
  }

  /**
   * The nozzles that pass 10 % more than a new one, or more.
   *
   * @return the findings; none if the flow of a new nozzle was not given
   */
  public List<NozzleFinding> worn() {
    return findings.stream().filter(NozzleFinding::worn).toList();
  }

  /**
   * What the reader should know: whether the test is passed, and whether the mean itself was moved
   * by odd nozzles.
   *
   * @return one sentence each
   */
  public List<String> remarks() {
    var remarks = new ArrayList<String>();
    if (findings.stream().noneMatch(NozzleFinding::needsAttention)) {
      remarks.add("All nozzles are within " + tolerance + " of their mean.");
    } else {
      remarks.add(
          "Mend the nozzles named below, then catch again: this mean is not yet a setting.");
    }
    if (findings.stream().allMatch(one -> one.aboveNew().isEmpty())) {
      remarks.add(
          "Nozzles that are all worn alike pass this test; only the flow of a new nozzle shows it.");
    }
    if (!outsideMedian().equals(outliersThatFlow())) {
      remarks.add(
          "Compared with the median other nozzles stand out ("
              + (outsideMedian().isEmpty() ? "none" : String.join(", ", outsideMedian()))
              + "): a few odd nozzles have moved the mean.");
    }
    return remarks;
  }

  /** What a calibration from this test has to say of its nozzles. */
  List<String> forCalibration() {
    var remarks = new ArrayList<String>();
    var blocked = names(NozzleFinding::isBlocked);
    if (!blocked.isEmpty()) {
      remarks.add(
          "Blocked when caught: "
              + blocked
              + ". This volume counts them as mended, with the mean flow of the others; until then"
              + " the field gets less and has unsprayed strips.");
    }
    var odd = names(one -> one.needsAttention() && !one.isBlocked());
    if (!odd.isEmpty()) {
      remarks.add(
          "Out of tolerance or worn when caught: "
              + odd
              + ". This volume is that of the nozzles as they are; mend them and catch again.");
    }
    return remarks;
  }

  private String names(Predicate<NozzleFinding> which) {
    return findings.stream()
        .filter(which)
        .map(one -> "nozzle " + one.nozzle())
        .collect(Collectors.joining(", "));
  }

  private List<String> outsideMedian() {
    return findings.stream()
        .filter(one -> !one.isBlocked())
        .filter(one -> Math.abs(one.fromMedian()) > tolerance.share() + NozzleFinding.ROUNDING)
        .map(NozzleFinding::nozzle)
        .toList();
  }

  private List<String> outliersThatFlow() {
    return outliers().stream().filter(one -> !one.isBlocked()).map(NozzleFinding::nozzle).toList();
  }

  /**
   * The nozzles as a table.
   *
   * @return one row for each nozzle
   */
  public ResultTable table() {
    var columns =
        List.of(
            Column.of("nozzle"),
            Column.of("flow", units.flow().symbol()),
            Column.of("from the mean", "%"),
            Column.of("from the median", "%"),
            Column.of("above new", "%"),
            Column.of("verdict"));
    return ResultTable.of(
        "Nozzles of the catch test", columns, findings.stream().map(this::row).toList());
  }

  private List<Cell> row(NozzleFinding one) {
    return List.of(
        Cell.text(one.nozzle()),
        Cell.number(one.flow().in(units.flow()), 3),
        Cell.number(100 * one.fromMean(), 1),
        Cell.number(100 * one.fromMedian(), 1),
        one.aboveNew().isPresent()
            ? Cell.number(100 * one.aboveNew().getAsDouble(), 1)
            : Cell.notKnown(),
        Cell.text(words(one)));
  }

  private static String words(NozzleFinding one) {
    var worn = "worn, replace it";
    if (!one.worn()) {
      return one.verdict().words();
    }
    return one.verdict() == NozzleVerdict.WITHIN ? worn : worn + "; " + one.verdict().words();
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("Catch test")
            .fact("mean flow of one nozzle", units.stated(meanFlow.flow()))
            .fact(
                "spread between nozzles",
                standardDeviation.map(units::stated).orElse("not known from one nozzle"));
    remarks().forEach(page::paragraph);
    return page.table(table())
        .working(working.withCautions(List.of()))
        .cautions(Caution.all())
        .build();
  }
}
