package agro.programme.interval;

import agro.dose.LabelEntry;
import agro.dose.PreHarvest;
import agro.dose.PreHarvestLimit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/** Days from an application to each picking, or the last stage at which it may be made. */
final class HarvestRule {

  private static final Pattern STAGE_NUMBER = Pattern.compile("(?i)\\bBBCH\\s*([0-9]{1,2})\\b");

  private HarvestRule() {}

  static void check(PlannedProduct planned, List<RuleFinding> findings) {
    planned
        .applicable(PreHarvestLimit.class, limit -> true, LimitRule.PRE_HARVEST, findings)
        .forEach(limit -> findings.add(limit.judged(one(planned, limit))));
  }

  private static RuleFinding one(
      PlannedProduct planned, ApplicableLimit<PreHarvestLimit> applicable) {
    var value = ((LabelEntry.Stated<PreHarvest>) applicable.limit().entry()).value();
    return value instanceof PreHarvest.Days days
        ? days(planned, applicable, days)
        : stage(
            applicable, ((PreHarvest.UntilStage) value).stage(), planned.spraying().cropStage());
  }

  private static RuleFinding days(
      PlannedProduct planned, ApplicableLimit<PreHarvestLimit> applicable, PreHarvest.Days days) {
    var earliest = days.earliestHarvest(planned.use().day());
    var picking = planned.planting().picking();
    if (!picking.isStated()) {
      return finding(
          Permission.NOT_RECORDED,
          applicable,
          "No picking day is stated; none may come before " + earliest + ".",
          List.of(earliest));
    }
    var tooSoon =
        picking.days().stream()
            .filter(day -> touched(planned, day) && day.isBefore(earliest))
            .toList();
    if (tooSoon.isEmpty()) {
      return finding(
          Permission.ALLOWED,
          applicable,
          "No picking after it comes before " + earliest + ".",
          List.of(earliest));
    }
    return finding(
        Permission.REFUSED,
        applicable,
        "Applied on "
            + planned.use().day()
            + ", no harvest before "
            + earliest
            + ", but picking on "
            + NumberRule.words(tooSoon)
            + ".",
        tooSoon);
  }

  /** Whether a picking comes after the application; on one day only the stated hour tells. */
  private static boolean touched(PlannedProduct planned, LocalDate day) {
    if (!day.equals(planned.use().firstDay())) {
      return day.isAfter(planned.use().firstDay());
    }
    var start = planned.spraying().start().withZoneSameInstant(planned.field().zone());
    return planned
        .planting()
        .picking()
        .doneBy()
        .map(hour -> start.toLocalTime().isBefore(hour))
        .orElse(true);
  }

  /** Stages are compared as numbers of the BBCH scale or as the same words; else nobody knows. */
  static RuleFinding stage(ApplicableLimit<PreHarvestLimit> applicable, String last, String stage) {
    var lastNumber = number(last);
    var number = number(stage);
    if (lastNumber.isPresent() && number.isPresent()) {
      boolean after = number.getAsInt() > lastNumber.getAsInt();
      return finding(
          after ? Permission.REFUSED : Permission.ALLOWED,
          applicable,
          "The crop is at " + stage + (after ? ", after " : ", not after ") + last + ".",
          List.of());
    }
    if (!stage.isEmpty() && stage.equalsIgnoreCase(last)) {
      return finding(Permission.ALLOWED, applicable, "The crop is at " + stage + ".", List.of());
    }
    return finding(
        Permission.NOT_RECORDED,
        applicable,
        stage.isEmpty()
            ? "The stage of the crop is not stated; look at the crop."
            : "Whether " + stage + " comes after " + last + " cannot be told; look at the label.",
        List.of());
  }

  private static OptionalInt number(String stage) {
    var match = STAGE_NUMBER.matcher(stage);
    return match.find() ? OptionalInt.of(Integer.parseInt(match.group(1))) : OptionalInt.empty();
  }

  private static RuleFinding finding(
      Permission permission,
      ApplicableLimit<PreHarvestLimit> applicable,
      String sentence,
      List<LocalDate> days) {
    return RuleFinding.of(
            permission, LimitRule.PRE_HARVEST, applicable.record(), applicable.words(), sentence)
        .on(days, Optional.empty());
  }
}
