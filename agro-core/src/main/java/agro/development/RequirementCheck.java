package agro.development;

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
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A threshold and a requirement held against durations from the same source: the pair predicts K /
 * (T − LT) days at the constant temperature T. A pair whose predictions are off by more than a
 * quarter on the geometric mean contradicts its own data and must not be used; a single temperature
 * that is off by as much is told, since the straight line fails near the threshold.
 *
 * @param requirement threshold and requirement
 * @param observed durations from the same source, at least one
 */
public record RequirementCheck(ThermalRequirement requirement, List<ObservedDuration> observed)
    implements Presentable {

  /** Largest factor between prediction and observation (common practice, no source). */
  public static final double LARGEST_FACTOR = 1.25;

  private static final Reference RULE =
      Reference.commonPractice(
          "A thermal requirement is used only when it predicts the durations it was made from to"
              + " within a quarter");

  /**
   * Refuses an empty list.
   *
   * @throws InputProblem when there is no duration to hold the pair against
   */
  public RequirementCheck {
    Objects.requireNonNull(requirement, "requirement");
    observed = List.copyOf(observed);
    if (observed.isEmpty()) {
      throw InputProblem.of("a check of " + requirement + " without any duration")
          .expected("at least one duration from the same source")
          .because("a pair cannot be held against nothing")
          .mend("give the durations that the source prints");
    }
  }

  /**
   * Holds a pair against durations.
   *
   * @param requirement threshold and requirement
   * @param observed durations from the same source
   * @return the check
   * @throws InputProblem when there is no duration
   */
  public static RequirementCheck of(
      ThermalRequirement requirement, List<ObservedDuration> observed) {
    return new RequirementCheck(requirement, observed);
  }

  /**
   * Predicted over observed duration.
   *
   * @param duration one of the durations
   * @return the ratio; infinite when the pair predicts no development at that temperature
   */
  public double ratio(ObservedDuration duration) {
    return requirement.daysAt(duration.celsius()) / duration.days();
  }

  /**
   * Geometric mean of predicted over observed durations.
   *
   * @return 1 for a pair that is right on the whole; infinite when it predicts no development at a
   *     temperature at which development was seen
   */
  public double meanRatio() {
    return Math.exp(
        observed.stream().mapToDouble(each -> Math.log(ratio(each))).average().orElseThrow());
  }

  /**
   * Whether the pair agrees with its durations on the whole.
   *
   * @return false for a pair that must not be used
   */
  public boolean agrees() {
    return within(meanRatio());
  }

  private static boolean within(double ratio) {
    return ratio <= LARGEST_FACTOR && ratio >= 1 / LARGEST_FACTOR;
  }

  /**
   * The requirement, when it agrees with its durations.
   *
   * @return the requirement as given
   * @throws InputProblem with the predictions when it contradicts them
   */
  public ThermalRequirement require() {
    if (!agrees()) {
      throw InputProblem.of(requirement + ", which predicts " + predictions())
          .expected("predictions within a factor of " + LARGEST_FACTOR + " on the mean")
          .because("the pair contradicts the durations that its own source prints")
          .mend("take another source, or fit threshold and requirement to the durations");
    }
    return requirement;
  }

  private String predictions() {
    return observed.stream()
        .map(
            each ->
                String.format(
                    Locale.ROOT,
                    "%.1f d at %s °C where %s d were observed",
                    requirement.daysAt(each.celsius()),
                    Numbers.plain(each.celsius()),
                    Numbers.plain(each.days())))
        .collect(Collectors.joining(" and "));
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var each : observed) {
      rows.add(
          List.of(
              Cell.number(each.celsius(), 1),
              Cell.number(each.days(), 2),
              Cell.number(requirement.daysAt(each.celsius()), 2),
              Cell.number(ratio(each), 2),
              Cell.text(within(ratio(each)) ? "" : "off by more than a quarter")));
    }
    return Presentation.titled("A requirement held against its own durations")
        .fact("Requirement", requirement.toString())
        .fact("Mean ratio", Numbers.fixed(meanRatio(), 2))
        .fact("Verdict", agrees() ? "agrees on the whole" : "contradicts its data: not to be used")
        .table(
            ResultTable.of(
                "Durations",
                List.of(
                    Column.of("Temperature", "°C"),
                    Column.of("Observed", "d"),
                    Column.of("Predicted, K / (T − LT)", "d"),
                    Column.of("Predicted / observed"),
                    Column.of("Remark")),
                rows))
        .sources(List.of(requirement.source(), RULE))
        .build();
  }
}
