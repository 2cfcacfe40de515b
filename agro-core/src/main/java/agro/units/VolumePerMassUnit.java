package agro.units;

/** The usual units of volume per mass. {@link VolumePerMass#unit} puts together any other. */
public enum VolumePerMassUnit implements Unit<VolumePerMass> {
  /** Millilitre per kilogram. */
  MILLILITRE_PER_KILOGRAM(VolumeUnit.MILLILITRE, MassUnit.KILOGRAM),
  /** Millilitre per 100 kilograms. */
  MILLILITRE_PER_100_KILOGRAMS(VolumeUnit.MILLILITRE, UnitMultiple.of(100, MassUnit.KILOGRAM)),
  /** Litre per tonne. */
  LITRE_PER_TONNE(VolumeUnit.LITRE, MassUnit.TONNE),
  /** US fluid ounce per short hundredweight. */
  US_FLUID_OUNCE_PER_SHORT_HUNDREDWEIGHT(VolumeUnit.US_FLUID_OUNCE, MassUnit.SHORT_HUNDREDWEIGHT);

  private final Unit<Volume> numerator;
  private final Unit<Mass> denominator;

  /** Made when it is first asked for: a program uses few of these units. */
  private UnitDefinition definition;

  VolumePerMassUnit(Unit<Volume> numerator, Unit<Mass> denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.VOLUME_PER_MASS;
  }

  @Override
  public UnitDefinition definition() {
    var known = definition;
    if (known == null) {
      known = RatioUnit.define(QuantityKind.VOLUME_PER_MASS, numerator, denominator);
      definition = known;
    }
    return known;
  }

  @Override
  public String toString() {
    return definition().symbol();
  }
}
