package agro.units;

import java.util.ArrayList;
import java.util.List;

/** The usual units of each kind in each family, the largest first. */
final class StyleUnits {

  /** A unit is used from this many of it on; a hair below one, so that rounding does no harm. */
  static final double LEAST = 1 - 1e-9;

  private StyleUnits() {}

  @SuppressWarnings("unchecked") // the kind of the base unit is the kind of every unit of the list
  static <Q extends Quantity<Q>> List<Unit<Q>> largestFirst(QuantityStyle style, Q quantity) {
    var base = quantity.baseUnit();
    var units = new ArrayList<Unit<Q>>();
    for (var unit : unitsOf(style, base.kind(), base, quantity)) {
      units.add((Unit<Q>) unit);
    }
    return units;
  }

  private static List<? extends Unit<?>> unitsOf(
      QuantityStyle style, QuantityKind kind, Unit<?> base, Quantity<?> quantity) {
    return switch (kind) {
      case LENGTH -> lengths(style.system());
      case AREA -> areas(style, quantity.inBaseUnit());
      case VOLUME -> volumes(style.system());
      case MASS -> masses(style.system());
      case WORK_TIME -> List.of(WorkTimeUnit.HOUR, WorkTimeUnit.MINUTE, WorkTimeUnit.SECOND);
      case PRESSURE ->
          List.of(metric(style) ? PressureUnit.BAR : PressureUnit.POUND_PER_SQUARE_INCH);
      case SPEED -> List.of(metric(style) ? SpeedUnit.KILOMETRE_PER_HOUR : SpeedUnit.MILE_PER_HOUR);
      case VOLUME_PER_AREA -> ratios(kind, volumes(style.system()), style.land());
      case MASS_PER_AREA -> ratios(kind, masses(style.system()), style.land());
      case COUNT_PER_AREA ->
          ratios(kind, List.of(((CountPerArea) quantity).counted()), style.land());
      default -> concentrations(style.system(), kind, base);
    };
  }

  private static List<? extends Unit<?>> concentrations(
      MeasurementSystem system, QuantityKind kind, Unit<?> base) {
    boolean metric = system == MeasurementSystem.METRIC;
    var gallon = system == MeasurementSystem.US ? VolumeUnit.US_GALLON : VolumeUnit.IMPERIAL_GALLON;
    return switch (kind) {
      case FLOW_RATE ->
          metric
              ? List.of(FlowRateUnit.LITRE_PER_MINUTE, FlowRateUnit.MILLILITRE_PER_MINUTE)
              : ratios(kind, volumes(system), WorkTimeUnit.MINUTE);
      case DENSITY -> metric ? List.of(base) : ratios(kind, List.of(MassUnit.POUND), gallon);
      case MASS_PER_VOLUME ->
          metric
              ? List.of(MassPerVolumeUnit.GRAM_PER_LITRE, MassPerVolumeUnit.MILLIGRAM_PER_LITRE)
              : ratios(kind, List.of(MassUnit.POUND, MassUnit.OUNCE), gallon);
      case VOLUME_PER_VOLUME -> metric ? List.of(base) : ratios(kind, volumes(system), gallon);
      case MASS_PER_MASS ->
          List.of(MassPerMassUnit.GRAM_PER_KILOGRAM, MassPerMassUnit.MILLIGRAM_PER_KILOGRAM);
      case MASS_PER_LENGTH ->
          metric ? List.of(base) : List.of(MassPerLengthUnit.OUNCE_PER_1000_FEET);
      case VOLUME_PER_LENGTH ->
          metric
              ? List.of(VolumePerLengthUnit.LITRE_PER_METRE, base)
              : ratios(kind, List.of(fluidOunce(system)), UnitMultiple.of(1000, LengthUnit.FOOT));
      default -> List.of(base);
    };
  }

  private static List<Unit<?>> ratios(
      QuantityKind kind, List<? extends Unit<?>> above, Unit<?> below) {
    var units = new ArrayList<Unit<?>>();
    for (var unit : above) {
      units.add(RatioUnit.of(kind, unit, below));
    }
    return units;
  }

  private static List<LengthUnit> lengths(MeasurementSystem system) {
    return system == MeasurementSystem.METRIC
        ? List.of(
            LengthUnit.KILOMETRE, LengthUnit.METRE, LengthUnit.CENTIMETRE, LengthUnit.MILLIMETRE)
        : List.of(LengthUnit.MILE, LengthUnit.FOOT, LengthUnit.INCH);
  }

  private static List<Unit<Area>> areas(QuantityStyle style, double squareMetres) {
    boolean parcel = style.land().fromBase(squareMetres) >= 0.01;
    return parcel
        ? List.of(style.land())
        : List.of(metric(style) ? AreaUnit.SQUARE_METRE : AreaUnit.SQUARE_FOOT);
  }

  private static List<VolumeUnit> volumes(MeasurementSystem system) {
    return switch (system) {
      case METRIC -> List.of(VolumeUnit.LITRE, VolumeUnit.MILLILITRE);
      case US -> List.of(VolumeUnit.US_GALLON, VolumeUnit.US_FLUID_OUNCE);
      case IMPERIAL -> List.of(VolumeUnit.IMPERIAL_GALLON, VolumeUnit.IMPERIAL_FLUID_OUNCE);
    };
  }

  private static List<MassUnit> masses(MeasurementSystem system) {
    return system == MeasurementSystem.METRIC
        ? List.of(MassUnit.KILOGRAM, MassUnit.GRAM, MassUnit.MILLIGRAM)
        : List.of(MassUnit.POUND, MassUnit.OUNCE);
  }

  private static VolumeUnit fluidOunce(MeasurementSystem system) {
    return system == MeasurementSystem.US
        ? VolumeUnit.US_FLUID_OUNCE
        : VolumeUnit.IMPERIAL_FLUID_OUNCE;
  }

  private static boolean metric(QuantityStyle style) {
    return style.system() == MeasurementSystem.METRIC;
  }
}
