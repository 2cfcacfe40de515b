package agro.programme.interval;

import agro.dose.ActivePerArea;
import agro.dose.DoseBound;
import agro.dose.DoseLimit;
import agro.dose.DosePerArea;
import agro.dose.LabelEntry;
import agro.dose.LimitScope;
import agro.dose.ProductPerArea;
import agro.programme.ActiveCap;
import agro.programme.Spraying;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The highest dose, of one application and added up, of product and of active ingredient. */
final class AmountRule {

  private AmountRule() {}

  static void check(PlannedProduct planned, List<RuleFinding> findings) {
    var rule = LimitRule.AMOUNT;
    boolean anyMaximum =
        planned.label().limits().of(DoseLimit.class).stream()
            .anyMatch(limit -> limit.bound() == DoseBound.MAXIMUM);
    var before = new ArrayList<RuleFinding>();
    var stated =
        planned.applicable(
            DoseLimit.class, limit -> limit.bound() == DoseBound.MAXIMUM, rule, before);
    if (anyMaximum || planned.label().caps().isEmpty()) {
      findings.addAll(before);
    }
    for (var limit : stated) {
      findings.add(limit.judged(AmountSum.of(planned, limit).finding()));
    }
    for (var cap : caps(planned)) {
      var applicable = new ApplicableLimit<>(cap.record(), cap.cap().limit(), true);
      findings.add(AmountSum.ofActive(planned, applicable, cap.cap().active()).finding());
    }
  }

  /** A maximum of active ingredient with the label that states it. */
  record RecordedCap(String record, ActiveCap cap) {}

  /** All maxima of active ingredients of the product, those of other labels on the crop too. */
  static List<RecordedCap> caps(PlannedProduct planned) {
    var found = new LinkedHashSet<RecordedCap>();
    var holding =
        UseBaskets.names(planned.programme().labels().activesOf(planned.product().product()));
    var labels = new ArrayList<PlannedProduct>();
    labels.add(planned);
    labels.addAll(planned.underOtherLabels());
    for (var each : labels) {
      each.label().caps().stream()
          .filter(cap -> cap.limit().entry() instanceof LabelEntry.Stated<?>)
          .filter(cap -> cap.limit().bound() == DoseBound.MAXIMUM)
          .filter(cap -> each.equals(planned) || holding.contains(cap.active()))
          .forEach(cap -> found.add(new RecordedCap(each.label().use(), cap)));
    }
    return List.copyOf(found);
  }

  /** A maximum with what was used and what is planned. */
  record AmountSum(
      PlannedProduct planned,
      ApplicableLimit<DoseLimit> applicable,
      String what,
      UseBaskets baskets,
      Function<Spraying, OptionalDouble> measure) {

    static AmountSum of(PlannedProduct planned, ApplicableLimit<DoseLimit> applicable) {
      var most = most(applicable.limit());
      var name = planned.label().product();
      var actives = planned.actives();
      if (most instanceof ActivePerArea && actives.size() == 1) {
        return ofActive(planned, applicable, actives.get(0).name());
      }
      Function<Spraying, OptionalDouble> measure =
          most instanceof ProductPerArea product
              ? spraying ->
                  spraying
                      .of(name)
                      .map(each -> DoseNumbers.product(each, product, actives))
                      .orElse(OptionalDouble.of(0))
              : spraying ->
                  spraying
                      .of(name)
                      .filter(each -> actives.isEmpty())
                      .map(
                          each ->
                              DoseNumbers.active(
                                  each, "", ((ActivePerArea) most).amount().basis(), actives))
                      .orElse(OptionalDouble.empty());
      return new AmountSum(
          planned, applicable, name, UseBaskets.of(planned, applicable.limit().scope()), measure);
    }

    static AmountSum ofActive(
        PlannedProduct planned, ApplicableLimit<DoseLimit> applicable, String active) {
      var basis = ((ActivePerArea) most(applicable.limit())).amount().basis();
      var book = planned.programme().labels();
      Function<Spraying, OptionalDouble> measure =
          spraying -> {
            double sum = 0;
            for (var each : spraying.products()) {
              if (planned.holds(each.product(), active)) {
                var one = DoseNumbers.active(each, active, basis, book.activesOf(each.product()));
                if (one.isEmpty()) {
                  return one;
                }
                sum += one.getAsDouble();
              }
            }
            return OptionalDouble.of(sum);
          };
      return new AmountSum(
          planned,
          applicable,
          active,
          UseBaskets.ofActive(planned, active, applicable.limit().scope()),
          measure);
    }

    private static DosePerArea most(DoseLimit limit) {
      return ((LabelEntry.Stated<DosePerArea>) limit.entry()).value();
    }

    double bound() {
      return DoseNumbers.bound(most(applicable.limit()));
    }

    /** The largest sum of what was used, as far as it is known. */
    double used() {
      return baskets.baskets().stream()
          .mapToDouble(
              basket ->
                  basket.stream().mapToDouble(use -> measure.apply(use.spraying()).orElse(0)).sum())
          .max()
          .orElse(0);
    }

    /** What is left, in the base unit of the maximum; zero if nothing is. */
    double left() {
      return Math.max(0, AmountPrints.clean(bound() - used()));
    }

    /** Why the sum is not known; empty if it is. */
    String unknown() {
      if (!baskets.unknown().isEmpty()) {
        return baskets.unknown();
      }
      return baskets.baskets().stream()
          .flatMap(List::stream)
          .filter(use -> measure.apply(use.spraying()).isEmpty())
          .map(use -> "the dose on " + use.day() + " cannot be told as " + most(applicable.limit()))
          .findFirst()
          .orElse("");
    }

    RuleFinding finding() {
      var now = measure.apply(planned.spraying());
      double sum = used() + now.orElse(0);
      boolean over = sum > bound() * (1 + 1e-9);
      var most = most(applicable.limit());
      var earlier = applicable.limit().scope() == LimitScope.APPLICATION ? "" : earlier(most);
      if (over) {
        return finding(
            Permission.REFUSED,
            earlier
                + (now.isPresent() ? AmountPrints.up(now.getAsDouble(), most) + " planned, " : "")
                + "at most "
                + most
                + ". At most "
                + AmountPrints.down(left(), most)
                + " is left.");
      }
      var unknown = unknown();
      if (!unknown.isEmpty() || now.isEmpty()) {
        return finding(
            Permission.NOT_RECORDED,
            "Not added up: "
                + (unknown.isEmpty() ? "the dose planned cannot be told as " + most : unknown)
                + ".");
      }
      return finding(
          Permission.ALLOWED,
          earlier
              + AmountPrints.down(now.getAsDouble(), most)
              + " planned, within the maximum of "
              + most
              + ".");
    }

    private String earlier(DosePerArea most) {
      return AmountPrints.down(used(), most) + " of " + what + " used, ";
    }

    private RuleFinding finding(Permission permission, String sentence) {
      var days =
          baskets.baskets().stream()
              .flatMap(List::stream)
              .map(CountedUse::day)
              .distinct()
              .sorted()
              .toList();
      return RuleFinding.of(
              permission, LimitRule.AMOUNT, applicable.record(), applicable.words(), sentence)
          .on(days, Optional.empty());
    }
  }
}
