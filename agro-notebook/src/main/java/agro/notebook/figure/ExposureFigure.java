package agro.notebook.figure;

import agro.programme.window.ExposedDay;
import agro.programme.window.ExposureForecast;
import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.List;

/**
 * What a treatment would expose of the stage that it is to hit, by the day of treatment: the mean
 * share with its band, what is gone by then, what comes too late for it, the best day and, where
 * one was asked for, the best pair.
 */
public final class ExposureFigure {

  private ExposureFigure() {}

  /**
   * Draws the days of treatment that were weighed.
   *
   * @param exposure the days with their shares
   * @return the figure
   * @throws InputProblem when no day exposes anything, so that there is nothing to draw
   */
  public static DrawnFigure of(ExposureForecast exposure) {
    var best =
        exposure
            .bestDay()
            .orElseThrow(
                () ->
                    InputProblem.of("an exposure forecast in which no day exposes anything")
                        .expected("at least one day on which the stage is there")
                        .because("the stage is over, or does not come this season")
                        .mend("ask for a later generation"));
    var sheet =
        new FigureSheet(
            FigureWords.sentence(exposure.target().stage().words())
                + " that a treatment exposes, by its day",
            "Blue: mean share of the generation, 8 in 10 within the band. Dashed: gone before."
                + " Dotted: too late for it, or not this season.",
            List.of(new ExposurePlot(exposure, best).panel()));
    return new DrawnFigure(sheet, alternative(exposure, best), caption(exposure), exposure.table());
  }

  static String percent(double share) {
    return Numbers.fixed(100 * share, 0) + " %";
  }

  private static String alternative(ExposureForecast exposure, ExposedDay best) {
    var words =
        "The share that is exposed rises to "
            + percent(best.mean())
            + " for a treatment on "
            + FigureWords.longDay(best.day())
            + " (8 in 10: "
            + percent(best.low())
            + " to "
            + percent(best.high())
            + "), when "
            + percent(best.gone())
            + " are gone and "
            + percent(best.toCome())
            + " come too late, and falls again.";
    return exposure
        .bestPair()
        .map(
            pair ->
                words
                    + " The best pair of days is "
                    + FigureWords.day(pair.first())
                    + " and "
                    + FigureWords.day(pair.second())
                    + ", "
                    + percent(pair.mean())
                    + " together.")
        .orElse(words);
  }

  private static String caption(ExposureForecast exposure) {
    return FigureWords.sentence(exposure.courses().pest())
        + ", generation "
        + exposure.courses().generation()
        + ", as of "
        + FigureWords.longDay(exposure.courses().asOf())
        + ". Treatment: "
        + exposure.residue()
        + ". Exposed is not killed: whether a treatment is needed is for the count in the field, and"
        + " which one is allowed is for the label.";
  }
}
