package agro.dose;

import agro.units.QuantityStyle;

/**
 * A rate as a label states it. Each kind is a type of its own: product per area and product per
 * volume of spray may be written with the same units and cannot be taken for one another. A range
 * of the label stays a range.
 */
public sealed interface LabelRate permits ProductRate, ActiveRate {

  /**
   * Reads a rate as labels write it: "250-300 mL/acre", "50 mL per 100 L", "100 g ai/ha", "5 mL per
   * plant", "20 g per 1000 plants", "2 g per tray", "0.75 g per m row", "4 g per kg seed", "2 kg
   * per tonne manure (wet)", "0.5 L per 10000 m² LWA", "10 mL per spot", "0.2 % v/v".
   *
   * @param text the rate
   * @return the rate, whose type says what it is per
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text does not say what the rate is of or per
   */
  static LabelRate parse(String text) {
    return RateReader.read(text);
  }

  /**
   * What kind of rate this is.
   *
   * @return the kind
   */
  RateKind kind();

  /**
   * What stands below the line, as the label writes it.
   *
   * @return for example {@code "ac"}, {@code "100 L"} or {@code "1000 plants"}
   */
  String below();

  /**
   * Whether the rate is one amount and no range.
   *
   * @return true where low and high are the same
   */
  boolean isSingle();

  /**
   * The low end of the rate.
   *
   * @return a rate of the same kind with one amount
   */
  LabelRate low();

  /**
   * The high end of the rate.
   *
   * @return a rate of the same kind with one amount
   */
  LabelRate high();

  /**
   * The rate in a reader's units.
   *
   * @param style family of units and digits
   * @return for example {@code "618 to 741 mL/ha"}
   */
  String print(QuantityStyle style);
}
