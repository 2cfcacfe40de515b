package agro.units;

/** The usual units of flow. {@link FlowRate#unit} puts together any other. */
public enum FlowRateUnit implements Unit<FlowRate> {
  /** Litre per minute. */
  LITRE_PER_MINUTE(VolumeUnit.LITRE, WorkTimeUnit.MINUTE),
  /** Millilitre per minute. */
  MILLILITRE_PER_MINUTE(VolumeUnit.MILLILITRE, WorkTimeUnit.MINUTE),
  /** Millilitre per second. */
  MILLILITRE_PER_SECOND(VolumeUnit.MILLILITRE, WorkTimeUnit.SECOND),
  /** Litre per hour. */
  LITRE_PER_HOUR(VolumeUnit.LITRE, WorkTimeUnit.HOUR),
  /** US gallon per minute. */
  US_GALLON_PER_MINUTE(VolumeUnit.US_GALLON, WorkTimeUnit.MINUTE),
  /** Imperial gallon per minute. */
  IMPERIAL_GALLON_PER_MINUTE(VolumeUnit.IMPERIAL_GALLON, WorkTimeUnit.MINUTE),
  /** US fluid ounce per minute. */
  US_FLUID_OUNCE_PER_MINUTE(VolumeUnit.US_FLUID_OUNCE, WorkTimeUnit.MINUTE);

  private final Unit<Volume> numerator;
  private final Unit<WorkTime> denominator;

  /** Made when it is first asked for: a program uses few of these units. */
  private UnitDefinition definition;

  FlowRateUnit(Unit<Volume> numerator, Unit<WorkTime> denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.FLOW_RATE;
  }

  @Override
  public UnitDefinition definition() {
    var known = definition;
    if (known == null) {
      known = RatioUnit.define(QuantityKind.FLOW_RATE, numerator, denominator);
      definition = known;
    }
    return known;
  }

  @Override
  public String toString() {
    return definition().symbol();
  }
}
