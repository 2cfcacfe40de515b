package agro.dose;

import agro.units.AreaUnit;
import agro.units.LengthUnit;
import agro.units.MassUnit;
import agro.units.VolumeUnit;

/**
 * What stands below the line of each kind of rate: how much is written, and how it is made anew.
 */
final class RateBelow {

  private static final double LITRES_PER_CUBIC_METRE = 1000;
  private static final double SQUARE_METRES_PER_HECTARE = 10_000;
  private static final double KILOGRAMS_PER_TONNE = 1000;

  private RateBelow() {}

  /** The number below the line in the unit of {@link #unit}. */
  static double number(ProductRate rate) {
    if (rate instanceof ProductPerArea r) {
      return r.per().inBaseUnit() / SQUARE_METRES_PER_HECTARE;
    }
    if (rate instanceof ProductPerTreatedArea r) {
      return r.per().inBaseUnit() / SQUARE_METRES_PER_HECTARE;
    }
    if (rate instanceof ProductPerSprayVolume r) {
      return r.per().inBaseUnit();
    }
    if (rate instanceof ProductPerRowLength r) {
      return r.per().inBaseUnit();
    }
    if (rate instanceof ProductPerSeedMass r) {
      return r.per().inBaseUnit();
    }
    if (rate instanceof ProductPerWetSubstrate r) {
      return r.per().inBaseUnit() / KILOGRAMS_PER_TONNE;
    }
    if (rate instanceof ProductPerDrySubstrate r) {
      return r.per().inBaseUnit() / KILOGRAMS_PER_TONNE;
    }
    if (rate instanceof ProductPerTreeRowVolume r) {
      return r.per().inBaseUnit() / LITRES_PER_CUBIC_METRE;
    }
    if (rate instanceof ProductPerLeafWallArea r) {
      return r.per().inBaseUnit();
    }
    return counted(rate);
  }

  private static double counted(ProductRate rate) {
    if (rate instanceof ProductPerPlant r) {
      return r.number();
    }
    if (rate instanceof ProductPerTray r) {
      return r.number();
    }
    if (rate instanceof ProductPerSeedCount r) {
      return r.number();
    }
    return ((ProductPerSpot) rate).number();
  }

  /** The unit in which what stands below the line is counted on a hectare. */
  static String unit(RateKind kind) {
    return switch (kind) {
      case PRODUCT_PER_AREA, ACTIVE_PER_AREA -> "ha";
      case PRODUCT_PER_TREATED_AREA -> "ha treated";
      case PRODUCT_PER_SPRAY_VOLUME, ACTIVE_PER_SPRAY_VOLUME -> "L spray";
      case PRODUCT_PER_PLANT -> "plants";
      case PRODUCT_PER_TRAY -> "trays";
      case PRODUCT_PER_ROW_LENGTH -> "m row";
      case PRODUCT_PER_SEED_MASS, ACTIVE_PER_SEED_MASS -> "kg seed";
      case PRODUCT_PER_SEED_COUNT -> "seeds";
      case PRODUCT_PER_WET_SUBSTRATE -> "t wet";
      case PRODUCT_PER_DRY_SUBSTRATE -> "t dry";
      case PRODUCT_PER_TREE_ROW_VOLUME -> "m³ TRV";
      case PRODUCT_PER_LEAF_WALL_AREA -> "m² LWA";
      case PRODUCT_PER_SPOT -> "spots";
    };
  }

  /** How much of it is written below the line of a rate that is computed here. */
  static double written(RateKind kind) {
    return switch (kind) {
      case PRODUCT_PER_SPRAY_VOLUME -> 100;
      case PRODUCT_PER_SEED_COUNT -> 1000;
      case PRODUCT_PER_TREE_ROW_VOLUME -> 1000;
      case PRODUCT_PER_LEAF_WALL_AREA -> 10_000;
      default -> 1;
    };
  }

  /** A rate of a kind with an amount for what {@link #written} says. */
  static ProductRate make(RateKind kind, ProductAmount amount, ProductRate from) {
    double number = written(kind);
    return switch (kind) {
      case PRODUCT_PER_AREA -> ProductPerArea.ofHectare(amount);
      case PRODUCT_PER_TREATED_AREA -> ProductPerTreatedArea.ofHectare(amount);
      case PRODUCT_PER_SPRAY_VOLUME ->
          new ProductPerSprayVolume(amount, new WrittenAmount<>(number, VolumeUnit.LITRE));
      case PRODUCT_PER_PLANT -> new ProductPerPlant(amount, number, PlantingPlace.PLANT);
      case PRODUCT_PER_TRAY -> new ProductPerTray(amount, number);
      case PRODUCT_PER_ROW_LENGTH ->
          new ProductPerRowLength(amount, WrittenAmount.one(LengthUnit.METRE));
      case PRODUCT_PER_SEED_MASS ->
          new ProductPerSeedMass(amount, WrittenAmount.one(MassUnit.KILOGRAM));
      case PRODUCT_PER_SEED_COUNT -> new ProductPerSeedCount(amount, number);
      case PRODUCT_PER_WET_SUBSTRATE ->
          new ProductPerWetSubstrate(amount, WrittenAmount.one(MassUnit.TONNE), substrate(from));
      case PRODUCT_PER_DRY_SUBSTRATE ->
          new ProductPerDrySubstrate(amount, WrittenAmount.one(MassUnit.TONNE), substrate(from));
      case PRODUCT_PER_TREE_ROW_VOLUME ->
          new ProductPerTreeRowVolume(amount, new WrittenAmount<>(number, VolumeUnit.CUBIC_METRE));
      case PRODUCT_PER_LEAF_WALL_AREA ->
          new ProductPerLeafWallArea(amount, new WrittenAmount<>(number, AreaUnit.SQUARE_METRE));
      case PRODUCT_PER_SPOT -> new ProductPerSpot(amount, number);
      case ACTIVE_PER_AREA, ACTIVE_PER_SPRAY_VOLUME, ACTIVE_PER_SEED_MASS ->
          throw new IllegalArgumentException("a rate of active ingredient is made from a strength");
    };
  }

  private static Substrate substrate(ProductRate from) {
    if (from instanceof ProductPerWetSubstrate wet) {
      return wet.substrate();
    }
    return from instanceof ProductPerDrySubstrate dry ? dry.substrate() : Substrate.SUBSTRATE;
  }
}
