package agro.programme.rotation;

import agro.dose.ActivePerArea;
import agro.dose.ApplicationLimit;
import agro.dose.DoseBound;
import agro.dose.DoseLimit;
import agro.dose.DosePerArea;
import agro.dose.LabelEntry;
import agro.dose.LabelLimit;
import agro.dose.LimitScope;
import agro.dose.PreHarvestLimit;
import agro.dose.Severity;
import agro.programme.BeeRule;
import agro.programme.CropPlanting;
import agro.programme.LabelActive;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What refuses a product in one window, whatever is used in the others. */
final class PlanRefusals {

  private static final double TINY = 1e-9;

  private final RotationPlanner planner;
  private final PlanPast past;
  private final PlanSpacings spacings;

  PlanRefusals(RotationPlanner planner, PlanPast past, PlanSpacings spacings) {
    this.planner = planner;
    this.past = past;
    this.spacings = spacings;
  }

  /** All reasons against a candidate in a window, under the rules that are held. */
  List<PlanRefusal> of(PlanWindow window, PlanCandidate candidate) {
    var found = new ArrayList<PlanRefusal>();
    var crop = planner.programme().plantingOn(planner.field(), window.firstTreatment());
    labelled(window, candidate, crop).ifPresent(found::add);
    if (candidate.modes().isEmpty()) {
      found.add(
          refusal(
              window,
              candidate,
              PlanRule.GROUP_RECORDED,
              "the group of an active ingredient is not recorded"));
    }
    recorded(window, candidate).ifPresent(found::add);
    nursery(window, candidate, crop).ifPresent(found::add);
    generation(window, candidate).ifPresent(found::add);
    dose(window, candidate).ifPresent(found::add);
    spacings
        .against(window, candidate, past.all())
        .ifPresent(words -> found.add(refusal(window, candidate, PlanRule.INTERVAL, words)));
    crop.flatMap(planting -> harvest(window, candidate, planting)).ifPresent(found::add);
    bees(window, candidate).ifPresent(found::add);
    return found;
  }

  private static PlanRefusal refusal(
      PlanWindow window, PlanCandidate candidate, PlanRule rule, String words) {
    return new PlanRefusal(window.window(), candidate.product(), rule, words);
  }

  private Optional<PlanRefusal> labelled(
      PlanWindow window, PlanCandidate candidate, Optional<CropPlanting> crop) {
    var record = candidate.record();
    boolean stands =
        crop.isPresent()
            && window.days().stream()
                .allMatch(
                    day ->
                        planner
                            .programme()
                            .plantingOn(planner.field(), day)
                            .filter(crop.get()::equals)
                            .isPresent());
    String words = null;
    if (!stands) {
      words = "not one crop stands in " + planner.field() + " on all days of the window";
    } else if (!crop.get().crop().equals(record.crop())) {
      words = "the record is of " + record.crop() + ", and " + crop.get().crop() + " stands there";
    } else if (!planner.pest().isEmpty() && record.pests().isEmpty()) {
      words = "the pests of the label are not recorded";
    } else if (!planner.pest().isEmpty() && !record.pests().contains(planner.pest())) {
      words = planner.pest() + " is not among its pests, " + String.join(", ", record.pests());
    }
    return Optional.ofNullable(words)
        .map(text -> refusal(window, candidate, PlanRule.LABELLED_USE, text));
  }

  private Optional<PlanRefusal> recorded(PlanWindow window, PlanCandidate candidate) {
    var missing = missing(candidate);
    return missing.isEmpty() || planner.unrecorded() == UnrecordedLimits.DOUBTED
        ? Optional.empty()
        : Optional.of(
            refusal(
                window,
                candidate,
                PlanRule.LIMITS_RECORDED,
                "not recorded: " + String.join(", ", missing) + "; look at the label"));
  }

  /** Limits that every label of a crop to be eaten has, and that nobody has recorded. */
  static List<String> missing(PlanCandidate candidate) {
    var missing = new ArrayList<String>();
    if (!isRecorded(candidate, PreHarvestLimit.class)) {
      missing.add("waiting time before harvest");
    }
    if (!isRecorded(candidate, ApplicationLimit.class)) {
      missing.add("number of applications");
    }
    boolean summed =
        candidate.limits().stream()
            .anyMatch(
                limit -> limit instanceof DoseLimit && limit.scope() != LimitScope.APPLICATION);
    boolean capped = !candidate.record().caps().isEmpty();
    if ((summed || capped) && candidate.record().dose().isEmpty()) {
      missing.add("usual dose");
    }
    for (var cap : candidate.record().caps()) {
      boolean known =
          candidate.record().actives().stream()
              .anyMatch(each -> each.name().equals(cap.active()) && each.content().isPresent());
      if (!known && !(candidate.record().dose().orElse(null) instanceof ActivePerArea)) {
        missing.add("content of " + cap.active());
      }
    }
    return missing;
  }

  private static Optional<PlanRefusal> dose(PlanWindow window, PlanCandidate candidate) {
    var dose = candidate.record().dose();
    for (var limit : candidate.limits()) {
      if (limit instanceof DoseLimit most
          && most.bound() == DoseBound.MAXIMUM
          && most.scope() == LimitScope.APPLICATION
          && most.entry() instanceof LabelEntry.Stated<DosePerArea> stated) {
        var actives = candidate.record().actives();
        var only =
            actives.size() == 1 ? Optional.of(actives.get(0)) : Optional.<LabelActive>empty();
        var own = PlanTallies.measure(dose, stated.value(), only);
        var allowed =
            PlanTallies.measure(Optional.of(stated.value()), stated.value(), Optional.empty());
        if (own.isPresent()
            && allowed.isPresent()
            && own.getAsDouble() > allowed.getAsDouble() * (1 + TINY)) {
          return Optional.of(
              refusal(
                  window,
                  candidate,
                  PlanRule.AMOUNT,
                  "the usual dose " + dose.get() + " is above the maximum " + stated.value()));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isRecorded(PlanCandidate candidate, Class<? extends LabelLimit> kind) {
    return candidate.limits().stream()
        .anyMatch(
            limit ->
                kind.isInstance(limit) && !(limit.entry() instanceof LabelEntry.NotRecorded<?>));
  }

  private Optional<PlanRefusal> nursery(
      PlanWindow window, PlanCandidate candidate, Optional<CropPlanting> crop) {
    if (!planner.rules().nurseryBreak() || crop.isEmpty()) {
      return Optional.empty();
    }
    var planted = crop.get().planted();
    var end = planted.plusDays(planner.windowsOfSeason().firstLength() - 1);
    if (window.firstTreatment().isAfter(end)) {
      return Optional.empty();
    }
    for (var each : past.all()) {
      boolean here =
          each.beforeTheField() && each.planting().filter(crop.get()::equals).isPresent();
      for (var use : here ? each.uses() : List.<GroupUse>of()) {
        for (var mode : candidate.modes()) {
          boolean same =
              use.mode()
                  .flatMap(before -> Succession.judge(before, mode))
                  .filter(Severity.ERROR::equals)
                  .isPresent();
          if (same) {
            return Optional.of(
                refusal(
                    window,
                    candidate,
                    PlanRule.NURSERY_BREAK,
                    use.words() + " in the nursery; its group rests until " + end));
          }
        }
      }
    }
    return Optional.empty();
  }

  private Optional<PlanRefusal> generation(PlanWindow window, PlanCandidate candidate) {
    long done =
        past.inField().stream()
            .filter(each -> each.product().product().equals(candidate.product()))
            .filter(each -> window.window().covers(each.day()))
            .count();
    long all = done + window.days().size();
    return candidate.limits().stream()
        .filter(ApplicationLimit.class::isInstance)
        .map(ApplicationLimit.class::cast)
        .filter(limit -> limit.scope() == LimitScope.GENERATION)
        .filter(
            limit -> limit.entry() instanceof LabelEntry.Stated<Integer> most && all > most.value())
        .findFirst()
        .map(
            limit ->
                refusal(
                    window,
                    candidate,
                    PlanRule.APPLICATIONS,
                    all
                        + " applications in one generation, and the label allows "
                        + limit.value()));
  }

  /** On one day only a stated hour by which picking is done tells that it came first. */
  private static boolean comesAfter(CropPlanting planting, LocalDate picking, LocalDate day) {
    return picking.isAfter(day) || (picking.equals(day) && planting.picking().doneBy().isEmpty());
  }

  private static Optional<PlanRefusal> harvest(
      PlanWindow window, PlanCandidate candidate, CropPlanting planting) {
    var wait = candidate.preHarvestDays();
    if (wait.isEmpty()) {
      return Optional.empty();
    }
    for (var day : window.days()) {
      var earliest = day.plusDays(wait.getAsInt());
      for (var picking : planting.picking().days()) {
        if (comesAfter(planting, picking, day) && picking.isBefore(earliest)) {
          return Optional.of(
              refusal(
                  window,
                  candidate,
                  PlanRule.PRE_HARVEST,
                  "applied on "
                      + day
                      + " it allows picking from "
                      + earliest
                      + ", and "
                      + picking
                      + " is a picking day"));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<PlanRefusal> bees(PlanWindow window, PlanCandidate candidate) {
    var rule = candidate.record().stewardship().bees();
    for (var bloom : planner.programme().blooms()) {
      for (var day : window.days()) {
        if (!bloom.field().equals(planner.field()) || !bloom.covers(day)) {
          continue;
        }
        if (rule instanceof LabelEntry.Stated<BeeRule> stated
            && stated.value() == BeeRule.NOT_IN_BLOOM) {
          return Optional.of(
              refusal(
                  window,
                  candidate,
                  PlanRule.BEES,
                  bloom.plant() + " blooms on " + day + ", and the label says " + stated.value()));
        }
        if (rule instanceof LabelEntry.NotRecorded<?>
            && planner.unrecorded() == UnrecordedLimits.LEFT_OUT) {
          return Optional.of(
              refusal(
                  window,
                  candidate,
                  PlanRule.BEES,
                  bloom.plant()
                      + " blooms on "
                      + day
                      + ", and what the label says of bees is not recorded"));
        }
      }
    }
    return Optional.empty();
  }
}
