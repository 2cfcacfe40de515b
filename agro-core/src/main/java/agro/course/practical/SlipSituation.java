package agro.course.practical;

import agro.dose.ActiveStrength;
import agro.report.InputProblem;
import agro.units.Area;
import agro.units.Density;
import agro.units.LandUnit;
import agro.units.Length;
import agro.units.Numbers;
import agro.units.Quantity;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import java.util.Objects;

/**
 * The situation for which slips are worked out, where their size depends on one: product, pump and
 * tank, land, sprayer. {@link #EXAMPLE} is an invented one.
 *
 * @param product figures of the product
 * @param tank figures of pump and tank
 * @param ground figures of land and sprayer
 */
public record SlipSituation(ProductCase product, TankCase tank, GroundCase ground) {

  /**
   * Figures of a product.
   *
   * @param strength its strength
   * @param other strength of another formulation of the same active ingredient
   * @param density density of a liquid product
   * @param bulkDensity bulk density of a powder
   */
  public record ProductCase(
      ActiveStrength strength, ActiveStrength other, Density density, Density bulkDensity) {
    /** Refuses nulls and two strengths that cannot be compared. */
    public ProductCase {
      Objects.requireNonNull(strength, "strength");
      Objects.requireNonNull(other, "other");
      aboveZero(density, "density of the product");
      aboveZero(bulkDensity, "bulk density of the powder");
      if (!strength.getClass().equals(other.getClass())) {
        throw InputProblem.of("strengths of " + strength + " and " + other)
            .expected("both by volume or both by mass")
            .because("their ratio is the size of a slip")
            .mend("write both in g/L, or both in g/kg or per cent by mass");
      }
    }
  }

  /**
   * Figures of pump and tank.
   *
   * @param pump volume of the pump that is carried
   * @param tank volume of a tank
   * @param lastLoad what the last load holds, at most the tank
   * @param rest spray that is left when the tank is topped up, less than the tank
   */
  public record TankCase(Volume pump, Volume tank, Volume lastLoad, Volume rest) {
    /** Refuses volumes that do not fit into the tank. */
    public TankCase {
      aboveZero(pump, "volume of the pump");
      aboveZero(tank, "volume of the tank");
      aboveZero(lastLoad, "last load");
      aboveZero(rest, "rest in the tank");
      if (lastLoad.compareTo(tank) >= 0 || rest.compareTo(tank) >= 0) {
        throw InputProblem.of(
                "a last load of " + lastLoad + " and a rest of " + rest + " in a tank of " + tank)
            .expected("less than a full tank")
            .because("a full tank is no slip")
            .mend("write what the last load holds and what is left at topping up");
      }
    }
  }

  /**
   * Figures of land and sprayer.
   *
   * @param meant unit of land that the dose is meant for
   * @param taken unit of land that is taken for it
   * @param labelVolume spray volume that a dose per litre is meant for
   * @param sprayerVolume spray volume of the sprayer that is used
   * @param bandWidth width of a sprayed band, at most the row spacing
   * @param rowSpacing distance from row to row
   * @param speedShare share by which the walk is faster or slower, above 0 and below 1
   * @param wearShare share by which a worn nozzle passes more, above 0
   * @param overlapShare share of a swath that is sprayed twice, above 0 and below 1
   */
  public record GroundCase(
      Unit<Area> meant,
      Unit<Area> taken,
      VolumePerArea labelVolume,
      VolumePerArea sprayerVolume,
      Length bandWidth,
      Length rowSpacing,
      double speedShare,
      double wearShare,
      double overlapShare) {
    /** Refuses figures that no sprayer has. */
    public GroundCase {
      Objects.requireNonNull(meant, "meant");
      Objects.requireNonNull(taken, "taken");
      aboveZero(labelVolume, "spray volume of the label");
      aboveZero(sprayerVolume, "spray volume of the sprayer");
      aboveZero(bandWidth, "band width");
      aboveZero(rowSpacing, "row spacing");
      share(speedShare, "share of the speed");
      share(wearShare, "share of the wear");
      share(overlapShare, "share of the overlap");
      if (bandWidth.compareTo(rowSpacing) > 0) {
        throw InputProblem.of("a band of " + bandWidth + " on rows of " + rowSpacing)
            .expected("a band that is at most as wide as the row spacing")
            .because("wider bands overlap and cover the whole ground")
            .mend("write the band width first and the row spacing second");
      }
    }

    /**
     * The same figures with other units of land.
     *
     * @param unit unit that the dose is meant for
     * @param mistaken unit that is taken for it
     * @return new figures
     */
    public GroundCase withLand(Unit<Area> unit, Unit<Area> mistaken) {
      return new GroundCase(
          unit,
          mistaken,
          labelVolume,
          sprayerVolume,
          bandWidth,
          rowSpacing,
          speedShare,
          wearShare,
          overlapShare);
    }

    /**
     * The same figures with other spray volumes.
     *
     * @param label volume that a dose per litre is meant for
     * @param sprayer volume of the sprayer that is used
     * @return new figures
     */
    public GroundCase withVolumes(VolumePerArea label, VolumePerArea sprayer) {
      return new GroundCase(
          meant, taken, label, sprayer, bandWidth, rowSpacing, speedShare, wearShare, overlapShare);
    }
  }

  /** An invented example: 200 g/L, a pump of 16 L, two bighas. */
  public static final SlipSituation EXAMPLE =
      new SlipSituation(
          new ProductCase(
              ActiveStrength.parse("200 g/L"),
              ActiveStrength.parse("480 g/L"),
              new Density(1.1),
              new Density(0.5)),
          new TankCase(new Volume(16), new Volume(400), new Volume(310), new Volume(200)),
          new GroundCase(
              LandUnit.BIGHA_PUCCA,
              LandUnit.BIGHA_WEST_BENGAL,
              new VolumePerArea(500),
              new VolumePerArea(60),
              new Length(0.25),
              new Length(0.75),
              0.1,
              0.1,
              0.15));

  /** Refuses nulls. */
  public SlipSituation {
    Objects.requireNonNull(product, "product");
    Objects.requireNonNull(tank, "tank");
    Objects.requireNonNull(ground, "ground");
  }

  /**
   * The same situation with a product of another strength, and another formulation of it.
   *
   * @param strength strength of the product
   * @param other strength of the other formulation, stated alike
   * @return a new situation
   * @throws InputProblem if one is by volume and the other by mass
   */
  public SlipSituation withStrength(ActiveStrength strength, ActiveStrength other) {
    return new SlipSituation(
        new ProductCase(strength, other, product.density(), product.bulkDensity()), tank, ground);
  }

  /**
   * The same situation with another pump.
   *
   * @param volume volume of the pump that is carried
   * @return a new situation
   */
  public SlipSituation withPump(Volume volume) {
    return new SlipSituation(
        product, new TankCase(volume, tank.tank(), tank.lastLoad(), tank.rest()), ground);
  }

  /**
   * The same situation with another tank.
   *
   * @param volume volume of the tank
   * @param lastLoad what its last load holds
   * @param rest spray left when it is topped up
   * @return a new situation
   * @throws InputProblem if one of them is a full tank or more
   */
  public SlipSituation withTank(Volume volume, Volume lastLoad, Volume rest) {
    return new SlipSituation(product, new TankCase(tank.pump(), volume, lastLoad, rest), ground);
  }

  /**
   * The same situation with other units of land.
   *
   * @param meant unit that the dose is meant for
   * @param taken unit that is taken for it
   * @return a new situation
   */
  public SlipSituation withLand(Unit<Area> meant, Unit<Area> taken) {
    return new SlipSituation(product, tank, ground.withLand(meant, taken));
  }

  /**
   * The same situation with other spray volumes.
   *
   * @param label volume that a dose per litre is meant for
   * @param sprayer volume of the sprayer that is used
   * @return a new situation
   */
  public SlipSituation withVolumes(VolumePerArea label, VolumePerArea sprayer) {
    return new SlipSituation(product, tank, ground.withVolumes(label, sprayer));
  }

  private static void aboveZero(Quantity<?> quantity, String what) {
    if (!(quantity.inBaseUnit() > 0)) {
      throw InputProblem.of("the " + what + " is " + quantity)
          .expected("more than zero")
          .because("a slip is a ratio of doses")
          .mend("write the " + what + ", or keep that of the example");
    }
  }

  private static void share(double value, String what) {
    if (!(value > 0 && value < 1)) {
      throw InputProblem.of("the " + what + " is " + Numbers.plain(value))
          .expected("a share above 0 and below 1")
          .because("a slip is a ratio of doses")
          .mend("write 10 % as 0.1");
    }
  }
}
