package agro.programme.interval;

import agro.dose.LabelEntry;
import agro.programme.EnemyRelease;
import agro.programme.FarmField;
import agro.programme.Spraying;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** Waiting days between applications and releases of natural enemies, in both directions. */
final class HelperRule {

  private HelperRule() {}

  static void check(PlannedProduct planned, List<RuleFinding> findings) {
    for (var release : planned.programme().releases()) {
      if (release.field().equals(planned.field().name())) {
        findings.add(
            one(
                planned.rules(),
                planned.field(),
                planned.spraying(),
                planned.product().product(),
                release));
      }
    }
  }

  /** What the user's table says to one application of a product and one release. */
  static RuleFinding one(
      SeasonRules rules, FarmField field, Spraying spraying, String product, EnemyRelease release) {
    var line = rules.sideEffects().find(product, release.organism());
    var record = product + " and " + release.organism();
    if (line.isEmpty()) {
      return RuleFinding.of(
          Permission.NOT_RECORDED,
          LimitRule.HELPERS,
          record,
          "waiting days: not recorded",
          "The table of side effects has no line for them; released on " + release.day() + ".");
    }
    var firstDay = spraying.firstDay(field.zone());
    var lastDay = spraying.day(field.zone());
    long until = ChronoUnit.DAYS.between(lastDay, release.day());
    long since = ChronoUnit.DAYS.between(release.day(), firstDay);
    if (since > 0) {
      return judged(line.get(), record, since, false, release.day());
    }
    var first = judged(line.get(), record, Math.max(0, until), true, release.day());
    if (since < 0) {
      return first;
    }
    // On one day nobody knows which came first, so both waiting times hold.
    var second = judged(line.get(), record, 0, false, release.day());
    return second.permission().compareTo(first.permission()) > 0 ? second : first;
  }

  private static RuleFinding judged(
      SideEffect line, String record, long days, boolean before, LocalDate release) {
    var entry = before ? line.daysBeforeRelease() : line.daysAfterRelease();
    var limit =
        (before ? "waiting days before a release: " : "waiting days after a release: ") + entry;
    var permission = Permission.ALLOWED;
    if (entry instanceof LabelEntry.NotRecorded<Integer>) {
      permission = Permission.NOT_RECORDED;
    } else if (entry instanceof LabelEntry.Stated<Integer> stated && days < stated.value()) {
      permission = Permission.REFUSED;
    }
    Optional<LocalDate> first =
        !before && entry instanceof LabelEntry.Stated<Integer> wait
            ? Optional.of(release.plusDays(wait.value()))
            : Optional.empty();
    var sentence =
        "Applied "
            + PlannedProduct.days(days)
            + (before ? " before" : " after")
            + " the release on "
            + release
            + (line.effectClass().isEmpty() ? "" : "; side effect: " + line.effectClass())
            + "; source: "
            + line.source()
            + ".";
    return RuleFinding.of(permission, LimitRule.HELPERS, record, limit, sentence)
        .on(List.of(release), first);
  }
}
