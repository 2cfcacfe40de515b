package agro.course.practical;

import agro.dose.SprayVolume;
import agro.dose.sprayer.CalibratedVolume;
import agro.report.InputProblem;
import agro.units.VolumePerArea;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.TextLanguage;
import agro.working.Wording;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The calibrations of a class, pooled: mean and spread, who is off, whose arithmetic slipped, and
 * the dose that each plot would get.
 *
 * @param rules how they were judged and how they are printed
 * @param benchmark what each group is compared with
 * @param all statistics over all groups
 * @param withoutOutliers the same without the outliers; equal to {@code all} where there are none
 * @param findings one for each group, in the order of the file
 * @param emptyGroups groups that have measured nothing yet and count nowhere
 */
public record ClassCalibration(
    PoolingRules rules,
    CalibrationBenchmark benchmark,
    ClassStatistics all,
    ClassStatistics withoutOutliers,
    List<GroupFinding> findings,
    List<String> emptyGroups)
    implements Presentable {

  /** Differences below this share of the volume are rounding. */
  private static final double ROUNDING = 1e-9;

  /** Copies the lists. */
  public ClassCalibration {
    Objects.requireNonNull(rules, "rules");
    Objects.requireNonNull(benchmark, "benchmark");
    Objects.requireNonNull(all, "all");
    Objects.requireNonNull(withoutOutliers, "withoutOutliers");
    findings = List.copyOf(findings);
    emptyGroups = List.copyOf(emptyGroups);
  }

  /**
   * Pools calibrations.
   *
   * @param readings what the groups measured
   * @param rules how they are judged and printed
   * @return the result
   * @throws InputProblem when they are to be compared with targets and a group has none
   */
  public static ClassCalibration of(ClassReadings readings, PoolingRules rules) {
    var units = PrintedUnits.of(rules.style());
    var groups = readings.groups();
    var volumes = groups.stream().map(group -> group.calibrate(units)).toList();
    var perArea = volumes.stream().map(one -> one.perFieldArea().perArea()).toList();
    var all = ClassStatistics.of(perArea, rules.confidence());
    var benchmark = rules.benchmark().orElseGet(() -> usual(groups, rules));
    var findings = new ArrayList<GroupFinding>();
    for (int i = 0; i < groups.size(); i++) {
      var compared = compared(groups.get(i), benchmark, all, rules);
      findings.add(finding(groups.get(i), volumes.get(i), compared, all, rules));
    }
    var kept = findings.stream().filter(one -> !one.outlier()).map(GroupFinding::volume).toList();
    return new ClassCalibration(
        rules,
        benchmark,
        all,
        ClassStatistics.of(kept, rules.confidence()),
        findings,
        readings.emptyGroups());
  }

  private static CalibrationBenchmark usual(List<GroupReadings> groups, PoolingRules rules) {
    boolean aimed =
        rules.target().isPresent() || groups.stream().allMatch(group -> group.target().isPresent());
    return aimed ? CalibrationBenchmark.TARGET : CalibrationBenchmark.MEAN;
  }

  private static VolumePerArea compared(
      GroupReadings group,
      CalibrationBenchmark benchmark,
      ClassStatistics all,
      PoolingRules rules) {
    return switch (benchmark) {
      case MEAN -> all.mean();
      case MEDIAN -> all.median();
      case TARGET ->
          group
              .target()
              .or(rules::target)
              .orElseThrow(
                  () ->
                      InputProblem.of("group " + group.group() + " states no target")
                          .expected("a target in its line, or one for the class")
                          .because("the groups are to be compared with their targets")
                          .mend("write the target, or compare with the mean or median"));
    };
  }

  private static GroupFinding finding(
      GroupReadings group,
      CalibratedVolume calibrated,
      VolumePerArea compared,
      ClassStatistics all,
      PoolingRules rules) {
    var volume = calibrated.perFieldArea().perArea();
    double departure = volume.ratioTo(compared) - 1;
    var verdict = GroupVerdict.WITHIN;
    if (Math.abs(departure) > rules.tolerance().share() + ROUNDING) {
      verdict = departure < 0 ? GroupVerdict.LOW : GroupVerdict.HIGH;
    }
    var score = all.modifiedScore(volume);
    return new GroupFinding(
        group,
        calibrated,
        compared,
        departure,
        verdict,
        score,
        score.isPresent() && Math.abs(score.getAsDouble()) > rules.outlierLimit(),
        group
            .ownResult()
            .map(own -> OwnArithmetic.of(group, own, volume, rules.arithmeticTolerance())),
        rules
            .dose()
            .map(dose -> calibrated.doseWhenMixedFor(dose, new SprayVolume(compared)).dose()));
  }

  /**
   * The groups that are off the tolerance.
   *
   * @return the findings, possibly none
   */
  public List<GroupFinding> offTolerance() {
    return findings.stream().filter(one -> one.verdict() != GroupVerdict.WITHIN).toList();
  }

  /**
   * The outliers of the class by median and median absolute deviation.
   *
   * @return the findings, possibly none
   */
  public List<GroupFinding> outliers() {
    return findings.stream().filter(GroupFinding::outlier).toList();
  }

  /**
   * The groups whose own figure differs from the one that follows from their readings.
   *
   * @return the findings, possibly none
   */
  public List<GroupFinding> arithmeticDiffers() {
    return findings.stream()
        .filter(one -> one.ownArithmetic().map(own -> !own.agrees()).orElse(false))
        .toList();
  }

  /**
   * One group.
   *
   * @param group its name as it stands in the file
   * @return what its calibration came to
   * @throws InputProblem if there is no such group
   */
  public GroupFinding group(String group) {
    return findings.stream()
        .filter(one -> one.group().equals(group))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("no group \"" + group + "\"")
                    .expected("one of " + findings.stream().map(GroupFinding::group).toList())
                    .because("each line of the file is a group")
                    .mend("write the name as it stands in the file"));
  }

  /**
   * The target, where all groups that are compared with targets share one.
   *
   * @return the common target
   */
  public Optional<VolumePerArea> commonTarget() {
    var targets =
        findings.stream().map(one -> one.readings().target().or(rules::target)).distinct().toList();
    return targets.size() == 1 ? targets.get(0) : Optional.empty();
  }

  /**
   * The words of the page and the figure.
   *
   * @return the words in the language of print
   */
  public Wording wording() {
    return PracticalWords.wording(rules.language());
  }

  /**
   * The groups as a table.
   *
   * @return one row for each group
   */
  public ResultTable table() {
    return new ClassTables(this).groups();
  }

  /**
   * The groups whose own figure differs, with the likely slip and the dose that comes of it.
   *
   * @return one row for each of them, possibly none
   */
  public ResultTable slipTable() {
    return new ClassTables(this).slips();
  }

  /**
   * The steps of one group, from its readings to its volume and its dose.
   *
   * @param group name of the group
   * @return the steps
   * @throws InputProblem if there is no such group
   */
  public Working workingOf(String group) {
    return new ClassWorking(this).group(group(group));
  }

  /**
   * The steps of the pooling.
   *
   * @return the steps
   */
  public Working pooling() {
    return new ClassWorking(this).pooling();
  }

  /**
   * The same result in another language.
   *
   * @param language language of print
   * @return a new result
   */
  public ClassCalibration in(TextLanguage language) {
    return new ClassCalibration(
        rules.in(language), benchmark, all, withoutOutliers, findings, emptyGroups);
  }

  @Override
  public Presentation presentation() {
    return new ClassPage(this).presentation();
  }

  @Override
  public String toString() {
    return new ClassPage(this).summary();
  }
}
