package agro.programme.interval;

import agro.dose.LabelEntry;
import agro.dose.LabelLimits;
import agro.dose.PreHarvest;
import agro.dose.PreHarvestLimit;
import agro.programme.FarmField;
import agro.programme.Spraying;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What the pre-harvest intervals of one application say to a picking on a day. */
final class PickingFindings {

  private PickingFindings() {}

  static void of(
      SeasonRules rules,
      FarmField field,
      Spraying spraying,
      LocalDate day,
      List<RuleFinding> findings) {
    var crop = rules.programme().plantingOf(spraying).map(each -> each.crop()).orElse("");
    for (var product : spraying.products()) {
      var use = product.product() + " on " + (crop.isEmpty() ? "an unknown crop" : crop);
      var label = rules.programme().labels().find(product.product(), crop);
      var limits = label.map(each -> each.limits().of(PreHarvestLimit.class)).orElse(List.of());
      if (limits.isEmpty()) {
        findings.add(RuleFinding.notRecorded(LimitRule.PRE_HARVEST, use, "pre-harvest interval"));
      }
      limits.forEach(limit -> findings.add(one(rules, use, limit, field, spraying, day)));
      for (var local : rules.programme().localRules()) {
        if (local.holdsFor(product.product(), crop, field.district())) {
          stated(local.limits())
              .forEach(
                  limit -> findings.add(one(rules, local.name(), limit, field, spraying, day)));
        }
      }
    }
  }

  private static List<PreHarvestLimit> stated(LabelLimits limits) {
    return limits.of(PreHarvestLimit.class).stream()
        .filter(limit -> limit.entry() instanceof LabelEntry.Stated<?>)
        .toList();
  }

  private static RuleFinding one(
      SeasonRules rules,
      String record,
      PreHarvestLimit limit,
      FarmField field,
      Spraying spraying,
      LocalDate day) {
    var holds = limit.condition().map(rules.circumstances()::get);
    var applicable =
        new ApplicableLimit<>(record, limit, limit.condition().isEmpty() || holds.isPresent());
    if (limit.entry() instanceof LabelEntry.NotRecorded<?>) {
      return RuleFinding.notRecorded(LimitRule.PRE_HARVEST, record, limit.words());
    }
    if (!(limit.entry() instanceof LabelEntry.Stated<PreHarvest> stated)
        || (holds.isPresent() && !holds.get())) {
      return RuleFinding.of(
          Permission.ALLOWED,
          LimitRule.PRE_HARVEST,
          record,
          applicable.words(),
          "It asks for no days here.");
    }
    if (stated.value() instanceof PreHarvest.UntilStage until) {
      return HarvestRule.stage(applicable, until.stage(), spraying.cropStage());
    }
    var applied = spraying.day(field.zone());
    var earliest = ((PreHarvest.Days) stated.value()).earliestHarvest(applied);
    return applicable.judged(
        RuleFinding.of(
                day.isBefore(earliest) ? Permission.REFUSED : Permission.ALLOWED,
                LimitRule.PRE_HARVEST,
                record,
                applicable.words(),
                "Applied on " + applied + "; picking from " + earliest + " on.")
            .on(List.of(applied, earliest), Optional.of(earliest)));
  }
}
