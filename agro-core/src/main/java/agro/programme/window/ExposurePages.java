package agro.programme.window;

import agro.source.Reference;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import agro.working.Working;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** Exposed shares as a person reads them. */
final class ExposurePages {

  private ExposurePages() {}

  static String perCent(double share) {
    return Numbers.fixed(100 * share, 0) + "\u00a0%";
  }

  static ResultTable table(ExposureForecast forecast) {
    var rows = new ArrayList<List<Cell>>();
    for (var day : forecast.days()) {
      rows.add(
          List.of(
              Cell.day(day.day()),
              Cell.number(100 * day.mean(), 0),
              Cell.text(perCent(day.low()) + " to " + perCent(day.high())),
              Cell.number(100 * day.gone(), 0),
              Cell.number(100 * day.toCome(), 0),
              Cell.number(100 * day.chanceWanted(), 0),
              Cell.number(100 * day.chanceBest(), 0)));
    }
    var columns =
        List.of(
            Column.of("Day of treatment"),
            Column.of("Exposed, mean", "%"),
            Column.of("8 in 10"),
            Column.of("Gone before", "%"),
            Column.of("Later or not", "%"),
            Column.of("Chance of " + perCent(forecast.settings().wantedShare()) + " or more", "%"),
            Column.of("Chance of the best day", "%"));
    var table = ResultTable.of(title(forecast), columns, rows);
    return rows.isEmpty()
        ? table.withNote(
            "No day is left on which a treatment would reach this stage: it is over, or it does not"
                + " come this season.")
        : table.withNote(notes(forecast));
  }

  private static String title(ExposureForecast forecast) {
    return "Share of the "
        + forecast.target().stage().words()
        + " of generation "
        + forecast.courses().generation()
        + " that a treatment exposes: "
        + forecast.courses().pest()
        + ", as of "
        + forecast.courses().asOf();
  }

  private static String notes(ExposureForecast forecast) {
    boolean fades = !(forecast.residue().decay() instanceof ResidueDecay.Steady);
    return "Shares are of all animals of the generation that pass through the stage"
        + (fades ? ", weighted by the effect that is left when they meet it" : "")
        + "; 8 in 10 is the chance that the share lies between the two. A generation that does not"
        + " come this season (chance "
        + perCent(forecast.chanceNotThisSeason())
        + ") counts as nothing exposed. Days that do about as well share the chance of the best day"
        + " among them.";
  }

  static Presentation page(ExposureForecast forecast) {
    var page = Presentation.titled("Days of treatment").paragraph(sentence(forecast));
    addFacts(page, forecast);
    addPair(page, forecast, forecast.bestPair());
    return page.table(table(forecast)).cautions(Caution.all()).sources(sources(forecast)).build();
  }

  static void addFacts(Presentation.Builder page, ExposureForecast forecast) {
    page.fact("Stage hit", forecast.target().toString())
        .fact("Treatment", forecast.residue().toString())
        .fact("Best day, 9 in 10", dates(forecast))
        .fact("Not this season", perCent(forecast.chanceNotThisSeason()))
        .fact("Best day, if the generation comes", ifItComes(forecast))
        .fact("Courses weighed", String.valueOf(forecast.courses().size()));
  }

  /** The pair, where one was asked for. */
  static void addPair(
      Presentation.Builder page, ExposureForecast forecast, Optional<ExposedPair> pair) {
    forecast
        .settings()
        .intervalDays()
        .ifPresent(interval -> page.fact("Best pair of days", words(pair, interval)));
  }

  static String sentence(ExposureForecast forecast) {
    return forecast
        .bestDay()
        .map(
            best ->
                "A treatment on "
                    + best.day()
                    + " exposes "
                    + perCent(best.mean())
                    + " of the "
                    + forecast.target().stage().words()
                    + " on the mean (8 in 10: "
                    + perCent(best.low())
                    + " to "
                    + perCent(best.high())
                    + "); "
                    + perCent(best.gone())
                    + " are gone by then. It is the best day with a chance of "
                    + perCent(best.chanceBest())
                    + ".")
        .orElse("No day is left on which a treatment would reach this stage.");
  }

  private static String ifItComes(ExposureForecast forecast) {
    return forecast
        .bestDay()
        .map(
            best ->
                perCent(best.mean() / (1 - forecast.chanceNotThisSeason()))
                    + " exposed on the mean")
        .orElse("none");
  }

  /** The steps to the mean share of a day. */
  static Working working(ExposureForecast forecast, ExposedDay day) {
    double met = 1 - day.toCome() - day.gone();
    var working =
        Working.of("Exposed share of a treatment on " + day.day())
            .step("entered the stage before the residue ends", "in", "", share(1 - day.toCome()))
            .step("left the stage before the treatment", "out", "", share(day.gone()))
            .step(
                "there while the residue lasts",
                "in − out",
                share(1 - day.toCome()) + " − " + share(day.gone()),
                share(met));
    boolean fades = !(forecast.residue().decay() instanceof ResidueDecay.Steady);
    return fades || forecast.residue().actsAfterDays() > 0
        ? working.step(
            "less what the fading effect and the time of contact cost",
            "",
            forecast.residue().toString(),
            share(day.mean()))
        : working;
  }

  private static String share(double share) {
    return Numbers.fixed(100 * share, 1) + "\u00a0%";
  }

  private static String dates(ExposureForecast forecast) {
    var interval = forecast.bestDates().interval(0.9);
    if (interval.from().isEmpty()) {
      return "not this season";
    }
    return interval.from().get()
        + " to "
        + interval.to().map(LocalDate::toString).orElse("later or not this season");
  }

  private static String words(Optional<ExposedPair> found, int interval) {
    return found
        .map(
            pair ->
                pair.first()
                    + " and "
                    + pair.second()
                    + ", exposed "
                    + perCent(pair.mean())
                    + " on the mean (8 in 10: "
                    + perCent(pair.low())
                    + " to "
                    + perCent(pair.high())
                    + "), at least "
                    + interval
                    + " days apart; best pair with a chance of "
                    + perCent(pair.chanceBest()))
        .orElse("none: no two of the days are " + interval + " days apart");
  }

  static List<Reference> sources(ExposureForecast forecast) {
    var sources = new LinkedHashSet<Reference>();
    var structure = forecast.target().structure();
    sources.add(structure.source());
    forecast
        .target()
        .before()
        .forEach(each -> each.spread().ifPresent(s -> sources.add(s.source())));
    forecast.target().during().spread().ifPresent(each -> sources.add(each.source()));
    forecast
        .courses()
        .forecast()
        .ifPresent(each -> sources.add(each.season().model().method().source()));
    return List.copyOf(sources);
  }
}
