package agro.units;

import java.util.Optional;

/**
 * What a text says, number by number and unit by unit, before it becomes a quantity of one kind.
 * Each kind has a method {@code from} that takes it over, for example {@link
 * VolumePerArea#from(ParsedQuantity)}.
 */
public sealed interface ParsedQuantity permits ParsedAmount, ParsedRate {

  /**
   * The text as it was written.
   *
   * @return the text
   */
  String text();

  /**
   * The number or the range above the line.
   *
   * @return the numbers in the unit that was written
   */
  NumberRange numbers();

  /**
   * What is measured.
   *
   * @return the kind; nothing for an amount per plant, per load or per another thing that no unit
   *     measures. A mass per volume may also be taken as a {@link Density}.
   */
  Optional<QuantityKind> kind();

  /**
   * What a reader should know about how the text was read.
   *
   * @return a sentence, or an empty text
   */
  String remark();
}
