package agro.season;

import agro.generation.skill.FlightEvent;
import agro.generation.skill.IntervalCoverage;
import agro.generation.skill.PointScores;
import agro.generation.skill.SeasonDates;
import agro.source.Bibliography;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The forecasts of a ledger as they were issued, beside what came.
 *
 * @param pest the pest
 * @param place the place
 * @param scored the forecasts whose date is known
 * @param notYet kept dates of seasons that are not over
 * @param notIdentified kept dates of events that the counts do not date
 * @param afterTheEvent kept dates that had passed on the day of issue, which are no forecasts
 */
public record LedgerScores(
    String pest,
    String place,
    List<ScoredEntry> scored,
    int notYet,
    int notIdentified,
    int afterTheEvent)
    implements Presentable {

  /** Copies the list. */
  public LedgerScores {
    Objects.requireNonNull(pest, "pest");
    Objects.requireNonNull(place, "place");
    scored = List.copyOf(scored);
  }

  static LedgerScores of(Ledger ledger, String pest, String place, List<SeasonDates> observed) {
    var scored = new ArrayList<ScoredEntry>();
    var notYet = 0;
    var notIdentified = 0;
    var afterTheEvent = 0;
    for (var entry : ledger.entries()) {
      if (!entry.pest().equals(pest)
          || !entry.place().equals(place)
          || !entry.event().equals("flight")) {
        continue;
      }
      var season =
          observed.stream().filter(each -> each.firstDay().equals(entry.seasonStart())).findFirst();
      if (season.isEmpty()) {
        notYet++;
        continue;
      }
      var date = season.get().date(new FlightEvent(entry.generation(), entry.share()));
      if (!date.known()) {
        notIdentified++;
      } else if (date.came() && !date.day(entry.seasonStart()).isAfter(entry.issued())) {
        afterTheEvent++;
      } else {
        scored.add(new ScoredEntry(entry, date));
      }
    }
    return new LedgerScores(pest, place, scored, notYet, notIdentified, afterTheEvent);
  }

  /**
   * Mean error of the medians.
   *
   * @return days, positive when forecasts were late; NaN without a scored forecast
   */
  public double biasDays() {
    return PointScores.bias(medians(), dates());
  }

  /**
   * Mean absolute error of the medians.
   *
   * @return days; NaN without a scored forecast
   */
  public double meanAbsoluteErrorDays() {
    return PointScores.meanAbsoluteError(medians(), dates());
  }

  private double[] medians() {
    return scored.stream().mapToDouble(ScoredEntry::medianDays).toArray();
  }

  private double[] dates() {
    return scored.stream().mapToDouble(ScoredEntry::observedDays).toArray();
  }

  /**
   * Mean ranked probability score up to the season's end.
   *
   * @return days; NaN without a scored forecast
   */
  public double rankedProbabilityDays() {
    return scored.stream()
        .mapToDouble(ScoredEntry::rankedProbabilityDays)
        .average()
        .orElse(Double.NaN);
  }

  /**
   * Coverage of an interval.
   *
   * @param probability 0.5, 0.8 or 0.9
   * @return how many dates lay inside
   */
  public IntervalCoverage coverage(double probability) {
    var inside = (int) scored.stream().filter(each -> each.inside(probability)).count();
    return new IntervalCoverage(inside, scored.size(), probability);
  }

  /**
   * Every scored forecast beside what came.
   *
   * @return a line for each
   */
  public ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    for (var each : scored) {
      var entry = each.entry();
      rows.add(
          List.of(
              Cell.day(entry.issued()),
              Cell.number(entry.generation(), 0),
              Cell.text(entry.share().words()),
              entry.median().map(Cell::day).orElse(Cell.text("not this season")),
              each.observed().came()
                  ? Cell.day(each.observed().day(entry.seasonStart()))
                  : Cell.text("not this season"),
              Cell.number(each.errorDays(), 1),
              Cell.number(each.rankedProbabilityDays(), 1),
              Cell.text(each.inside(0.8) ? "yes" : "no")));
    }
    return ResultTable.of(
        "Forecasts as they were issued",
        List.of(
            Column.of("Issued as of"),
            Column.of("Flight"),
            Column.of("Share of the flight"),
            Column.of("Median"),
            Column.of("Observed"),
            Column.of("Error", "d"),
            Column.of("CRPS", "d"),
            Column.of("In 8 in 10")),
        rows);
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("The ledger: " + pest + ", " + place)
            .paragraph(
                "These forecasts are scored as they were issued, by the program and the data of"
                    + " their day. Kept days are whole days and count from their middle.")
            .fact("forecasts scored", Integer.toString(scored.size()));
    if (!scored.isEmpty()) {
      page.fact("mean error", Numbers.fixed(biasDays(), 1) + " d, positive when late")
          .fact("mean absolute error", Numbers.fixed(meanAbsoluteErrorDays(), 1) + " d")
          .fact("CRPS", Numbers.fixed(rankedProbabilityDays(), 1) + " d");
      for (var probability : List.of(0.5, 0.8, 0.9)) {
        page.fact(
            "in " + Numbers.fixed(100 * probability, 0) + " % interval",
            words(coverage(probability)));
      }
    }
    return page.fact("season not over", Integer.toString(notYet))
        .fact("date not identified", Integer.toString(notIdentified))
        .fact("passed when issued", Integer.toString(afterTheEvent))
        .table(table())
        .sources(List.of(Bibliography.GNEITING_RAFTERY_2007, Bibliography.CLOPPER_PEARSON_1934))
        .cautions(List.of(Caution.LABEL_FIRST, Caution.LICENSED_ADVISER))
        .build();
  }

  private static String words(IntervalCoverage coverage) {
    return coverage.inside()
        + " of "
        + coverage.forecasts()
        + " (95 % binomial interval "
        + Numbers.fixed(coverage.low(0.95), 2)
        + " to "
        + Numbers.fixed(coverage.high(0.95), 2)
        + (coverage.tooFewToJudge() ? "; too few to judge)" : ")");
  }

  @Override
  public String toString() {
    return presentation().toText();
  }
}
