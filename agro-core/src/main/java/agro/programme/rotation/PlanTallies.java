package agro.programme.rotation;

import agro.dose.ActivePerArea;
import agro.dose.ActiveStrength;
import agro.dose.ApplicationLimit;
import agro.dose.DoseBound;
import agro.dose.DoseLimit;
import agro.dose.DosePerArea;
import agro.dose.LabelEntry;
import agro.dose.LimitScope;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.programme.ActiveCap;
import agro.programme.CropPlanting;
import agro.programme.LabelActive;
import agro.programme.SprayedProduct;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiPredicate;
import java.util.function.Predicate;

/** The limits of all candidates on sums over the windows, and the share of the crop cycle. */
final class PlanTallies {

  /** Amounts are added up in whole thousandths of a milligram or microlitre per hectare. */
  private static final double FINE = 1e9;

  private final RotationPlanner planner;
  private final PlanPast past;
  private final List<PlanCandidate> candidates;
  private final List<PlanTally> found = new ArrayList<>();

  PlanTallies(RotationPlanner planner, PlanPast past, List<PlanCandidate> candidates) {
    this.planner = planner;
    this.past = past;
    this.candidates = candidates;
  }

  List<PlanTally> all() {
    for (int owner = 0; owner < candidates.size(); owner++) {
      for (var limit : candidates.get(owner).limits()) {
        if (limit instanceof ApplicationLimit number
            && number.entry() instanceof LabelEntry.Stated<Integer> most) {
          applications(owner, number.scope(), most.value());
        }
        if (limit instanceof DoseLimit dose
            && dose.bound() == DoseBound.MAXIMUM
            && dose.entry() instanceof LabelEntry.Stated<DosePerArea> most
            && dose.scope() != LimitScope.APPLICATION) {
          product(owner, dose.scope(), most.value());
        }
      }
      for (var cap : candidates.get(owner).record().caps()) {
        active(owner, cap);
      }
    }
    shares();
    return found;
  }

  private void applications(int owner, LimitScope scope, int most) {
    var own = candidates.get(owner);
    Predicate<PlanCandidate> counts =
        switch (scope) {
          case GROUP -> other -> own.modes().stream().anyMatch(m -> other.hasNumber(m.number()));
          case ACTIVE_INGREDIENT ->
              other -> own.record().actives().stream().anyMatch(a -> other.holds(a.name()));
          default -> other -> other.product().equals(own.product());
        };
    Predicate<PlanPast.Applied> counted =
        switch (scope) {
          case GROUP ->
              each ->
                  each.uses().stream()
                      .flatMap(use -> use.mode().stream())
                      .anyMatch(mode -> own.hasNumber(mode.number()));
          case ACTIVE_INGREDIENT ->
              each -> each.uses().stream().anyMatch(use -> own.holds(use.active()));
          default -> each -> each.product().product().equals(own.product());
        };
    spans(scope)
        .forEach(
            span ->
                add(
                    PlanRule.APPLICATIONS,
                    owner,
                    most,
                    each -> counted.test(each) ? 1 : 0,
                    candidate -> counts.test(candidate) ? 1 : 0,
                    span));
  }

  private void product(int owner, LimitScope scope, DosePerArea most) {
    var own = candidates.get(owner);
    var limit = measure(Optional.of(most), most, Optional.empty());
    for (var span : spans(scope)) {
      add(
          PlanRule.AMOUNT,
          owner,
          fine(limit),
          each ->
              each.product().product().equals(own.product())
                  ? fine(measure(each.product().dose(), most, Optional.empty()))
                  : 0,
          other ->
              other.product().equals(own.product())
                  ? fine(measure(other.record().dose(), most, Optional.empty()))
                  : 0,
          span);
    }
  }

  private void active(int owner, ActiveCap cap) {
    if (!(cap.limit().entry() instanceof LabelEntry.Stated<DosePerArea> most)
        || cap.limit().scope() == LimitScope.APPLICATION) {
      return;
    }
    for (var span : spans(cap.limit().scope())) {
      add(
          PlanRule.AMOUNT,
          owner,
          fine(measure(Optional.of(most.value()), most.value(), Optional.empty())),
          each -> contained(each.product(), cap, most.value()),
          other -> contained(other, cap, most.value()),
          span);
    }
  }

  private long contained(PlanCandidate candidate, ActiveCap cap, DosePerArea most) {
    return candidate.record().actives().stream()
        .filter(active -> active.name().equals(cap.active()))
        .mapToLong(active -> fine(measure(candidate.record().dose(), most, Optional.of(active))))
        .sum();
  }

  private long contained(SprayedProduct product, ActiveCap cap, DosePerArea most) {
    return planner.programme().labels().activesOf(product.product()).stream()
        .filter(active -> active.name().equals(cap.active()))
        .mapToLong(active -> fine(measure(product.dose(), most, Optional.of(active))))
        .sum();
  }

  /** A dose that cannot be told counts as more than any limit, so that nothing is overlooked. */
  private long fine(OptionalDouble amount) {
    long unknown = planner.unrecorded() == UnrecordedLimits.DOUBTED ? 0 : Long.MAX_VALUE / 1_000;
    return amount.isPresent() ? Math.round(amount.getAsDouble() * FINE) : unknown;
  }

  /** A dose in the measure of a limit: kilograms or litres per hectare. */
  static OptionalDouble measure(
      Optional<DosePerArea> dose, DosePerArea like, Optional<LabelActive> active) {
    if (dose.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (like instanceof ActivePerArea) {
      return activeKilograms(dose.get(), active);
    }
    if (dose.get() instanceof ProductPerArea product) {
      var amount = product.perHectare();
      var limit = ((ProductPerArea) like).perHectare();
      if (amount instanceof ProductAmount.Liquid l && limit instanceof ProductAmount.Liquid) {
        return OptionalDouble.of(l.range().high().litres());
      }
      if (amount instanceof ProductAmount.Solid s && limit instanceof ProductAmount.Solid) {
        return OptionalDouble.of(s.range().high().kilograms());
      }
    }
    return OptionalDouble.empty();
  }

  private static OptionalDouble activeKilograms(DosePerArea dose, Optional<LabelActive> active) {
    if (dose instanceof ActivePerArea direct) {
      return OptionalDouble.of(direct.perHectare().range().high().kilograms());
    }
    return active.flatMap(LabelActive::content).orElse(null) instanceof ActiveStrength strength
        ? OptionalDouble.of(
            strength.activeIn(((ProductPerArea) dose).perHectare()).range().high().kilograms())
        : OptionalDouble.empty();
  }

  /** Over which uses a limit adds up: what was applied, and the windows with their days. */
  private record Span(Predicate<PlanPast.Applied> past, BiPredicate<Integer, LocalDate> ahead) {}

  private List<Span> spans(LimitScope scope) {
    return switch (scope) {
      case SEASON -> seasons();
      case TWELVE_MONTHS -> twelveMonths();
      case CROP, GROUP, ACTIVE_INGREDIENT -> crops();
      default -> List.of();
    };
  }

  private List<Span> seasons() {
    var starts = new LinkedHashSet<LocalDate>();
    days().forEach(day -> starts.add(planner.programme().seasonOf(day)));
    return starts.stream()
        .map(
            start ->
                new Span(
                    each -> planner.programme().seasonOf(each.day()).equals(start),
                    (w, day) -> planner.programme().seasonOf(day).equals(start)))
        .toList();
  }

  /** The twelve months that end with the last day of each window. */
  private List<Span> twelveMonths() {
    var spans = new ArrayList<Span>();
    for (var window : planner.windows()) {
      var end = window.lastTreatment();
      var start = end.minusMonths(12);
      spans.add(
          new Span(
              each -> each.day().isAfter(start) && !each.day().isAfter(end),
              (w, day) -> day.isAfter(start) && !day.isAfter(end)));
    }
    return spans;
  }

  private List<Span> crops() {
    var crops = new LinkedHashSet<CropPlanting>();
    days().forEach(day -> plantingOn(day).ifPresent(crops::add));
    return crops.stream()
        .map(
            crop ->
                new Span(
                    each -> each.planting().filter(crop::equals).isPresent(),
                    (w, day) -> plantingOn(day).filter(crop::equals).isPresent()))
        .toList();
  }

  private Optional<CropPlanting> plantingOn(LocalDate day) {
    return planner.programme().plantingOn(planner.field(), day);
  }

  private List<LocalDate> days() {
    return planner.windows().stream().flatMap(window -> window.days().stream()).toList();
  }

  /** What an application adds to a sum. */
  private interface Share<T> {
    long of(T use);
  }

  private void add(
      PlanRule rule,
      int owner,
      long allowed,
      Share<PlanPast.Applied> before,
      Share<PlanCandidate> each,
      Span span) {
    var windows = planner.windows();
    var added = new long[windows.size()][candidates.size()];
    for (int w = 0; w < added.length; w++) {
      int window = w;
      long times =
          windows.get(w).days().stream().filter(day -> span.ahead().test(window, day)).count();
      for (int c = 0; c < candidates.size(); c++) {
        added[w][c] = times * each.of(candidates.get(c));
      }
    }
    var past = this.past.all().stream().filter(span.past()).toList();
    var name = candidates.get(owner).product();
    found.add(
        new PlanTally(
            rule,
            owner,
            allowed,
            past.stream().mapToLong(before::of).sum(),
            past.stream().anyMatch(one -> one.product().product().equals(name)),
            added));
  }

  private void shares() {
    if (planner.rules().largestShare() >= 1) {
      return;
    }
    var crops = new LinkedHashSet<CropPlanting>();
    days().forEach(day -> plantingOn(day).ifPresent(crops::add));
    for (var crop : crops) {
      CropCycle.of(crop).ifPresent(this::shares);
    }
  }

  private void shares(CropCycle cycle) {
    var numbers = new LinkedHashSet<String>();
    candidates.forEach(each -> each.modes().forEach(mode -> numbers.add(mode.number())));
    for (var number : numbers) {
      found.add(share(cycle, number));
    }
  }

  private PlanTally share(CropCycle cycle, String number) {
    var season = planner.windowsOfSeason();
    var covered = new LinkedHashSet<Integer>();
    for (var each : past.inField()) {
      boolean same =
          !each.day().isBefore(cycle.first())
              && !each.day().isAfter(cycle.last())
              && each.uses().stream()
                  .flatMap(use -> use.mode().stream())
                  .anyMatch(mode -> mode.number().equals(number));
      if (same && season.indexAt(each.day()) >= 0) {
        covered.add(season.indexAt(each.day()));
      }
    }
    long before =
        covered.stream()
            .mapToLong(i -> season.windows().get(i).daysWithin(cycle.first(), cycle.last()))
            .sum();
    var windows = planner.windows();
    var added = new long[windows.size()][candidates.size()];
    for (int w = 0; w < added.length; w++) {
      var window = windows.get(w);
      boolean counts =
          !covered.contains(season.windows().indexOf(window.window()))
              && window.days().stream()
                  .anyMatch(d -> !d.isBefore(cycle.first()) && !d.isAfter(cycle.last()));
      long days = counts ? window.window().daysWithin(cycle.first(), cycle.last()) : 0;
      for (int c = 0; c < candidates.size(); c++) {
        added[w][c] = candidates.get(c).hasNumber(number) ? days : 0;
      }
    }
    long allowed = (long) Math.floor(planner.rules().largestShare() * cycle.days() + 1e-9);
    return new PlanTally(
        PlanRule.SHARE_OF_SEASON, PlanTally.EVERYBODY, allowed, before, true, added);
  }
}
