package agro.dose.scaling;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;

/**
 * The total hardness of the water in the tank.
 *
 * @param value number in the unit, finite and 0 or more
 * @param unit the unit
 */
public record WaterHardness(double value, HardnessUnit unit) {

  /** Refuses numbers that no water has. */
  public WaterHardness {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of("a hardness of " + Numbers.plain(value) + " " + unit.symbol())
          .expected("a finite number of 0 or more")
          .because("water never holds less than no calcium and magnesium")
          .mend("copy the figure from the test of the water");
    }
  }

  /**
   * A hardness as people write it.
   *
   * @param text number and unit, for example {@code "12 °dH"}
   * @return the hardness
   * @throws InputProblem if the number or the unit is not clear; a bare degree or ppm is refused
   */
  public static WaterHardness parse(String text) {
    var stripped = text.strip();
    int end = 0;
    while (end < stripped.length() && "0123456789.".indexOf(stripped.charAt(end)) >= 0) {
      end++;
    }
    var written = stripped.substring(end).strip();
    for (var unit : HardnessUnit.values()) {
      if (unit.isWritten(written) && end > 0) {
        return new WaterHardness(number(stripped.substring(0, end), text), unit);
      }
    }
    throw InputProblem.of("\"" + text + "\" was read as a hardness of water")
        .expected("a number with one of " + symbols())
        .because("a degree of hardness is 10, 14.25 or 17.85 mg/L CaCO3, depending on the country")
        .mend("write the number with the unit of the water test, for example \"12 °dH\"");
  }

  /**
   * The number in another unit.
   *
   * @param wanted the unit
   * @return the number, not rounded
   */
  public double in(HardnessUnit wanted) {
    return wanted == unit ? value : wanted.factor().convertBack(unit.factor().convert(value));
  }

  /**
   * The hardness in all units.
   *
   * @return the numbers and the steps
   */
  public HardnessConversion evaluate() {
    var numbers = new EnumMap<HardnessUnit, Double>(HardnessUnit.class);
    double carbonate = in(HardnessUnit.MILLIGRAM_CALCIUM_CARBONATE_PER_LITRE);
    var carbonateText = Numbers.significant(carbonate, 6) + " mg/L CaCO3";
    var working =
        Working.of("Hardness of the water")
            .step(
                "as calcium carbonate",
                "number × size of the unit",
                Numbers.plain(value)
                    + " × "
                    + Numbers.significant(unit.factor().convert(1), 6)
                    + " mg/L CaCO3",
                carbonateText,
                ScalingSources.HARDNESS_DEGREES);
    for (var other : HardnessUnit.values()) {
      numbers.put(other, in(other));
      if (other != HardnessUnit.MILLIGRAM_CALCIUM_CARBONATE_PER_LITRE) {
        working =
            working.step(
                "in " + other.symbol(),
                "mg/L CaCO3 / size of the unit",
                carbonateText + " / " + Numbers.significant(other.factor().convert(1), 6),
                Numbers.significant(in(other), 5) + " " + other.symbol());
      }
    }
    return new HardnessConversion(numbers, working.withCautions(Caution.all()));
  }

  private static double number(String digits, String text) {
    try {
      return Double.parseDouble(digits);
    } catch (NumberFormatException problem) {
      var refusal =
          InputProblem.of("\"" + text + "\" begins with \"" + digits + "\"")
              .expected("a number with at most one decimal point")
              .because("the hardness is that number of its unit")
              .mend("write it as 12 or 12.5");
      refusal.initCause(problem);
      throw refusal;
    }
  }

  private static String symbols() {
    List<String> symbols = new ArrayList<>();
    for (var unit : HardnessUnit.values()) {
      symbols.add(unit.symbol());
    }
    return String.join(", ", symbols);
  }

  @Override
  public String toString() {
    return Numbers.plain(value) + " " + unit.symbol();
  }
}
