package agro.dose;

import agro.report.InputProblem;
import agro.units.Area;
import agro.units.Length;
import agro.units.Numbers;
import agro.units.QuantityStyle;

/**
 * The share of a field that gets wet. Amount per field area = amount per treated area × share. A
 * label's hectare is the hectare that gets wet, so limits are compared on treated ground.
 */
public sealed interface TreatedShare {

  /**
   * The share as a number.
   *
   * @return treated ground over field, above 0 and up to 1
   */
  double number();

  /**
   * How the share comes about.
   *
   * @param style units of the reader
   * @return a phrase without a full stop
   */
  String print(QuantityStyle style);

  /**
   * Bands over the rows.
   *
   * @param bandWidth width that gets wet
   * @param rowSpacing distance from row to row
   * @return band width over row spacing
   * @throws InputProblem if a width is not above zero or the bands overlap
   */
  static TreatedShare ofBands(Length bandWidth, Length rowSpacing) {
    return new Bands(bandWidth, rowSpacing);
  }

  /**
   * Spots or patches of a field.
   *
   * @param treated ground that gets wet
   * @param field the whole field
   * @return treated area over field area
   * @throws InputProblem if an area is not above zero or the treated area is larger than the field
   */
  static TreatedShare ofArea(Area treated, Area field) {
    return new Patches(treated, field);
  }

  /**
   * The dose per area of field of a rate on treated ground.
   *
   * @param onTreated product per treated area
   * @return rate × share
   */
  default ProductPerArea overField(ProductPerTreatedArea onTreated) {
    return new ProductPerArea(onTreated.amount().times(number()), onTreated.per());
  }

  /**
   * The dose on treated ground of a rate that is counted over the field.
   *
   * @param overField product per area of field
   * @return rate ÷ share
   */
  default ProductPerTreatedArea onTreated(ProductPerArea overField) {
    return new ProductPerTreatedArea(overField.amount().times(1 / number()), overField.per());
  }

  private static void requireShare(double part, double whole, String words, String cure) {
    if (!(part > 0 && whole > 0 && part <= whole && whole < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of(words)
          .expected("a part above zero that is not larger than the whole")
          .because("the treated share is the part over the whole, and limits are held against it")
          .mend(cure);
    }
  }

  /**
   * Bands over the rows.
   *
   * @param bandWidth width that gets wet, above zero and not above the row spacing
   * @param rowSpacing distance from row to row
   */
  record Bands(Length bandWidth, Length rowSpacing) implements TreatedShare {
    /** Refuses bands that do not fit between the rows. */
    public Bands {
      requireShare(
          bandWidth.metres(),
          rowSpacing.metres(),
          "bands of " + bandWidth + " on rows of " + rowSpacing,
          "write the band width first and the row spacing second, and look at both units");
    }

    @Override
    public double number() {
      return bandWidth.ratioTo(rowSpacing);
    }

    @Override
    public String print(QuantityStyle style) {
      return "bands of " + style.print(bandWidth) + " on rows of " + style.print(rowSpacing);
    }
  }

  /**
   * Spots or patches of a field.
   *
   * @param treated ground that gets wet, above zero and not above the field
   * @param field the whole field
   */
  record Patches(Area treated, Area field) implements TreatedShare {
    /** Refuses patches that do not fit into the field. */
    public Patches {
      requireShare(
          treated.squareMetres(),
          field.squareMetres(),
          treated + " treated of a field of " + field,
          "write the ground that gets wet first and the field second, and look at both units");
    }

    @Override
    public double number() {
      return treated.ratioTo(field);
    }

    @Override
    public String print(QuantityStyle style) {
      return Numbers.significant(100 * number(), style.digits()) + " % of the ground gets wet";
    }
  }
}
