package agro.programme.interval;

import agro.dose.LabelEntry;
import agro.dose.LabelLimit;
import agro.dose.LimitScope;
import agro.programme.CropPlanting;
import agro.programme.FarmField;
import agro.programme.LabelActive;
import agro.programme.LabelRecord;
import agro.programme.Programme;
import agro.programme.SprayedProduct;
import agro.programme.Spraying;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** One product of an application that is held against its limits. */
record PlannedProduct(
    SeasonRules rules,
    Spraying spraying,
    SprayedProduct product,
    LabelRecord label,
    FarmField field,
    CropPlanting planting,
    CountedUse use,
    List<CountedUse> others) {

  static PlannedProduct of(
      SeasonRules rules,
      Spraying spraying,
      SprayedProduct product,
      LabelRecord label,
      CropPlanting planting) {
    var field = rules.programme().field(spraying.field());
    var others =
        rules.programme().sprayingsOf(field.name()).stream()
            .filter(each -> !each.name().equals(spraying.name()))
            .map(each -> CountedUse.of(each, field))
            .toList();
    return new PlannedProduct(
        rules, spraying, product, label, field, planting, CountedUse.of(spraying, field), others);
  }

  Programme programme() {
    return rules.programme();
  }

  List<LabelActive> actives() {
    return label.actives();
  }

  boolean holds(String other, String active) {
    return programme().labels().activesOf(other).stream()
        .anyMatch(each -> each.name().equals(active));
  }

  boolean sameCrop(CountedUse other) {
    return programme()
        .plantingOf(other.spraying())
        .filter(each -> each.name().equals(planting.name()))
        .isPresent();
  }

  boolean sameSeason(CountedUse other) {
    return programme().seasonOf(other.day()).equals(programme().seasonOf(use.day()));
  }

  /**
   * The limits of one kind that are stated, from the label and from local rules. What the label
   * does not record, or says is not limited, becomes a finding.
   */
  <L extends LabelLimit> List<ApplicableLimit<L>> applicable(
      Class<L> kind, Predicate<L> which, LimitRule rule, List<RuleFinding> findings) {
    var found = new ArrayList<ApplicableLimit<L>>();
    var entered = label.limits().of(kind).stream().filter(which).toList();
    if (entered.isEmpty()) {
      findings.add(RuleFinding.notRecorded(rule, label.use(), rule.words()));
    }
    for (var limit : entered) {
      if (limit.entry() instanceof LabelEntry.NotRecorded<?>) {
        findings.add(RuleFinding.notRecorded(rule, label.use(), limit.words()));
      } else if (limit.entry() instanceof LabelEntry.LabelSaysNone<?>) {
        findings.add(
            RuleFinding.of(
                Permission.ALLOWED,
                rule,
                label.use(),
                limit.words() + ": none",
                "The label says in words that there is none."));
      } else {
        add(found, label.use(), limit);
      }
    }
    for (var local : programme().localRules()) {
      if (local.holdsFor(label.product(), label.crop(), field.district())) {
        local.limits().of(kind).stream()
            .filter(which)
            .filter(limit -> limit.entry() instanceof LabelEntry.Stated<?>)
            .forEach(limit -> add(found, local.name(), limit));
      }
    }
    return found;
  }

  private <L extends LabelLimit> void add(List<ApplicableLimit<L>> found, String record, L limit) {
    var holds = limit.condition().map(rules.circumstances()::get);
    boolean ruledOut = holds.isPresent() && !holds.get();
    if (!ruledOut) {
      boolean certain = limit.condition().isEmpty() || holds.isPresent();
      found.add(new ApplicableLimit<>(record, limit, certain));
    }
  }

  /**
   * This application under the labels of other products that were used on the crop and share an
   * active ingredient or a group with it: what those labels limit over several products, this one
   * uses up as well.
   */
  List<PlannedProduct> underOtherLabels() {
    var names = UseBaskets.names(actives());
    var groups = UseBaskets.groups(actives());
    return others.stream()
        .filter(this::sameCrop)
        .flatMap(each -> each.spraying().products().stream())
        .map(SprayedProduct::product)
        .filter(other -> spraying.of(other).isEmpty())
        .distinct()
        .flatMap(other -> programme().labels().find(other, planting.crop()).stream())
        .filter(
            other ->
                UseBaskets.names(other.actives()).stream().anyMatch(names::contains)
                    || UseBaskets.groups(other.actives()).stream().anyMatch(groups::contains))
        .map(
            other ->
                new PlannedProduct(rules, spraying, product, other, field, planting, use, others))
        .toList();
  }

  /** Whether this application counts for a limit of the label over several products. */
  boolean countsFor(LimitScope scope) {
    var own = programme().labels().activesOf(product.product());
    return switch (scope) {
      case GROUP ->
          UseBaskets.groups(own).stream().anyMatch(UseBaskets.groups(actives())::contains);
      case ACTIVE_INGREDIENT ->
          UseBaskets.names(own).stream().anyMatch(UseBaskets.names(actives())::contains);
      default -> false;
    };
  }

  static String days(long days) {
    return days + (days == 1 ? " day" : " days");
  }
}
