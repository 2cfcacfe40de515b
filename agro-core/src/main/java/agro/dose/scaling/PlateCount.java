package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.report.InputProblem;
import agro.units.CountPerVolume;
import agro.units.Counted;
import agro.units.QuantityRange;
import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.hipparchus.distribution.continuous.GammaDistribution;

/**
 * Colony-forming units from plates: colonies / (plated volume × dilution). Several plates are
 * pooled, so that a plate with more sample counts for more: sum of colonies / sum of sample. Plates
 * outside the countable range are marked and left out, unless none is inside.
 *
 * @param plates the plates, at least one
 * @param countable how many colonies a plate may carry
 */
public record PlateCount(List<CountedPlate> plates, CountableRange countable) {

  private static final double TAIL = 0.025;

  /** Copies the list and refuses an empty one. */
  public PlateCount {
    plates = List.copyOf(plates);
    Objects.requireNonNull(countable, "countable");
    if (plates.isEmpty()) {
      throw InputProblem.of("no plate is given")
          .expected("at least one plate with its colonies")
          .because("a sample without a plate is not known, which is not the same as zero")
          .mend("enter colonies, plated volume and dilution of each plate");
    }
  }

  /**
   * One plate.
   *
   * @param plate the plate
   * @param countable how many colonies a plate may carry
   * @return the count
   */
  public static PlateCount of(CountedPlate plate, CountableRange countable) {
    return new PlateCount(List.of(plate), countable);
  }

  /**
   * Counts.
   *
   * @return concentration of the undiluted sample with its 95 % interval, marks and steps
   */
  public PlateCountResult evaluate() {
    var marks = plates.stream().map(plate -> countable.mark(plate.colonies())).toList();
    var used = new ArrayList<CountedPlate>();
    for (int i = 0; i < plates.size(); i++) {
      if (marks.get(i) == PlateMark.COUNTABLE) {
        used.add(plates.get(i));
      }
    }
    boolean estimateOnly = used.isEmpty();
    if (estimateOnly) {
      used.addAll(plates);
    }
    long colonies = used.stream().mapToLong(CountedPlate::colonies).sum();
    double sample = used.stream().mapToDouble(CountedPlate::sampleMillilitres).sum();
    var concentration = perMillilitre(colonies / sample);
    return new PlateCountResult(
        concentration,
        interval(colonies, sample),
        marks,
        findings(marks, estimateOnly),
        working(colonies, sample, used, concentration));
  }

  /** Exact Poisson limits of the count, which hold the chance of spreading and nothing else. */
  private static QuantityRange<CountPerVolume> interval(long colonies, double sample) {
    double low =
        colonies == 0 ? 0 : new GammaDistribution(colonies, 1).inverseCumulativeProbability(TAIL);
    double high = new GammaDistribution(colonies + 1, 1).inverseCumulativeProbability(1 - TAIL);
    return new QuantityRange<>(perMillilitre(low / sample), perMillilitre(high / sample));
  }

  private static CountPerVolume perMillilitre(double number) {
    return new CountPerVolume(number, Counted.COLONY_FORMING_UNITS);
  }

  private List<DoseFinding> findings(List<PlateMark> marks, boolean estimateOnly) {
    var findings = new ArrayList<DoseFinding>();
    for (int i = 0; i < marks.size(); i++) {
      if (marks.get(i) != PlateMark.COUNTABLE) {
        var words =
            "plate "
                + (i + 1)
                + " has "
                + plates.get(i).colonies()
                + " colonies, "
                + marks.get(i).words();
        var rule = "countable range " + countable;
        findings.add(
            estimateOnly
                ? Findings.warning(
                    rule, words + "; no plate is in the range, so the figure is a rough estimate")
                : Findings.note(rule, words + "; the plate was left out"));
      }
    }
    return findings;
  }

  private Working working(
      long colonies, double sample, List<CountedPlate> used, CountPerVolume concentration) {
    return Working.of("Plate count")
        .step(
            "sample on the plates",
            "plated volume × dilution, summed",
            String.join(" + ", used.stream().map(CountedPlate::sampleText).toList()),
            PowerOfTen.print(sample) + " mL of undiluted sample")
        .step(
            "concentration of the sample",
            "colonies / sample",
            colonies + " / " + PowerOfTen.print(sample) + " mL",
            PowerOfTen.print(concentration.perMillilitre()) + " CFU/mL",
            ScalingSources.PLATE_COUNT,
            countable.source())
        .step(
            "interval",
            "",
            "",
            "95 % limits of a Poisson count, for the chance of spreading alone; pipetting comes on"
                + " top",
            ScalingSources.GARWOOD)
        .withCautions(Caution.all());
  }
}
