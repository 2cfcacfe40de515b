package agro.notebook.figure;

import agro.generation.skill.Hindcast;
import agro.generation.skill.HindcastForecast;
import agro.generation.skill.HindcastScheme;
import agro.generation.skill.LeadTime;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Forecasts of past seasons beside what came, a panel for each lead: the 80 % interval of every
 * forecast as an upright bar, measured from the observed date, on the observed date.
 */
public final class HindcastFigure {

  private HindcastFigure() {}

  /**
   * Draws the forecasts of one scheme.
   *
   * @param hindcast the forecasts
   * @param scheme which seasons they learnt from
   * @return the figure
   */
  public static DrawnFigure of(Hindcast hindcast, HindcastScheme scheme) {
    var panels = new HindcastPlot(hindcast, scheme).panels();
    var sheet =
        new FigureSheet(
            FigureWords.sentence(hindcast.pest())
                + ", "
                + hindcast.place()
                + ": forecasts beside what came",
            FigureWords.sentence(scheme.words())
                + ". Bar: the date lies within, 8 in 10. Mark: the median; hollow where the bar"
                + " missed.",
            panels);
    return new DrawnFigure(
        sheet, alternative(hindcast, scheme), caption(hindcast, scheme), data(hindcast, scheme));
  }

  static List<HindcastForecast> at(Hindcast hindcast, HindcastScheme scheme, LeadTime lead) {
    return hindcast.forecasts(scheme, Optional.empty(), Optional.of(lead));
  }

  private static String alternative(Hindcast hindcast, HindcastScheme scheme) {
    return hindcast.plan().leads().stream()
        .map(lead -> sentence(hindcast, scheme, lead))
        .collect(
            Collectors.joining(
                "; ",
                "Forecasts of "
                    + hindcast.pest()
                    + " at "
                    + hindcast.place()
                    + " for past seasons, "
                    + scheme.words()
                    + ": ",
                "."));
  }

  private static String sentence(Hindcast hindcast, HindcastScheme scheme, LeadTime lead) {
    var scores = hindcast.scores(scheme, lead);
    if (scores.forecasts() == 0) {
      return lead.issuedWords() + ": no forecast";
    }
    return lead.issuedWords()
        + ": "
        + scores.forecasts()
        + " forecasts, mean absolute error "
        + Numbers.fixed(scores.meanAbsoluteErrorDays(), 1)
        + " days, bias "
        + Numbers.fixed(scores.biasDays(), 1)
        + " days, "
        + scores.coverage().get(1).inside()
        + " dates inside the 80 % interval";
  }

  private static String caption(Hindcast hindcast, HindcastScheme scheme) {
    return "Forecasts of "
        + hindcast.observed().size()
        + " past seasons, each from what was known on its day of issue; "
        + scheme.words()
        + ". Above the line a forecast is late, below it early. Dates observed are those that the"
        + " counts of the whole season tell. Forecasts of one season stand and fall together.";
  }

  private static ResultTable data(Hindcast hindcast, HindcastScheme scheme) {
    var rows = new ArrayList<List<Cell>>();
    for (var lead : hindcast.plan().leads()) {
      for (var each : at(hindcast, scheme, lead)) {
        rows.add(
            List.of(
                Cell.text(lead.words()),
                Cell.text(Integer.toString(each.year())),
                Cell.text(each.event().words()),
                each.observed().came()
                    ? Cell.day(each.observed().day(each.firstDay()))
                    : Cell.text(FigureWords.NOT_THIS_SEASON),
                Cell.number(each.errorDays(), 1),
                Cell.number(HindcastPlot.from(each, 0.1), 1),
                Cell.number(HindcastPlot.from(each, 0.9), 1)));
      }
    }
    return ResultTable.of(
        "Forecast less observed date",
        List.of(
            Column.of("Issued"),
            Column.of("Season"),
            Column.of("Event"),
            Column.of("Observed"),
            Column.of("Median", "d"),
            Column.of("8 in 10 from", "d"),
            Column.of("8 in 10 to", "d")),
        rows);
  }
}
