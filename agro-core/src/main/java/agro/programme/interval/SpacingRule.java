package agro.programme.interval;

import agro.dose.IntervalLimit;
import agro.dose.LabelEntry;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Days between one application and the next, in both directions. */
final class SpacingRule {

  private SpacingRule() {}

  static void check(PlannedProduct planned, List<RuleFinding> findings) {
    planned
        .applicable(IntervalLimit.class, limit -> true, LimitRule.INTERVAL, findings)
        .forEach(limit -> findings.add(limit.judged(spacing(planned, limit))));
    for (var other : planned.underOtherLabels()) {
      for (var limit : other.label().limits().of(IntervalLimit.class)) {
        if (limit.entry() instanceof LabelEntry.Stated<?>
            && limit.condition().isEmpty()
            && other.countsFor(limit.scope())) {
          findings.add(spacing(other, new ApplicableLimit<>(other.label().use(), limit, true)));
        }
      }
    }
  }

  private static RuleFinding spacing(
      PlannedProduct planned, ApplicableLimit<IntervalLimit> applicable) {
    int least = ((LabelEntry.Stated<Integer>) applicable.limit().entry()).value();
    var counted = UseBaskets.of(planned, applicable.limit().scope());
    var close = new ArrayList<LocalDate>();
    var sentences = new ArrayList<String>();
    Optional<LocalDate> first = Optional.empty();
    for (var use : counted.baskets().stream().flatMap(List::stream).distinct().toList()) {
      boolean earlier =
          !use.spraying().end().toInstant().isAfter(planned.spraying().end().toInstant());
      long days =
          earlier
              ? ChronoUnit.DAYS.between(use.day(), planned.use().firstDay())
              : ChronoUnit.DAYS.between(planned.use().day(), use.firstDay());
      if (days < least) {
        close.add(use.day());
        sentences.add(
            PlannedProduct.days(Math.max(0, days))
                + (earlier ? " after" : " before")
                + " the application on "
                + use.day());
        var earliest = use.day().plusDays(least);
        first = Optional.of(first.filter(day -> day.isAfter(earliest)).orElse(earliest));
      }
    }
    return judged(applicable, counted.unknown(), close, sentences, first);
  }

  private static RuleFinding judged(
      ApplicableLimit<IntervalLimit> applicable,
      String unknown,
      List<LocalDate> close,
      List<String> sentences,
      Optional<LocalDate> first) {
    var rule = LimitRule.INTERVAL;
    if (!close.isEmpty()) {
      return RuleFinding.of(
              Permission.REFUSED,
              rule,
              applicable.record(),
              applicable.words(),
              "It would be "
                  + String.join(" and ", sentences)
                  + ". This limit is kept from "
                  + first.orElseThrow()
                  + " on.")
          .on(close, first);
    }
    if (!unknown.isEmpty()) {
      return RuleFinding.of(
          Permission.NOT_RECORDED,
          rule,
          applicable.record(),
          applicable.words(),
          "Not counted: " + unknown + ".");
    }
    return RuleFinding.of(
        Permission.ALLOWED,
        rule,
        applicable.record(),
        applicable.words(),
        "No application that counts lies closer.");
  }
}
