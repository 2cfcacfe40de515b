package agro.trial.bioassay;

import agro.report.InputProblem;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.MassPerMass;
import agro.units.MassPerVolume;
import agro.units.MassUnit;
import agro.units.Numbers;
import agro.units.Quantity;
import agro.units.Unit;
import agro.units.VolumePerArea;
import agro.units.WorkTime;
import java.util.Objects;

/**
 * What the numbers of an assay's doses measure. An assay has one of them; it stands on every axis
 * and in every table. Doses measured in two ways are never compared.
 */
public sealed interface DoseAxis {

  /**
   * What is measured, with what has to be known beside it.
   *
   * @return for example {@code "residue in a vial of 40 cm² inner area"}
   */
  String words();

  /**
   * Unit of the numbers.
   *
   * @return for example {@code "mg/L"}; empty when the numbers have none
   */
  String unit();

  /**
   * A dose with its unit.
   *
   * @param dose number on the axis
   * @return for example {@code "4.85 mg/L"}
   */
  default String print(double dose) {
    return inUnit(dose);
  }

  /**
   * A dose in the unit of the axis and in nothing else.
   *
   * @param dose number on the axis
   * @return for example {@code "0.24 µg/vial"}, where {@link #print} adds the mass per area
   */
  default String inUnit(double dose) {
    return Numbers.significant(dose, 4) + (unit().isEmpty() ? "" : " " + unit());
  }

  /**
   * Limits of a dose with the unit once.
   *
   * @param limits limits on the axis
   * @return for example {@code "4.36 to 5.35 mg/L"}, or a sentence that says what is unbounded
   */
  default String limits(DoseLimits limits) {
    return limits.isBounded()
        ? Numbers.significant(limits.low(), 4) + " to " + inUnit(limits.high())
        : limits.words(this::inUnit);
  }

  /** Refuses nothing but units that are missing. */
  private static void required(Object unit) {
    Objects.requireNonNull(unit, "unit");
  }

  /**
   * Mass in a volume of liquid.
   *
   * @param in unit of the numbers
   */
  record Concentration(Unit<MassPerVolume> in) implements DoseAxis {
    /** Refuses a missing unit. */
    public Concentration {
      required(in);
    }

    /**
     * A group that got a concentration.
     *
     * @param dose the concentration
     * @return the number on the axis
     */
    public double at(MassPerVolume dose) {
      return dose.in(in);
    }

    @Override
    public String words() {
      return "concentration";
    }

    @Override
    public String unit() {
      return in.symbol();
    }
  }

  /**
   * Mass left on the inner wall of a vial.
   *
   * @param in unit of the numbers, mass per vial
   * @param innerArea area of glass that is coated, above 0
   */
  record VialResidue(Unit<Mass> in, Area innerArea) implements DoseAxis {
    /** Refuses a vial without area. */
    public VialResidue {
      required(in);
      if (!(innerArea.squareMetres() > 0)) {
        throw InputProblem.of("a vial of " + innerArea + " inner area")
            .expected("an area above 0")
            .because("the animals meet a mass per area, not a mass per vial")
            .mend("measure the inner surface of one vial and state it");
      }
    }

    /**
     * The number on the axis of a residue.
     *
     * @param perVial mass in one vial
     * @return the number in the unit of the axis
     */
    public double at(Mass perVial) {
      return perVial.in(in);
    }

    /**
     * The mass that lies on each square centimetre.
     *
     * @param dose number on the axis, mass per vial
     * @return micrograms on a square centimetre
     */
    public double microgramsPerSquareCentimetre(double dose) {
      return MassUnit.MICROGRAM.fromBase(in.toBase(dose))
          / innerArea.in(AreaUnit.SQUARE_CENTIMETRE);
    }

    @Override
    public String words() {
      return "residue in a vial of "
          + Numbers.significant(innerArea.in(AreaUnit.SQUARE_CENTIMETRE), 4)
          + " cm² inner area";
    }

    @Override
    public String unit() {
      return in.symbol() + "/vial";
    }

    @Override
    public String print(double dose) {
      return inUnit(dose)
          + " ("
          + Numbers.significant(microgramsPerSquareCentimetre(dose), 4)
          + " µg/cm²)";
    }
  }

  /**
   * Multiple of the rate that the label gives for the field.
   *
   * @param fieldRate the rate that counts as 1, an amount per area or a concentration
   */
  record FieldRateShare(Quantity<?> fieldRate) implements DoseAxis {
    /** Refuses a rate of nothing. */
    public FieldRateShare {
      if (!(fieldRate.inBaseUnit() > 0)) {
        throw InputProblem.of("a field rate of " + fieldRate)
            .expected("a rate above 0")
            .because("shares of nothing are nothing")
            .mend("state the rate of the label that counts as 1");
      }
    }

    @Override
    public String words() {
      return "multiple of the field rate of " + fieldRate;
    }

    @Override
    public String unit() {
      return "× field rate";
    }
  }

  /**
   * Mass for each mass of living animal.
   *
   * @param in unit of the numbers, for example micrograms per gram
   */
  record BodyDose(Unit<MassPerMass> in) implements DoseAxis {
    /** Refuses a missing unit. */
    public BodyDose {
      required(in);
    }

    /**
     * The axis in micrograms per gram.
     *
     * @return the axis
     */
    public static BodyDose microgramsPerGram() {
      return new BodyDose(MassPerMass.unit(MassUnit.MICROGRAM, MassUnit.GRAM));
    }

    /**
     * The number on the axis of a dose given to animals of known mass.
     *
     * @param perAnimal mass given to each animal
     * @param bodyMass mean mass of an animal, above 0
     * @return the number in the unit of the axis
     */
    public double at(Mass perAnimal, Mass bodyMass) {
      return new MassPerMass(1000 * perAnimal.ratioTo(bodyMass)).in(in);
    }

    @Override
    public String words() {
      return "dose per body mass";
    }

    @Override
    public String unit() {
      return in.symbol();
    }
  }

  /**
   * Mass given to each animal, as a drop on its back.
   *
   * @param in unit of the numbers
   */
  record AnimalDose(Unit<Mass> in) implements DoseAxis {
    /** Refuses a missing unit. */
    public AnimalDose {
      required(in);
    }

    @Override
    public String words() {
      return "dose per animal";
    }

    @Override
    public String unit() {
      return in.symbol() + "/animal";
    }
  }

  /**
   * Mass in a mass of food or soil.
   *
   * @param in unit of the numbers
   */
  record MediumContent(Unit<MassPerMass> in) implements DoseAxis {
    /** Refuses a missing unit. */
    public MediumContent {
      required(in);
    }

    @Override
    public String words() {
      return "content of food or soil";
    }

    @Override
    public String unit() {
      return in.symbol();
    }
  }

  /**
   * Mass that lies on an area.
   *
   * @param in unit of the numbers
   */
  record AreaDeposit(Unit<MassPerArea> in) implements DoseAxis {
    /** Refuses a missing unit. */
    public AreaDeposit {
      required(in);
    }

    /**
     * The number on the axis of a deposit.
     *
     * @param dose mass per area
     * @return the number in the unit of the axis
     */
    public double at(MassPerArea dose) {
      return dose.in(in);
    }

    @Override
    public String words() {
      return "deposit on an area";
    }

    @Override
    public String unit() {
      return in.symbol();
    }
  }

  /**
   * Volume of product that goes on an area.
   *
   * @param in unit of the numbers
   */
  record ProductRate(Unit<VolumePerArea> in) implements DoseAxis {
    /** Refuses a missing unit. */
    public ProductRate {
      required(in);
    }

    @Override
    public String words() {
      return "product on an area";
    }

    @Override
    public String unit() {
      return in.symbol();
    }
  }

  /**
   * Length of exposure to one concentration. Animals of one vessel that are counted again and again
   * are not independent; each time needs vessels of its own.
   *
   * @param in unit of the numbers
   */
  record ExposureTime(Unit<WorkTime> in) implements DoseAxis {
    /** Refuses a missing unit. */
    public ExposureTime {
      required(in);
    }

    @Override
    public String words() {
      return "time of exposure, other vessels for each time";
    }

    @Override
    public String unit() {
      return in.symbol();
    }
  }

  /**
   * Numbers of a source whose measure none of the other kinds says.
   *
   * @param words what is measured
   * @param unit its unit, possibly empty
   */
  record NamedDose(String words, String unit) implements DoseAxis {
    /** Refuses a measure without a name. */
    public NamedDose {
      Objects.requireNonNull(unit, "unit");
      if (words.isBlank()) {
        throw InputProblem.of("a dose without a name")
            .expected("what the numbers measure")
            .because("it stands on the axis of every figure")
            .mend("write for example \"dose\" with the unit \"µg\"");
      }
    }
  }
}
