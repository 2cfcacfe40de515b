package agro.trial.bioassay;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.List;
import java.util.Objects;

/**
 * A dose that should kill every susceptible animal, so that survivors point to resistance.
 *
 * @param susceptible the curve of the susceptible strain
 * @param rule how the dose follows from the curve
 * @param dose the dose on the axis of the assay
 */
public record DiscriminatingDose(DoseResponseFit susceptible, Rule rule, double dose)
    implements Presentable {

  /** How the dose follows from the curve of a susceptible strain. */
  public enum Rule {
    /** Twice the dose for 99 %. */
    TWICE_LD99("twice the LD99"),
    /** The upper limit of the dose for 99 %. */
    UPPER_LIMIT_OF_LD99("upper limit of the LD99");

    private final String words;

    Rule(String words) {
      this.words = words;
    }

    /**
     * The rule in words.
     *
     * @return a phrase
     */
    public String words() {
      return words;
    }
  }

  private static final double LEVEL = 99;

  /** Refuses nulls. */
  public DiscriminatingDose {
    Objects.requireNonNull(susceptible, "susceptible");
    Objects.requireNonNull(rule, "rule");
  }

  /**
   * The dose by a rule.
   *
   * @param susceptible the curve of the susceptible strain
   * @param rule how the dose follows from the curve
   * @return the dose
   * @throws InputProblem when the rule needs an upper limit and there is none, or twice a dose has
   *     no meaning on a plain scale that may hold logarithms
   */
  public static DiscriminatingDose of(DoseResponseFit susceptible, Rule rule) {
    var high = susceptible.lethalDose(LEVEL);
    if (rule == Rule.TWICE_LD99) {
      return new DiscriminatingDose(susceptible, rule, 2 * high.dose());
    }
    if (!high.limits().isBounded()) {
      throw InputProblem.of(
              "an LD99 with the limits " + susceptible.data().axis().limits(high.limits()))
          .expected("a bounded upper limit")
          .because("there is no upper limit to take for the dose")
          .mend("test more animals at high doses, or choose TWICE_LD99");
    }
    return new DiscriminatingDose(susceptible, rule, high.limits().high());
  }

  /**
   * Whether the dose lies above all doses that were tested.
   *
   * @return true when it rests on the line beyond the data
   */
  public boolean isBeyondTestedDoses() {
    return susceptible.data().groups().stream().mapToDouble(DoseGroup::dose).max().orElseThrow()
        < dose;
  }

  @Override
  public Presentation presentation() {
    var axis = susceptible.data().axis();
    var high = susceptible.lethalDose(LEVEL);
    var page =
        Presentation.titled("Discriminating dose: " + susceptible.data().title())
            .fact("Dose", axis.print(dose))
            .fact("Rule", rule.words())
            .fact("LD99", axis.print(high.dose()) + ", limits " + axis.limits(high.limits()))
            .fact(
                "Susceptible animals that it leaves alive, by the curve",
                Numbers.significant(100 * (1 - susceptible.responseAt(dose)), 2) + " %")
            .fact("End point", susceptible.data().endPoint().words());
    if (isBeyondTestedDoses()) {
      page.paragraph("The dose lies above all doses tested; it rests on the line alone.");
    }
    return page.paragraph(
            "Far from one half a curve depends on the link that was chosen. Try the dose on"
                + " susceptible animals of several rearings before survivors are called resistant.")
        .paragraph(FitPrint.LABORATORY)
        .cautions(Caution.all())
        .sources(List.of(BioassaySources.DISCRIMINATING_DOSE))
        .build();
  }
}
