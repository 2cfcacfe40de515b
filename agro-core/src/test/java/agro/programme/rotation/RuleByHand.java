package agro.programme.rotation;

import agro.dose.ApplicationLimit;
import agro.dose.IntervalLimit;
import agro.dose.LabelEntry;
import agro.dose.LimitScope;
import agro.programme.LabelRecord;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The rules once more, in the plainest way: over the list of all uses, pair by pair, without any
 * state that is carried along.
 */
final class RuleByHand {

  /** One use, made or planned. */
  record Use(LocalDate day, int window, LabelRecord record) {}

  private final List<Use> uses;
  private final RotationPlanner planner;
  private final List<Use> planned;
  private final int past;

  RuleByHand(RotationPlanner planner, List<Optional<LabelRecord>> choices) {
    this.planner = planner;
    uses = new ArrayList<>();
    var programme = planner.programme();
    for (var spraying : programme.sprayingsOf(planner.field())) {
      var day = spraying.day(RotationScenes.ZONE);
      for (var product : spraying.products()) {
        var record = programme.labels().require(product.product(), RotationScenes.CROP);
        uses.add(new Use(day, planner.windowsOfSeason().indexAt(day), record));
      }
    }
    past = uses.size();
    for (int i = 0; i < choices.size(); i++) {
      var window = planner.windows().get(i);
      int index = planner.windowsOfSeason().windows().indexOf(window.window());
      for (var day : window.days()) {
        choices.get(i).ifPresent(record -> uses.add(new Use(day, index, record)));
      }
    }
    planned = uses.subList(past, uses.size());
  }

  boolean isKept() {
    for (int i = 0; i < planned.size(); i++) {
      var use = planned.get(i);
      for (int j = 0; j < uses.size(); j++) {
        boolean another = j != past + i;
        if (another && (follows(use, uses.get(j)) || tooNear(use, uses.get(j)))) {
          return false;
        }
      }
      if (waits(use)) {
        return false;
      }
    }
    return countsKept() && sharesKept();
  }

  private static boolean follows(Use a, Use b) {
    if (Math.abs(a.window() - b.window()) != 1) {
      return false;
    }
    for (var x : a.record().actives()) {
      for (var y : b.record().actives()) {
        var groups = List.of(x.group().orElseThrow(), y.group().orElseThrow());
        boolean same = groups.get(0).equals(groups.get(1));
        boolean sodium = groups.stream().allMatch(group -> group.startsWith("3"));
        if (same || sodium) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean sameThing(LimitScope scope, LabelRecord a, LabelRecord b) {
    if (scope == LimitScope.GROUP) {
      return a.actives().stream()
          .anyMatch(
              x ->
                  b.actives().stream()
                      .anyMatch(
                          y ->
                              x.groupNumber().orElseThrow().equals(y.groupNumber().orElseThrow())));
    }
    if (scope == LimitScope.ACTIVE_INGREDIENT) {
      return a.actives().stream()
          .anyMatch(x -> b.actives().stream().anyMatch(y -> x.name().equals(y.name())));
    }
    return a.product().equals(b.product());
  }

  private static boolean tooNear(Use use, Use other) {
    for (var owner : List.of(use, other)) {
      for (var limit : owner.record().limits().of(IntervalLimit.class)) {
        int days = ((LabelEntry.Stated<Integer>) limit.entry()).value();
        long between = Math.abs(ChronoUnit.DAYS.between(use.day(), other.day()));
        if (between < days && sameThing(limit.scope(), use.record(), other.record())) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean waits(Use use) {
    var planting = planner.programme().plantings().get(0);
    int wait =
        PlanCandidate.of(
                use.record(),
                use.record().limits().limits(),
                ModeOfActionTable.builtIn(),
                List.of())
            .preHarvestDays()
            .orElse(0);
    return planting.picking().days().stream()
        .anyMatch(
            day -> !day.isBefore(use.day()) && ChronoUnit.DAYS.between(use.day(), day) < wait);
  }

  private boolean countsKept() {
    for (var owner : uses) {
      for (var limit : owner.record().limits().of(ApplicationLimit.class)) {
        int most = ((LabelEntry.Stated<Integer>) limit.entry()).value();
        var counted =
            uses.stream()
                .filter(use -> sameThing(limit.scope(), owner.record(), use.record()))
                .toList();
        boolean own = counted.stream().anyMatch(planned::contains);
        if (own && limit.scope() == LimitScope.TWELVE_MONTHS) {
          if (mostInTwelveMonths(counted) > most) {
            return false;
          }
        } else if (own && counted.size() > most) {
          return false;
        }
      }
    }
    return true;
  }

  private long mostInTwelveMonths(List<Use> counted) {
    return counted.stream()
        .filter(planned::contains)
        .mapToLong(
            last ->
                counted.stream()
                    .filter(
                        use ->
                            !use.day().isAfter(last.day())
                                && use.day().isAfter(last.day().minusMonths(12)))
                    .count())
        .max()
        .orElse(0);
  }

  private boolean sharesKept() {
    var planting = planner.programme().plantings().get(0);
    var first = planting.planted();
    var last = planting.cleared().orElseThrow();
    for (var use : planned) {
      for (var active : use.record().actives()) {
        var number = active.groupNumber().orElseThrow();
        long covered = 0;
        long days = 0;
        for (var day = first; !day.isAfter(last); day = day.plusDays(1)) {
          days++;
          covered += isUnder(number, planner.windowsOfSeason(), day) ? 1 : 0;
        }
        if (covered > planner.rules().largestShare() * days) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean isUnder(String number, RotationWindows windows, LocalDate day) {
    var window = windows.on(day);
    return window.isPresent()
        && uses.stream()
            .filter(use -> windows.windows().indexOf(window.get()) == use.window())
            .anyMatch(
                use ->
                    use.record().actives().stream()
                        .anyMatch(active -> active.groupNumber().orElseThrow().equals(number)));
  }
}
