package agro.generation;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.TreeSet;

/** The nights of one season's visits under the conditions of a catch. */
final class ConditionedNights {

  private static final double[] ONE_NIGHT = {1};

  private final ObservedSeason season;
  private final CatchConditions conditions;
  private final HashMap<String, TreeSet<LocalDate>> renewals = new HashMap<>();

  ConditionedNights(ObservedSeason season, CatchConditions conditions) {
    this.season = season;
    this.conditions = conditions;
    var needs = conditions.nights().map(FitNights::needsTemperatures).orElse(false);
    if (needs && season.temperatures().isEmpty()) {
      throw InputProblem.of(
              "nights fit for flight are told by temperature, and season "
                  + season.label()
                  + " has none")
          .expected("seasons built with their temperatures")
          .because("whether a night was warm enough cannot be read from sums of degree-days")
          .mend("build the season with ObservedSeason.of(traps, model, temperatures)");
    }
    for (var visit : season.traps().visits()) {
      var days = renewals.computeIfAbsent(visit.trap(), trap -> new TreeSet<>());
      if (days.isEmpty()) {
        days.add(visit.from());
      }
      if (visit.lureRenewed()) {
        days.add(visit.date());
      }
    }
  }

  /** Nights of a visit that count as trapping. */
  int countOf(TrapVisit visit) {
    var count = 0;
    for (var night = visit.from(); night.isBefore(visit.date()); night = night.plusDays(1)) {
      count += counts(night) ? 1 : 0;
    }
    return count;
  }

  private boolean counts(LocalDate night) {
    return conditions
        .nights()
        .map(
            rule ->
                season
                    .temperatures()
                    .map(days -> rule.isFit(night, days))
                    .orElse(!rule.isUnfitByName(night)))
        .orElse(true);
  }

  /** The visits as the fit takes them. */
  CatchData data(List<TrapVisit> used) {
    var scale = season.scale();
    var from = new double[used.size()];
    var to = new double[used.size()];
    for (var i = 0; i < from.length; i++) {
      from[i] = scale.degreeDaysCAtStartOf(used.get(i).from());
      to[i] = scale.degreeDaysCAtStartOf(used.get(i).date());
    }
    return new CatchData(
        season.year(),
        season.site(),
        used,
        from,
        to,
        conditions.none() ? CatchWeights.ofEnds(used, from, to) : byNight(used));
  }

  private CatchWeights byNight(List<TrapVisit> used) {
    var firstDay = season.scale().firstDay();
    var firstNight = new int[used.size()];
    var catchability = new double[used.size()][];
    var counts = new boolean[used.size()][];
    for (var v = 0; v < firstNight.length; v++) {
      var visit = used.get(v);
      firstNight[v] = (int) ChronoUnit.DAYS.between(firstDay, visit.from());
      catchability[v] = new double[(int) visit.nights()];
      counts[v] = new boolean[catchability[v].length];
      for (var n = 0; n < catchability[v].length; n++) {
        var night = visit.from().plusDays(n);
        catchability[v][n] = strength(visit.trap(), night);
        counts[v][n] = counts(night);
      }
    }
    return CatchWeights.ofNights(
        used,
        season.scale().sumsC(),
        firstNight,
        catchability,
        counts,
        conditions.life().map(CatchWeights::byNightOfLife).orElse(ONE_NIGHT));
  }

  private double strength(String trap, LocalDate night) {
    if (conditions.lure().isEmpty()) {
      return 1;
    }
    var renewed = renewals.get(trap).floor(night);
    var age = renewed == null ? 0 : ChronoUnit.DAYS.between(renewed, night);
    return LureFade.strength(age, conditions.lure().get().halfLifeDays().orElseThrow());
  }
}
