package agro.programme.interval;

import agro.dose.LabelEntry;
import agro.programme.BeeRule;
import agro.programme.BloomPeriod;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/** What the label asks for bees while crop or weeds bloom. */
final class BloomRule {

  private BloomRule() {}

  /** Speaks where the label says something of bees or bloom is entered for the field. */
  static void check(PlannedProduct planned, List<RuleFinding> findings) {
    var bees = planned.label().stewardship().bees();
    var entered =
        planned.programme().blooms().stream()
            .filter(each -> each.field().equals(planned.field().name()))
            .toList();
    if (bees instanceof LabelEntry.LabelSaysNone<BeeRule>) {
      findings.add(
          finding(planned, Permission.ALLOWED, "bees: none", "The label asks for nothing."));
    } else if (bees instanceof LabelEntry.Stated<BeeRule> stated) {
      findings.add(stated(planned, stated.value(), entered));
    } else if (!inBloom(planned, entered).isEmpty()) {
      findings.add(RuleFinding.notRecorded(LimitRule.BEES, planned.label().use(), "bees"));
    }
  }

  private static List<BloomPeriod> inBloom(PlannedProduct planned, List<BloomPeriod> entered) {
    return entered.stream()
        .filter(each -> each.covers(planned.use().firstDay()) || each.covers(planned.use().day()))
        .toList();
  }

  private static RuleFinding stated(
      PlannedProduct planned, BeeRule rule, List<BloomPeriod> entered) {
    var limit = "bees: " + rule.words();
    if (entered.isEmpty()) {
      return finding(
          planned,
          Permission.NOT_RECORDED,
          limit,
          "Bloom of crop and weeds in " + planned.field().name() + " is not recorded; look there.");
    }
    var blooming = inBloom(planned, entered);
    if (blooming.isEmpty()) {
      return finding(planned, Permission.ALLOWED, limit, "Nothing is entered as in bloom then.");
    }
    var what = "In bloom: " + String.join(", ", blooming.stream().map(BloomPeriod::plant).toList());
    if (rule == BeeRule.NOT_IN_BLOOM) {
      return finding(planned, Permission.REFUSED, limit, what + ".");
    }
    return flight(planned, limit, what);
  }

  private static RuleFinding flight(PlannedProduct planned, String limit, String what) {
    var gap =
        planned.label().stewardship().beeHours() instanceof LabelEntry.Stated<Duration> stated
            ? stated.value()
            : Duration.ZERO;
    var spraying = planned.spraying();
    var over = spraying.end().plus(gap);
    var lastDay = over.withZoneSameInstant(planned.field().zone()).toLocalDate();
    for (var day = planned.use().firstDay(); !day.isAfter(lastDay); day = day.plusDays(1)) {
      var hours = hours(planned, day);
      if (hours.isEmpty()) {
        return finding(
            planned,
            Permission.NOT_RECORDED,
            limit,
            what + "; the hours in which bees fly are not known.");
      }
      if (meets(spraying.start(), over, hours.get())) {
        return finding(
            planned,
            Permission.REFUSED,
            limit,
            what
                + "; bees fly from "
                + clock(hours.get().from())
                + " to "
                + clock(hours.get().to())
                + " on "
                + day
                + (gap.isZero() ? "." : ", and it has to be over " + gap.toHours() + " h before."));
      }
    }
    return finding(planned, Permission.ALLOWED, limit, what + ", but no bees fly then.");
  }

  private static Optional<BeeFlight.Hours> hours(PlannedProduct planned, LocalDate day) {
    return planned.rules().beeFlight().flatMap(rule -> rule.on(planned.field(), day));
  }

  /** Whether a span of the application meets hours of flight; hours without length meet nothing. */
  private static boolean meets(ZonedDateTime start, ZonedDateTime over, BeeFlight.Hours hours) {
    var from = hours.from().toInstant();
    var to = hours.to().toInstant();
    return from.isBefore(to) && start.toInstant().isBefore(to) && over.toInstant().isAfter(from);
  }

  private static String clock(ZonedDateTime moment) {
    return moment.toLocalTime().withSecond(0).withNano(0).toString();
  }

  private static RuleFinding finding(
      PlannedProduct planned, Permission permission, String limit, String sentence) {
    return RuleFinding.of(permission, LimitRule.BEES, planned.label().use(), limit, sentence)
        .on(List.of(planned.use().day()), Optional.empty());
  }
}
