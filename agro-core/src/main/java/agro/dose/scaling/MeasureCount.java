package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.dose.ProductAmount;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How many measures an amount of product is. What can be measured out is shown beside what was
 * asked for, with the departure; nothing is rounded in silence.
 *
 * @param amount product to measure out, above zero
 * @param measure what it is measured with
 * @param parts into how many parts one measure can be divided: 1 for whole sachets, 2 for half
 *     spoons
 */
public record MeasureCount(ProductAmount amount, FieldMeasure measure, int parts) {

  private static final double ROUNDING = 1e-9;
  private static final int MOST_PARTS = 100;

  /** Refuses a powder in a measure of volume and parts that nobody can see. */
  public MeasureCount {
    if (!(amount.lowNumber() > 0)) {
      throw InputProblem.of("the amount to measure out is " + amount)
          .expected("more than zero")
          .because("none of it needs no measure")
          .mend("state the amount for one load");
    }
    if (!amount.isLike(measure.holds())) {
      throw InputProblem.of(amount + " is to be measured with a measure of " + measure.holds())
          .expected("a volume in a measure of volume, a mass in a measure of mass")
          .because(
              "millilitres of a powder are not its grams: a level tablespoon holds 5 to 14 g,"
                  + " depending on the powder")
          .mend(
              "weigh it, or weigh ten level measures of this powder and state its bulk density with"
                  + " filledWith");
    }
    if (parts < 1 || parts > MOST_PARTS) {
      throw InputProblem.of("a measure is divided into " + parts + " parts")
          .expected("1 to " + MOST_PARTS)
          .because("a part has to be seen to be measured")
          .mend("take 1 for sachets, 2 for spoons that are filled by half");
    }
  }

  /**
   * Whole measures only.
   *
   * @param amount product to measure out
   * @param measure what it is measured with
   * @return the count
   */
  public static MeasureCount whole(ProductAmount amount, FieldMeasure measure) {
    return new MeasureCount(amount, measure, 1);
  }

  /**
   * Counts, printed in metric units.
   *
   * @return exact counts, what can be measured out, and the steps
   */
  public MeasureCountResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Counts.
   *
   * @param style units of print
   * @return exact counts, what can be measured out, and the steps
   */
  public MeasureCountResult evaluate(QuantityStyle style) {
    Objects.requireNonNull(style, "style");
    double one = measure.holds().lowNumber();
    double low = amount.lowNumber() / one;
    double high = amount.highNumber() / one;
    var choices = choices(low, high);
    var exact = Numbers.significant(low, 4);
    var exactHigh = Numbers.significant(high, 4);
    var working =
        Working.of("Measures of the field")
            .step(
                "measures",
                "amount / content of one measure",
                amount.print(style) + " / " + measure.holds().print(style),
                (exact.equals(exactHigh) ? exact : exact + " to " + exactHigh) + " × " + measure,
                measure.isSpoon() ? ScalingSources.SPOONS : ScalingSources.UNITS_ALONE);
    for (var choice : choices) {
      working =
          working.step(
              countText(choice.count()),
              "count × content of one measure",
              Numbers.significant(choice.count(), 5) + " × " + measure.holds().print(style),
              choice.amount().print(style) + ", " + choice.words());
    }
    return new MeasureCountResult(
        low, high, choices, findings(choices), working.withCautions(Caution.all()));
  }

  private String countText(double count) {
    return Numbers.significant(count, 5) + " × " + measure;
  }

  /** All that lie in the range, at most the ends; or the nearest below and above. */
  private List<MeasureCountResult.Choice> choices(double low, double high) {
    double fewest = Math.ceil(low * parts * (1 - ROUNDING)) / parts;
    double most = Math.floor(high * parts * (1 + ROUNDING)) / parts;
    var choices = new ArrayList<MeasureCountResult.Choice>();
    if (fewest <= most) {
      choices.add(choice(fewest, low, high));
      if (most > fewest) {
        choices.add(choice(most, low, high));
      }
      return choices;
    }
    if (most > 0) {
      choices.add(choice(most, low, high));
    }
    choices.add(choice(fewest, low, high));
    return choices;
  }

  private MeasureCountResult.Choice choice(double count, double low, double high) {
    double departure = 0;
    if (count < low * (1 - ROUNDING)) {
      departure = count / low - 1;
    } else if (count > high * (1 + ROUNDING)) {
      departure = count / high - 1;
    }
    return new MeasureCountResult.Choice(count, measure.holds().times(count), departure);
  }

  private List<DoseFinding> findings(List<MeasureCountResult.Choice> choices) {
    if (choices.get(0).departure() == 0) {
      return List.of();
    }
    var words = new ArrayList<String>();
    choices.forEach(choice -> words.add(countText(choice.count()) + " is " + choice.words()));
    return List.of(
        Findings.warning(
            "rounding to the measure",
            "no count gives the amount asked for: "
                + String.join("; ", words)
                + "; more than the label allows is never an answer"));
  }
}
