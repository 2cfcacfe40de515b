package agro.notebook.figure;

import agro.course.practical.DoseSlip;
import agro.course.practical.DoseSlips;
import agro.units.Numbers;
import agro.working.Wording;
import java.util.List;

/**
 * Common slips by the dose that comes of them: a line for each, the dose given over the dose
 * intended on a logarithmic axis.
 */
public final class DoseSlipFigure {

  private DoseSlipFigure() {}

  /**
   * Draws slips family by family and, within a family, by their ratio.
   *
   * @param slips the slips
   * @return the figure, in the language of the slips
   */
  public static DrawnFigure of(DoseSlips slips) {
    var words = slips.wording();
    var sheet =
        new FigureSheet(
            words.say("figure.slips.heading"),
            words.say("figure.slips.sub"),
            List.of(new DoseSlipPlot(slips.byFamily(), words).panel()));
    return new DrawnFigure(
        sheet, alternative(slips, words), words.say("figure.slips.caption"), slips.table());
  }

  /** A ratio as it is printed: three digits after a sign of multiplication. */
  static String times(Wording words, double ratio) {
    return "\u00d7\u00a0" + words.quantity(Numbers.significant(ratio, 3));
  }

  private static String alternative(DoseSlips slips, Wording words) {
    var text =
        new StringBuilder(words.say("figure.slips.alternative", "slips", slips.kinds().size()));
    var separator = " ";
    for (DoseSlip slip : slips.byRatio()) {
      text.append(separator).append(slip.name()).append(' ').append(times(words, slip.ratio()));
      separator = "; ";
    }
    return text.append('.').toString();
  }
}
