package agro.generation.skill;

import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Tables of a hindcast. */
final class HindcastTables {

  static final Comparator<HindcastForecast> ORDER =
      Comparator.comparing(HindcastForecast::scheme)
          .thenComparing(HindcastForecast::year)
          .thenComparing(HindcastForecast::event)
          .thenComparing(HindcastForecast::lead);

  private static final String TOO_FEW = "too few to judge";
  private static final String DAYS = "d";
  private static final String NO_BREAK = "\u00a0";

  private HindcastTables() {}

  static ResultTable byLead(Hindcast hindcast, HindcastScheme scheme) {
    var rows = new ArrayList<List<Cell>>();
    for (var lead : hindcast.plan().leads()) {
      var scores = hindcast.scores(scheme, lead);
      var cells = new ArrayList<Cell>(List.of(Cell.text(lead.words().replace(" ", NO_BREAK))));
      cells.addAll(errors(scores));
      scores.coverage().forEach(each -> cells.add(Cell.text(coverage(each))));
      cells.add(Cell.number(scores.brierScore(), 3));
      rows.add(cells);
    }
    var columns = new ArrayList<>(List.of(Column.of("Issued")));
    columns.addAll(errorColumns());
    for (var claimed : HindcastScores.CLAIMED) {
      columns.add(Column.of("In " + perCent(claimed) + " interval"));
    }
    columns.add(Column.of("Brier score"));
    return ResultTable.of(capital(scheme) + ": all events together", columns, rows)
        .withNote(
            "n: forecasts. Bias: median date less observed date, positive when the forecast was late. CRPS and"
                + " interval score (of the 80 % interval) are better when smaller.")
        .withNote(
            "In brackets the 95 % binomial interval of the coverage (Clopper and Pearson). It takes"
                + " the forecasts as independent; those of one season are not, so the truth may lie"
                + " further out. Below 20 forecasts: too few to judge.");
  }

  static ResultTable skillByLead(Hindcast hindcast, HindcastScheme scheme) {
    var rows = new ArrayList<List<Cell>>();
    for (var lead : hindcast.plan().leads()) {
      var scores = hindcast.scores(scheme, lead);
      var cells = new ArrayList<Cell>(List.of(Cell.text(lead.words().replace(" ", NO_BREAK))));
      scores.skills().forEach(each -> cells.add(Cell.text(skill(each))));
      rows.add(cells);
    }
    return ResultTable.of(
            capital(scheme) + ": skill in CRPS",
            List.of(
                Column.of("Issued"),
                Column.of("Over " + SkillReference.CALENDAR.words()),
                Column.of("Over " + SkillReference.FIRST_CATCH.words()),
                Column.of("Over " + SkillReference.PUBLISHED_INTERVAL.words())),
            rows)
        .withNote(
            "Skill: 1 at best, 0 when no better than the reference, negative when worse; with its"
                + " standard error, seasons left out one by one, and the number of forecasts for"
                + " which both could be made. The references learn from the same seasons.");
  }

  static ResultTable byEvent(Hindcast hindcast, HindcastScheme scheme) {
    var rows = new ArrayList<List<Cell>>();
    for (var event : hindcast.events()) {
      for (var lead : hindcast.plan().leads()) {
        var scores = hindcast.scores(scheme, event, lead);
        if (scores.forecasts() > 0) {
          var cells =
              new ArrayList<Cell>(
                  List.of(
                      Cell.number(event.generation(), 0),
                      Cell.number(100 * event.share().share(), 0),
                      Cell.text(shortWords(lead))));
          cells.addAll(errors(scores));
          scores.coverage().forEach(each -> cells.add(Cell.number(each.inside(), 0)));
          scores.skills().forEach(each -> cells.add(Cell.number(each.skill(), 2)));
          rows.add(cells);
        }
      }
    }
    var columns =
        new ArrayList<>(List.of(Column.of("Flight"), Column.of("Share", "%"), Column.of("Issued")));
    columns.addAll(errorColumns());
    for (var claimed : HindcastScores.CLAIMED) {
      columns.add(Column.of("Inside " + perCent(claimed)));
    }
    columns.add(Column.of("Skill, calendar"));
    columns.add(Column.of("Skill, catch and days"));
    columns.add(Column.of("Skill, published"));
    return ResultTable.of(capital(scheme) + ": every event", columns, rows)
        .withNote(
            "Share: of the flight. Issued: days before the event, or at the season's start. Inside:"
                + " forecasts whose 50, 80 and 90 % interval held the date. The three skills in"
                + " CRPS are over the "
                + SkillReference.CALENDAR.words()
                + ", over the "
                + SkillReference.FIRST_CATCH.words()
                + ", and over the "
                + SkillReference.PUBLISHED_INTERVAL.words()
                + ".")
        .withNote("A line of fewer than 20 forecasts is too few to judge.");
  }

  private static List<Column> errorColumns() {
    return List.of(
        Column.of("n"),
        Column.of("Bias", DAYS),
        Column.of("MAE", DAYS),
        Column.of("RMSE", DAYS),
        Column.of("CRPS", DAYS),
        Column.of("Interval score", DAYS));
  }

  private static List<Cell> errors(HindcastScores scores) {
    return List.of(
        Cell.number(scores.forecasts(), 0),
        Cell.number(scores.biasDays(), 1),
        Cell.number(scores.meanAbsoluteErrorDays(), 1),
        Cell.number(scores.rootMeanSquaredErrorDays(), 1),
        Cell.number(scores.rankedProbabilityDays(), 1),
        Cell.number(scores.intervalScoreDays(), 1));
  }

  static ResultTable observed(Hindcast hindcast) {
    var rows = new ArrayList<List<Cell>>();
    for (var season : hindcast.observed()) {
      season
          .dates()
          .forEach(
              (event, date) ->
                  rows.add(
                      List.of(
                          Cell.text(Integer.toString(season.year())),
                          Cell.text(event.words()),
                          date.came()
                              ? Cell.day(date.day(season.firstDay()))
                              : Cell.text(date.why()),
                          Cell.number(date.errorDays(), 1))));
    }
    return ResultTable.of(
            "What came, as the counts of each whole season tell",
            List.of(
                Column.of("Season"),
                Column.of("Event"),
                Column.of("Date"),
                Column.of("Standard error", DAYS)),
            rows)
        .withNote(
            "From a fit to the counts of that season in which every flight has its own middle and"
                + " spread. These dates are estimates too; their error is not taken off the errors"
                + " of the forecasts.");
  }

  static ResultTable rows(Hindcast hindcast) {
    var rows = new ArrayList<List<Cell>>();
    for (var each : hindcast.forecasts()) {
      rows.add(
          List.of(
              Cell.text(each.scheme().words()),
              Cell.text(Integer.toString(each.year())),
              Cell.text(each.event().words()),
              Cell.text(each.lead().words()),
              Cell.day(each.issueDate()),
              day(each.dates().median()),
              day(each.dates().quantile(0.1)),
              day(each.dates().quantile(0.9)),
              Cell.number(100 * each.dates().chanceNotThisSeason(), 0),
              each.observed().came()
                  ? Cell.day(each.observed().day(each.firstDay()))
                  : Cell.text("not this season"),
              Cell.number(each.errorDays(), 1),
              Cell.number(each.rankedProbabilityDays(), 1)));
    }
    return ResultTable.of(
        "Every forecast beside what came",
        List.of(
            Column.of("Learnt from"),
            Column.of("Season"),
            Column.of("Event"),
            Column.of("Issued"),
            Column.of("Day of issue"),
            Column.of("Median"),
            Column.of("8 in 10 from"),
            Column.of("8 in 10 to"),
            Column.of("Not this season", "%"),
            Column.of("Observed"),
            Column.of("Error", DAYS),
            Column.of("CRPS", DAYS)),
        rows);
  }

  private static String shortWords(LeadTime lead) {
    return lead.daysBefore().isPresent() ? lead.daysBefore().getAsInt() + NO_BREAK + "d" : "start";
  }

  private static Cell day(Optional<LocalDate> day) {
    return day.map(Cell::day).orElse(Cell.text("not this season"));
  }

  private static String coverage(IntervalCoverage coverage) {
    if (coverage.forecasts() == 0) {
      return Cell.NOT_KNOWN;
    }
    return Numbers.fixed(coverage.share(), 2)
        + " ("
        + Numbers.fixed(coverage.low(0.95), 2)
        + " to "
        + Numbers.fixed(coverage.high(0.95), 2)
        + ")"
        + (coverage.tooFewToJudge() ? ", " + TOO_FEW : "");
  }

  private static String skill(SkillEstimate skill) {
    if (skill.forecasts() == 0 || Double.isNaN(skill.skill())) {
      return Cell.NOT_KNOWN;
    }
    return Numbers.fixed(skill.skill(), 2)
        + (Double.isNaN(skill.standardError())
            ? ""
            : " ± " + Numbers.fixed(skill.standardError(), 2))
        + " ("
        + skill.forecasts()
        + ")"
        + (skill.forecasts() < IntervalCoverage.LEAST_TO_JUDGE ? ", " + TOO_FEW : "");
  }

  static String capital(HindcastScheme scheme) {
    var words = scheme.words();
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static String perCent(double probability) {
    return Numbers.fixed(100 * probability, 0) + NO_BREAK + "%";
  }
}
