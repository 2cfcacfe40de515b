package agro.trial.bioassay;

import agro.report.InputProblem;
import agro.stats.glm.LinkFunction;
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
 * Doses and numbers for an assay to come, from a guess at its curve: evenly spaced on log10 dose
 * between two shares, and the precision to be expected from the information about the curve.
 *
 * @param axis what the doses measure
 * @param link link of the curve
 * @param medianDose guess at the dose for one half, above 0
 * @param slope guess at the slope on log10 dose, above 0
 * @param doses the doses, rising
 */
public record BioassayDesign(
    DoseAxis axis, LinkFunction link, double medianDose, double slope, List<Double> doses)
    implements Presentable {

  private static final int TABLE_STEP = 10;

  /** Copies the doses and refuses guesses that make no curve. */
  public BioassayDesign {
    Objects.requireNonNull(axis, "axis");
    doses = List.copyOf(doses);
    if (!(medianDose > 0 && slope > 0) || doses.size() < 2 || !link.isForProportions()) {
      throw InputProblem.of(
              "a guess of " + medianDose + " with slope " + slope + ", " + doses.size() + " doses")
          .expected("a dose and a slope above 0, two doses or more, a link for shares")
          .because("precision is reckoned from a rising curve")
          .mend("take the guesses from an earlier assay or from three widely spaced doses");
    }
  }

  /**
   * Doses spaced evenly on log10 dose.
   *
   * @param axis what the doses measure
   * @param link link of the curve
   * @param medianDose guess at the dose for one half
   * @param slope guess at the slope on log10 dose
   * @param number doses, at least 2
   * @param lowestPercent share to be expected at the lowest dose
   * @param highestPercent share to be expected at the highest dose
   * @return the design
   * @throws InputProblem when the guesses or shares make no curve
   */
  public static BioassayDesign spaced(
      DoseAxis axis,
      LinkFunction link,
      double medianDose,
      double slope,
      int number,
      double lowestPercent,
      double highestPercent) {
    if (!(lowestPercent > 0 && lowestPercent < highestPercent && highestPercent < 100)
        || number < 2) {
      throw InputProblem.of(
              number + " doses from " + lowestPercent + " % to " + highestPercent + " %")
          .expected("two doses or more between rising shares above 0 and below 100")
          .because("doses are laid between the two shares")
          .mend("take for example 5 doses from 10 % to 90 %");
    }
    double middle = link.eta(0.5);
    double from = Math.log10(medianDose) + (link.eta(lowestPercent / 100) - middle) / slope;
    double to = Math.log10(medianDose) + (link.eta(highestPercent / 100) - middle) / slope;
    var doses = new ArrayList<Double>();
    for (int i = 0; i < number; i++) {
      doses.add(Math.pow(10, from + (to - from) * i / (number - 1)));
    }
    return new BioassayDesign(axis, link, medianDose, slope, doses);
  }

  /**
   * Standard error of log10 LD to be expected.
   *
   * @param percent level of the lethal dose
   * @param animals animals at each dose
   * @return standard error of its log10
   */
  public double standardError(double percent, double animals) {
    double centre = Math.log10(medianDose);
    double middle = link.eta(0.5);
    double aa = 0;
    double ab = 0;
    double bb = 0;
    for (double dose : doses) {
      double z = Math.log10(dose) - centre;
      double eta = middle + slope * z;
      double weight =
          animals * link.slope(eta) / link.mean(eta) * (link.slope(eta) / link.complement(eta));
      aa += weight;
      ab += weight * z;
      bb += weight * z * z;
    }
    double determinant = aa * bb - ab * ab;
    double place = (link.eta(percent / 100) - middle) / slope;
    return Math.sqrt((bb - 2 * place * ab + place * place * aa) / determinant) / slope;
  }

  /**
   * Animals at each dose so that the limits of a lethal dose lie a stated factor from it.
   *
   * @param percent level of the lethal dose
   * @param factor dose over its lower limit, above 1, for example 1.25
   * @param confidence of the limits
   * @return animals at each dose, rounded up
   * @throws InputProblem when the factor is not above 1
   */
  public int animalsFor(double percent, double factor, double confidence) {
    if (!(factor > 1)) {
      throw InputProblem.of("limits a factor of " + Numbers.plain(factor) + " from the dose")
          .expected("a factor above 1")
          .because("no number of animals gives limits without width")
          .mend("take for example 1.25, a quarter above and a fifth below");
    }
    double wanted = Math.log10(factor) / Deviates.normal(confidence);
    double one = standardError(percent, 1);
    return (int) Math.ceil(one * one / (wanted * wanted));
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    double t = Deviates.normal(0.95);
    for (int animals = TABLE_STEP; animals <= 10 * TABLE_STEP; animals += TABLE_STEP) {
      rows.add(
          List.of(
              Cell.number(animals, 0),
              Cell.number(Math.pow(10, t * standardError(50, animals)), 3),
              Cell.number(Math.pow(10, t * standardError(90, animals)), 3)));
    }
    return Presentation.titled("Doses for an assay to come")
        .fact("Doses", String.join(", ", doses.stream().map(axis::print).toList()))
        .fact(
            "Guess",
            "LD50 "
                + axis.print(medianDose)
                + ", slope "
                + Numbers.significant(slope, 4)
                + " on log10 dose, "
                + FitPrint.link(link))
        .table(
            ResultTable.of(
                "Precision to be expected",
                List.of(
                    Column.of("Animals at each dose"),
                    Column.of("Factor from LD50 to its limits"),
                    Column.of("Factor from LD90 to its limits")),
                rows))
        .paragraph(
            "Limits of 95 % by the delta method, without heterogeneity; a control has to be added.")
        .cautions(Caution.all())
        .sources(List.of(BioassaySources.FINNEY_1971))
        .build();
  }
}
