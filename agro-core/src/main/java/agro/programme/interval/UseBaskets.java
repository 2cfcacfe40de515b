package agro.programme.interval;

import agro.dose.LimitScope;
import agro.programme.LabelActive;
import agro.programme.SprayedProduct;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The other applications that a limit counts together with the planned one. A limit of twelve
 * months has several baskets: one for the twelve months that end with the planned application and
 * one for each later application within a year of it.
 *
 * @param baskets the applications, each list without the planned one
 * @param unknown why it cannot be told which count; empty if it can
 */
record UseBaskets(List<List<CountedUse>> baskets, String unknown) {

  static UseBaskets of(PlannedProduct planned, LimitScope scope) {
    return switch (scope) {
      case GROUP -> across(planned, groups(planned.actives()), true);
      case ACTIVE_INGREDIENT -> across(planned, names(planned.actives()), false);
      default -> of(planned, scope, each -> each.product().equals(planned.label().product()));
    };
  }

  /** Uses of all products that hold an active ingredient. */
  static UseBaskets ofActive(PlannedProduct planned, String active, LimitScope scope) {
    var known = of(planned, scope, each -> planned.holds(each.product(), active));
    var all = of(planned, scope, each -> true);
    return unknownActives(planned, all)
        .map(reason -> new UseBaskets(known.baskets(), reason))
        .orElse(known);
  }

  private static java.util.Optional<String> unknownActives(PlannedProduct planned, UseBaskets all) {
    return all.baskets().stream()
        .flatMap(List::stream)
        .flatMap(
            use ->
                use.spraying().products().stream()
                    .map(SprayedProduct::product)
                    .filter(product -> planned.programme().labels().activesOf(product).isEmpty())
                    .map(
                        product ->
                            "the active ingredient of "
                                + product
                                + ", applied on "
                                + use.day()
                                + ", is not recorded"))
        .findFirst();
  }

  private static UseBaskets across(PlannedProduct planned, Set<String> wanted, boolean byGroup) {
    if (wanted.isEmpty()) {
      return new UseBaskets(
          List.of(List.of()),
          (byGroup ? "the group of " : "the active ingredient of ")
              + planned.label().product()
              + " is not recorded");
    }
    var book = planned.programme().labels();
    Predicate<SprayedProduct> shares =
        each -> {
          var actives = book.activesOf(each.product());
          var own = byGroup ? groups(actives) : names(actives);
          return own.stream().anyMatch(wanted::contains);
        };
    var known = of(planned, LimitScope.CROP, shares);
    var all = of(planned, LimitScope.CROP, each -> true);
    for (var use : all.baskets().get(0)) {
      for (var each : use.spraying().products()) {
        var actives = book.activesOf(each.product());
        boolean unknown =
            actives.isEmpty()
                || (byGroup && actives.stream().anyMatch(active -> active.group().isEmpty()));
        if (unknown) {
          return new UseBaskets(
              known.baskets(),
              (byGroup ? "the group of " : "the active ingredient of ")
                  + each.product()
                  + ", applied on "
                  + use.day()
                  + ", is not recorded");
        }
      }
    }
    return known;
  }

  static Set<String> names(List<LabelActive> actives) {
    return actives.stream().map(LabelActive::name).collect(Collectors.toSet());
  }

  static Set<String> groups(List<LabelActive> actives) {
    return actives.stream()
        .flatMap(active -> active.groupNumber().stream())
        .collect(Collectors.toSet());
  }

  static UseBaskets of(PlannedProduct planned, LimitScope scope, Predicate<SprayedProduct> counts) {
    var others =
        planned.others().stream()
            .filter(use -> use.spraying().products().stream().anyMatch(counts))
            .toList();
    return switch (scope) {
      case APPLICATION -> known(List.of());
      case CROP, GROUP, ACTIVE_INGREDIENT ->
          known(others.stream().filter(planned::sameCrop).toList());
      case SEASON -> known(others.stream().filter(planned::sameSeason).toList());
      case TWELVE_MONTHS -> new UseBaskets(twelveMonths(planned, others), "");
      case GENERATION -> generation(planned, others);
    };
  }

  private static UseBaskets known(List<CountedUse> uses) {
    return new UseBaskets(List.of(uses), "");
  }

  /** All spans of twelve months that end with an application and hold the planned one. */
  private static List<List<CountedUse>> twelveMonths(
      PlannedProduct planned, List<CountedUse> others) {
    var ends = new ArrayList<CountedUse>();
    ends.add(planned.use());
    for (var use : others) {
      boolean later = use.day().isAfter(planned.use().day());
      if (later && use.day().minusYears(1).isBefore(planned.use().day())) {
        ends.add(use);
      }
    }
    var baskets = new ArrayList<List<CountedUse>>();
    for (var end : ends) {
      var yearBefore = end.day().minusYears(1);
      baskets.add(
          others.stream()
              .filter(use -> use.day().isAfter(yearBefore) && !use.day().isAfter(end.day()))
              .toList());
    }
    return baskets;
  }

  private static UseBaskets generation(PlannedProduct planned, List<CountedUse> others) {
    var pests = planned.label().pests();
    var spans =
        planned.programme().generations().stream()
            .filter(each -> pests.isEmpty() || pests.contains(each.pest()))
            .filter(
                each ->
                    each.district().isEmpty() || each.district().equals(planned.field().district()))
            .filter(each -> each.covers(planned.use().day()))
            .toList();
    if (spans.isEmpty()) {
      return new UseBaskets(
          List.of(List.of()),
          "the days of the generation around " + planned.use().day() + " are not recorded");
    }
    return new UseBaskets(
        spans.stream()
            .map(span -> others.stream().filter(use -> span.covers(use.day())).toList())
            .toList(),
        "");
  }
}
