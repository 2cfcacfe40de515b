package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.units.Mass;
import agro.units.Numbers;
import agro.units.QuantityRange;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Water that lifts manure or compost to a moisture. Dry matter stays: water to add = dry matter ×
 * (water per dry matter asked - water per dry matter there). On wet mass alone this is M × (t - m)
 * / (1 - t).
 *
 * <p>Check figures of the trade for 1000 kg: 133 and 214 kg lift 15 % to 25 and 30 %, all on the
 * wet basis. 62.5 and 105 kg hold where the heap has 15 % on the wet basis and only the 25 and 30 %
 * asked for are on dry matter; with 15 % on dry matter too it would be 87 and 130 kg.
 *
 * @param substrate mass as it lies, with its water, above zero
 * @param now moisture that it has
 * @param wanted moisture that is asked for
 */
public record WaterForMoisture(Mass substrate, SubstrateMoisture now, MoistureRange wanted) {

  /** Refuses a heap of nothing. */
  public WaterForMoisture {
    Objects.requireNonNull(now, "now");
    Objects.requireNonNull(wanted, "wanted");
    ScalingChecks.aboveZero(
        substrate,
        "mass of the substrate",
        "water is added in proportion to it",
        "weigh the heap, or its volume times its density");
  }

  /**
   * The dry matter of the heap.
   *
   * @return mass without water
   */
  public Mass dryMatter() {
    return substrate.dividedBy(1 + now.waterPerDryMatter());
  }

  /**
   * Works out the water, printed in metric units.
   *
   * @return the water to add, never below zero, and the steps
   */
  public WaterForMoistureResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Works out the water.
   *
   * @param style units of print
   * @return the water to add, never below zero, and the steps
   */
  public WaterForMoistureResult evaluate(QuantityStyle style) {
    var dry = dryMatter();
    var there = substrate.minus(dry);
    var low = missing(dry, wanted.low());
    var high = missing(dry, wanted.high());
    var water = new QuantityRange<>(low, high);
    var working = working(dry, there, water, style);
    return new WaterForMoistureResult(water, dry, findings(dry, there, style), working);
  }

  private Working working(Mass dry, Mass there, QuantityRange<Mass> water, QuantityStyle style) {
    double lowRatio = wanted.low().waterPerDryMatter();
    double highRatio = wanted.high().waterPerDryMatter();
    var asked = new QuantityRange<>(dry.times(lowRatio), dry.times(highRatio));
    var ratios = both(Numbers.significant(lowRatio, 4), Numbers.significant(highRatio, 4));
    return Working.of("Water to reach a moisture")
        .step(
            "dry matter",
            now instanceof WetBasisMoisture ? "wet mass × (1 - m)" : "wet mass / (1 + m)",
            style.print(substrate) + drynessText(),
            style.print(dry),
            ScalingSources.MOISTURE)
        .step(
            "water that is there",
            "wet mass - dry matter",
            style.print(substrate) + " - " + style.print(dry),
            style.print(there))
        .step(
            "water per dry matter that is asked for",
            wanted.high() instanceof WetBasisMoisture ? "t / (1 - t)" : "t, on dry matter",
            both(ratioText(wanted.low()), ratioText(wanted.high())),
            ratios + " kg to 1 kg of dry matter, for " + wanted,
            ScalingSources.MOISTURE)
        .step(
            "water that is asked for",
            "dry matter × water per dry matter",
            style.print(dry) + " × " + ratios,
            style.printRange(asked))
        .step(
            "water to add",
            "asked for - there, never below zero",
            style.printRange(asked) + " - " + style.print(there),
            style.printRange(water))
        .withCautions(Caution.all());
  }

  private String drynessText() {
    if (now instanceof WetBasisMoisture wet) {
      return " × (1 - " + Numbers.significant(wet.share(), 6) + ")";
    }
    return " / (1 + " + Numbers.significant(now.waterPerDryMatter(), 6) + ")";
  }

  private static String ratioText(SubstrateMoisture moisture) {
    if (moisture instanceof WetBasisMoisture wet) {
      var share = Numbers.significant(wet.share(), 6);
      return share + " / (1 - " + share + ")";
    }
    return Numbers.significant(moisture.waterPerDryMatter(), 6);
  }

  private static String both(String low, String high) {
    return low.equals(high) ? low : low + " to " + high;
  }

  private Mass missing(Mass dry, SubstrateMoisture moisture) {
    double more = moisture.waterPerDryMatter() - now.waterPerDryMatter();
    return more <= now.waterPerDryMatter() * 1e-12 ? new Mass(0) : dry.times(more);
  }

  private List<DoseFinding> findings(Mass dry, Mass there, QuantityStyle style) {
    var findings = new ArrayList<DoseFinding>();
    double has = now.waterPerDryMatter();
    double most = wanted.high().waterPerDryMatter();
    if (has > most * (1 + 1e-12)) {
      var surplus = there.minus(dry.times(most));
      findings.add(
          Findings.warning(
              "moisture",
              "the heap is already wetter than asked: it has "
                  + now
                  + ", asked are "
                  + wanted
                  + "; no water is added, and "
                  + style.print(surplus)
                  + " of water are too much"));
    } else if (has > wanted.low().waterPerDryMatter() * (1 + 1e-12)) {
      findings.add(
          Findings.note(
              "moisture",
              "the heap is already in the range asked for: it has "
                  + now
                  + ", asked are "
                  + wanted));
    }
    return findings;
  }
}
