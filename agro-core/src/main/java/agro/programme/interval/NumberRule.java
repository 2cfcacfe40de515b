package agro.programme.interval;

import agro.dose.ApplicationLimit;
import agro.dose.LabelEntry;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The highest number of applications, over each scope. */
final class NumberRule {

  private NumberRule() {}

  static void check(PlannedProduct planned, List<RuleFinding> findings) {
    var rule = LimitRule.NUMBER;
    planned
        .applicable(ApplicationLimit.class, limit -> true, rule, findings)
        .forEach(limit -> findings.add(limit.judged(number(planned, limit))));
    for (var other : planned.underOtherLabels()) {
      for (var limit : other.label().limits().of(ApplicationLimit.class)) {
        if (limit.entry() instanceof LabelEntry.Stated<?>
            && limit.condition().isEmpty()
            && other.countsFor(limit.scope())) {
          findings.add(number(other, new ApplicableLimit<>(other.label().use(), limit, true)));
        }
      }
    }
  }

  private static RuleFinding number(
      PlannedProduct planned, ApplicableLimit<ApplicationLimit> applicable) {
    int most = ((LabelEntry.Stated<Integer>) applicable.limit().entry()).value();
    var counted = UseBaskets.of(planned, applicable.limit().scope());
    var fullest =
        counted.baskets().stream()
            .max((a, b) -> Integer.compare(a.size(), b.size()))
            .orElse(List.of());
    int count = fullest.size() + 1;
    var days =
        Stream.concat(fullest.stream().map(CountedUse::day), Stream.of(planned.use().day()))
            .sorted()
            .toList();
    if (count > most) {
      return finding(
          Permission.REFUSED,
          applicable,
          "This would be application " + count + " of at most " + most + ": " + words(days) + ".",
          days);
    }
    if (!counted.unknown().isEmpty()) {
      return finding(
          Permission.NOT_RECORDED, applicable, "Not counted: " + counted.unknown() + ".", days);
    }
    return finding(
        Permission.ALLOWED,
        applicable,
        "This is application " + count + " of at most " + most + ".",
        days);
  }

  static String words(List<LocalDate> days) {
    return String.join(", ", days.stream().map(LocalDate::toString).toList());
  }

  private static RuleFinding finding(
      Permission permission,
      ApplicableLimit<ApplicationLimit> applicable,
      String sentence,
      List<LocalDate> days) {
    return RuleFinding.of(
            permission, LimitRule.NUMBER, applicable.record(), applicable.words(), sentence)
        .on(days, Optional.empty());
  }
}
