package agro.units;

/** The usual units of mass per area. {@link MassPerArea#unit} puts together any other. */
public enum MassPerAreaUnit implements Unit<MassPerArea> {
  /** Kilogram per hectare. */
  KILOGRAM_PER_HECTARE(MassUnit.KILOGRAM, AreaUnit.HECTARE),
  /** Gram per hectare. */
  GRAM_PER_HECTARE(MassUnit.GRAM, AreaUnit.HECTARE),
  /** Tonne per hectare. */
  TONNE_PER_HECTARE(MassUnit.TONNE, AreaUnit.HECTARE),
  /** Kilogram per acre. */
  KILOGRAM_PER_ACRE(MassUnit.KILOGRAM, AreaUnit.ACRE),
  /** Gram per acre. */
  GRAM_PER_ACRE(MassUnit.GRAM, AreaUnit.ACRE),
  /** Pound per acre. */
  POUND_PER_ACRE(MassUnit.POUND, AreaUnit.ACRE),
  /** Ounce per acre. */
  OUNCE_PER_ACRE(MassUnit.OUNCE, AreaUnit.ACRE),
  /** Short ton per acre. */
  SHORT_TON_PER_ACRE(MassUnit.SHORT_TON, AreaUnit.ACRE),
  /** Gram per square metre. */
  GRAM_PER_SQUARE_METRE(MassUnit.GRAM, AreaUnit.SQUARE_METRE),
  /** Pound per 1000 square feet. */
  POUND_PER_1000_SQUARE_FEET(MassUnit.POUND, UnitMultiple.of(1000, AreaUnit.SQUARE_FOOT)),
  /** Ounce per 1000 square feet. */
  OUNCE_PER_1000_SQUARE_FEET(MassUnit.OUNCE, UnitMultiple.of(1000, AreaUnit.SQUARE_FOOT));

  private final Unit<Mass> numerator;
  private final Unit<Area> denominator;

  /** Made when it is first asked for: a program uses few of these units. */
  private UnitDefinition definition;

  MassPerAreaUnit(Unit<Mass> numerator, Unit<Area> denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.MASS_PER_AREA;
  }

  @Override
  public UnitDefinition definition() {
    var known = definition;
    if (known == null) {
      known = RatioUnit.define(QuantityKind.MASS_PER_AREA, numerator, denominator);
      definition = known;
    }
    return known;
  }

  @Override
  public String toString() {
    return definition().symbol();
  }
}
