package agro.units;

import java.util.List;

/**
 * What a count counts. These are units of their own: a spore is not a colony-forming unit, and
 * neither has a mass.
 */
public enum Counted implements Unit<Count> {
  /** Colony-forming units. */
  COLONY_FORMING_UNITS("CFU", "colony-forming unit", "[CFU]", "colony-forming units", "cfu"),
  /** International units of biological activity. */
  INTERNATIONAL_UNITS("IU", "international unit", "[IU]", "international units"),
  /** Spores. */
  SPORES("spores", "spore", "{spores}"),
  /** Conidia. */
  CONIDIA("conidia", "conidium", "{conidia}"),
  /** Occlusion bodies of an insect virus. */
  OCCLUSION_BODIES("OB", "occlusion body", "{OB}", "occlusion bodies", "OBs", "PIB", "POB"),
  /** Infective juveniles of a nematode. */
  INFECTIVE_JUVENILES(
      "infective juveniles", "infective juvenile", "{infective_juveniles}", "IJ", "IJs");

  private final UnitDefinition definition;
  private final List<String> spellings;
  private final Unit<CountPerMass> perGram;
  private final Unit<CountPerVolume> perMillilitre;
  private final Unit<CountPerArea> perHectare;

  Counted(String symbol, String words, String ucum, String... spellings) {
    this.definition = new UnitDefinition(symbol, words, ucum, ExactFactor.ONE);
    this.spellings = List.of(spellings);
    this.perGram = RatioUnit.of(QuantityKind.COUNT_PER_MASS, this, MassUnit.GRAM);
    this.perMillilitre = RatioUnit.of(QuantityKind.COUNT_PER_VOLUME, this, VolumeUnit.MILLILITRE);
    this.perHectare = RatioUnit.of(QuantityKind.COUNT_PER_AREA, this, AreaUnit.HECTARE);
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.COUNT;
  }

  @Override
  public UnitDefinition definition() {
    return definition;
  }

  @Override
  public String toString() {
    return definition.symbol();
  }

  /** What else people write for this unit, beside its symbol and its name. */
  List<String> spellings() {
    return spellings;
  }

  Unit<CountPerMass> perGram() {
    return perGram;
  }

  Unit<CountPerVolume> perMillilitre() {
    return perMillilitre;
  }

  Unit<CountPerArea> perHectare() {
    return perHectare;
  }

  /** What a unit of a count, or of a count per something, counts. */
  static Counted of(Unit<?> unit) {
    if (unit instanceof Counted counted) {
      return counted;
    }
    if (unit instanceof RatioUnit<?> ratio) {
      return of(ratio.numerator());
    }
    if (unit instanceof UnitMultiple<?> multiple) {
      return of(multiple.unit());
    }
    throw new IllegalArgumentException(
        "a unit of a count says what it counts, but got " + unit.symbol());
  }

  /** What a code of UCUM counts. */
  static Counted ofUcum(String code) {
    boolean living = code.contains(COLONY_FORMING_UNITS.ucum());
    if (living || code.contains(INTERNATIONAL_UNITS.ucum())) {
      return living ? COLONY_FORMING_UNITS : INTERNATIONAL_UNITS;
    }
    throw new UnreadableQuantity(
        code,
        0,
        "the UCUM code " + code + " does not say what it counts",
        "a code with [CFU] or [IU]",
        "annotations carry no meaning in UCUM",
        "write [CFU] or [IU], or make the count with its own type");
  }

  /** Lets a value through if the unit counts the same thing. */
  double onlyIn(Unit<?> unit, double value) {
    if (of(unit) != this) {
      throw new IllegalArgumentException(
          "a count of "
              + definition.symbol()
              + " cannot be told in "
              + unit.symbol()
              + ": the two count different things");
    }
    return value;
  }
}
