package agro.generation;

import agro.units.Numbers;
import agro.units.ThermalTime;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A fit of flight timing as a person reads it. */
final class FitPages {

  private FitPages() {}

  static Presentation page(FlightTimingFit fit) {
    var page =
        Presentation.titled("Timing of the flights")
            .fact("Interval between flights", intervalWords(fit))
            .fact("Flights in a season", Integer.toString(fit.generations()));
    fit.pooled()
        .ifPresent(
            pooled ->
                page.fact(
                    "Within these seasons",
                    degreeDays(pooled.estimate())
                        + ", 90 % profile interval "
                        + degreeDays(pooled.low())
                        + " to "
                        + degreeDays(pooled.high())
                        + (pooled.widenedBy() > 1
                            ? ", widened by "
                                + Numbers.fixed(pooled.widenedBy(), 2)
                                + " because counts of running visits stray together"
                            : "")
                        + "; too narrow for a new season"
                        + (pooled.atBoundary() ? "; at the edge of the search range" : "")));
    page.fact("Sought", searched(fit))
        .fact("Form of a flight", shapeWords(fit.shape()))
        .fact(
            "Scatter of the counts",
            fit.poisson()
                ? "Poisson"
                : "negative binomial, size "
                    + Numbers.fixed(fit.sizePerNight(), 2)
                    + " per open trap-night");
    if (Double.isFinite(fit.residualCorrelation())) {
      page.fact("Running residuals", correlationWords(fit));
    }
    if (!fit.conditions().equals(CatchConditions.NONE)) {
      page.fact("Conditions of the catch", conditionWords(fit));
    }
    if (fit.timing().mostArrivals() > 1) {
      page.fact("Arrivals of the first flight", arrivalWords(fit));
    }
    fit.sensitivity().ifPresent(each -> page.fact("Threshold", each.words()));
    if (!fit.seasons().isEmpty()) {
      page.table(seasons(fit)).table(modes(fit));
    }
    fit.sensitivity().ifPresent(each -> page.table(each.table()));
    return page.part(Presentation.of(fit.report())).sources(fit.timing().range().sources()).build();
  }

  private static String correlationWords(FlightTimingFit fit) {
    return "correlation "
        + Numbers.fixed(fit.residualCorrelation(), 2)
        + (fit.residualCorrelation() > PooledInterval.CORRELATED
            ? ", above 0.3: running visits stray together"
            : ", not above 0.3");
  }

  private static String conditionWords(FlightTimingFit fit) {
    var words = fit.conditions().words();
    return fit.conditions().life().isPresent()
        ? words
            + ". The fitted curve is the emergence; the middle of each flight comes later by about"
            + " the mean life"
        : words;
  }

  private static String arrivalWords(FlightTimingFit fit) {
    var arrivals = fit.modes().isEmpty() ? 1 : fit.modes().get(0).arrivals();
    if (arrivals == 1) {
      return "one; a second does not lower the information criterion";
    }
    return arrivals
        + ": "
        + fit.seasons().stream().map(FitPages::arrivals).collect(Collectors.joining("; "));
  }

  private static String arrivals(SeasonTiming season) {
    return season.label()
        + ", "
        + season.arrivals().stream()
            .map(
                each ->
                    Numbers.fixed(100 * each.share(), 0)
                        + " %"
                        + (each.delayDegreeDaysC() > 0
                            ? " after " + Numbers.fixed(each.delayDegreeDaysC(), 0) + " °C·d"
                            : ""))
            .collect(Collectors.joining(" and "));
  }

  /** The interval in words, with the uncertainty that belongs to a new season. */
  static String intervalWords(FlightTimingFit fit) {
    if (fit.interval().isEmpty()) {
      return fit.verdict().words()
          + "; published value "
          + degreeDays(fit.timing().range().expected());
    }
    var estimate = fit.interval().get();
    var mean = degreeDays(estimate.mean());
    return estimate.seasons() == 1
        ? mean + " (this season only)"
        : mean
            + " ± "
            + Numbers.fixed(estimate.halfWidthOfMeanC(0.9), 0)
            + " (90 %, "
            + estimate.seasons()
            + " seasons; a new season ± "
            + Numbers.fixed(estimate.halfWidthOfNewSeasonC(0.9), 0)
            + ")";
  }

  /** A published requirement is not the same quantity as an interval between catches. */
  private static String searched(FlightTimingFit fit) {
    var range = fit.timing().range();
    return degreeDays(range.low())
        + " to "
        + degreeDays(range.high())
        + "; expected from the sources "
        + degreeDays(range.expected())
        + ", which is not the same quantity: catches on a daily curve are not rearings at constant"
        + " temperatures";
  }

  private static String shapeWords(FlightShape shape) {
    return shape.curve().words()
        + ", scale of the first flight "
        + Numbers.fixed(shape.firstDegreeDaysC(), 0)
        + " °C·d, each later one adds "
        + Numbers.fixed(shape.addedDegreeDaysC(), 0)
        + " °C·d in squares";
  }

  static ResultTable seasons(FlightTimingFit fit) {
    var columns =
        new ArrayList<>(
            List.of(
                Column.of("Season"),
                Column.of("Middle of first flight", "°C·d"),
                Column.of("Its day"),
                Column.of("Biofix"),
                Column.of("Interval", "°C·d")));
    for (var g = 1; g <= fit.generations(); g++) {
      columns.add(Column.of("Flight " + g, "adults per trap"));
    }
    columns.add(Column.of("Visits"));
    columns.add(Column.of("Correlation of residuals"));
    var rows = new ArrayList<List<Cell>>();
    for (var season : fit.seasons()) {
      var row = new ArrayList<Cell>();
      row.add(Cell.text(season.label()));
      row.add(Cell.number(season.start().degreeDaysC(), 0));
      row.add(Cell.text(startDay(season)));
      row.add(Cell.text(season.biofix().map(FitPages::biofix).orElse("rule not fulfilled")));
      row.add(
          season
              .interval()
              .map(k -> Cell.number(k.degreeDaysC(), 0))
              .orElse(Cell.text("flights not apart")));
      for (var size : season.catchSizes()) {
        row.add(Double.isNaN(size) ? Cell.text("not seen") : Cell.number(size, 0));
      }
      row.add(Cell.number(season.visits(), 0));
      row.add(Cell.number(season.residualCorrelation(), 2));
      rows.add(row);
    }
    return ResultTable.of("Season by season", columns, rows)
        .withNote(
            "Biofix: "
                + fit.timing().biofixRule().words()
                + ", between two visits; the biofix day counts from its start.");
  }

  private static String startDay(SeasonTiming season) {
    return season.startDay().map(DayWords::day).orElse("not reached")
        + (season.beganBeforeTraps() ? ", began before the traps" : "");
  }

  private static String biofix(Biofix biofix) {
    if (biofix.beganBefore()) {
      return "by " + DayWords.day(biofix.latest()) + ", traps set too late";
    }
    return biofix.earliest().equals(biofix.latest())
        ? DayWords.day(biofix.latest())
        : DayWords.between(biofix.earliest(), biofix.latest());
  }

  private static ResultTable modes(FlightTimingFit fit) {
    var rows = new ArrayList<List<Cell>>();
    for (var mode : fit.modes()) {
      var best = fit.modes().get(0);
      var nearInLikelihood = 2 * (best.logLikelihood() - mode.logLikelihood()) <= 4;
      if (nearInLikelihood || mode.bic() - best.bic() <= 5 * FlightMode.RIVAL_BIC) {
        rows.add(
            List.of(
                Cell.number(mode.generations(), 0),
                mode.interval()
                    .map(k -> Cell.number(k.degreeDaysC(), 0))
                    .orElse(Cell.text("one flight only")),
                Cell.number(mode.logLikelihood(), 1),
                Cell.number(mode.bic() - best.bic(), 1)));
      }
    }
    return ResultTable.of(
            "Explanations of the counts",
            List.of(
                Column.of("Flights"),
                Column.of("Interval", "°C·d"),
                Column.of("Log likelihood"),
                Column.of("BIC above the best")),
            rows)
        .withNote(
            "A rival with another interval within 10 units of BIC would make the answer"
                + " ambiguous.");
  }

  private static String degreeDays(ThermalTime time) {
    return Numbers.fixed(time.degreeDaysC(), 0) + " °C·d";
  }
}
