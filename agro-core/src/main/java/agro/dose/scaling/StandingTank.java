package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.units.WorkTime;
import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * What is left of an active ingredient when the mixed tank stands: share left = 0.5^(time /
 * half-life). Half-lives are given for a stated pH. Where the tank lies between two of them both
 * are shown and nothing is interpolated; where it lies outside, the share is not known and refused.
 *
 * @param halfLives stated half-lives, at least one, each for another pH
 * @param acidity pH of the water in the tank, measured with the product in it
 * @param standing time from mixing to spraying, 0 or more
 */
public record StandingTank(List<HydrolysisHalfLife> halfLives, double acidity, WorkTime standing) {

  /** A pH is printed and measured to a tenth; nearer figures are the same. */
  private static final double SAME_ACIDITY = 0.05 + 1e-9;

  /** Sorts the half-lives and refuses a tank that they do not cover. */
  public StandingTank {
    Objects.requireNonNull(standing, "standing");
    HydrolysisHalfLife.requireAcidity(acidity);
    halfLives =
        halfLives.stream().sorted(Comparator.comparingDouble(HydrolysisHalfLife::acidity)).toList();
    if (halfLives.isEmpty()) {
      throw InputProblem.of("no half-life is given")
          .expected("at least one half-life with the pH for which it is stated")
          .because("how fast an active ingredient breaks down is a property of it, never guessed")
          .mend("look it up on the label or in a handbook, and enter its source");
    }
    for (int i = 1; i < halfLives.size(); i++) {
      if (halfLives.get(i).acidity() == halfLives.get(i - 1).acidity()) {
        throw InputProblem.of("two half-lives for pH " + Numbers.plain(halfLives.get(i).acidity()))
            .expected("one half-life for each pH")
            .because("there is no telling which of the two holds")
            .mend("keep the one whose temperature is nearer to that of the tank");
      }
    }
    double least = halfLives.get(0).acidity();
    double most = halfLives.get(halfLives.size() - 1).acidity();
    if (acidity < least - SAME_ACIDITY || acidity > most + SAME_ACIDITY) {
      throw InputProblem.of("the pH of the tank is " + Numbers.plain(acidity))
          .expected(
              "a pH for which a half-life is stated, or one between two: "
                  + Numbers.plain(least)
                  + (least == most ? "" : " to " + Numbers.plain(most)))
          .because("a half-life may change tenfold with one step of pH")
          .mend(
              "look up the half-life for the pH of the tank, or bring the tank to a stated pH as"
                  + " the label allows");
    }
  }

  /**
   * Works out the share that is left.
   *
   * @return share left, low and high, and the steps
   */
  public StandingTankResult evaluate() {
    var used =
        halfLives.stream()
            .filter(one -> Math.abs(one.acidity() - acidity) <= SAME_ACIDITY)
            .toList();
    boolean between = used.isEmpty();
    if (between) {
      int above = 0;
      while (halfLives.get(above).acidity() < acidity) {
        above++;
      }
      used = List.of(halfLives.get(above - 1), halfLives.get(above));
    }
    double low = 1;
    double high = 0;
    var working = Working.of("Share left in a standing tank");
    for (var one : used) {
      double share = shareLeft(one);
      low = Math.min(low, share);
      high = Math.max(high, share);
      working =
          working.step(
              "share left at " + one.circumstances(),
              "0.5^(time / half-life)",
              "0.5^("
                  + QuantityStyle.METRIC.print(standing)
                  + " / "
                  + QuantityStyle.METRIC.print(one.halfLife())
                  + ")",
              Numbers.significant(100 * share, 3) + " %",
              one.source(),
              ScalingSources.FIRST_ORDER);
    }
    return new StandingTankResult(
        low, high, findings(between, used), working.withCautions(Caution.all()));
  }

  private double shareLeft(HydrolysisHalfLife one) {
    return Math.pow(0.5, standing.ratioTo(one.halfLife()));
  }

  private List<DoseFinding> findings(boolean between, List<HydrolysisHalfLife> used) {
    var findings = new ArrayList<DoseFinding>();
    if (between) {
      findings.add(
          Findings.warning(
              "pH of the tank",
              "half-lives are stated for pH "
                  + Numbers.plain(used.get(0).acidity())
                  + " and "
                  + Numbers.plain(used.get(1).acidity())
                  + ", the tank has "
                  + Numbers.plain(acidity)
                  + "; the share left is known only as far as it lies between the two"));
    }
    for (var one : used) {
      if (one.at().isEmpty()) {
        findings.add(
            Findings.note(
                "temperature of the tank",
                "for which temperature the half-life at pH "
                    + Numbers.plain(one.acidity())
                    + " is stated is not recorded; a warmer tank loses faster"));
      }
    }
    return findings;
  }
}
