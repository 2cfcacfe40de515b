package agro.weather;

import agro.report.InputProblem;
import agro.units.Numbers;

/**
 * What a thermometer stood in. Degree-days of air and of soil are different quantities: at 6 cm the
 * daily swing is little more than half of that of the air, so a requirement that was made for soil
 * must not be run on air.
 */
public sealed interface Medium {

  /** Height of the thermometer that is assumed when nobody states one, in metres. */
  double USUAL_SHELTER_HEIGHT_METRES = 2.0;

  /**
   * Whether this is air or soil.
   *
   * @return the kind
   */
  MediumKind kind();

  /**
   * The medium in words, with its height or depth.
   *
   * @return for example {@code "air in a shelter at 2 m"}
   */
  String words();

  /**
   * Air in a shelter at {@value #USUAL_SHELTER_HEIGHT_METRES} m (common practice, no source): the
   * assumption when nothing is stated.
   *
   * @return the usual medium of a weather station
   */
  static Medium shelterAir() {
    return new ShelterAir(USUAL_SHELTER_HEIGHT_METRES);
  }

  /**
   * Refuses to go on with another kind of medium than the one that is needed.
   *
   * @param needed the kind that the figures were made for
   * @param what what needs it, as the subject of a sentence, for example {@code "this requirement"}
   * @throws InputProblem when this medium is of the other kind
   */
  default void require(MediumKind needed, String what) {
    if (kind() != needed) {
      throw InputProblem.of("a temperature series of " + words())
          .expected("temperatures of " + needed.words() + ", because " + what + " was made for it")
          .because("soil swings less than air and lags behind it, so the sums are not comparable")
          .mend(
              "give a log of "
                  + needed.words()
                  + ", or take a requirement that was measured in "
                  + kind().words());
    }
  }

  /**
   * Air in a ventilated shelter.
   *
   * @param heightMetres height of the thermometer above ground in m, above 0
   */
  record ShelterAir(double heightMetres) implements Medium {
    /** Refuses heights that are not above ground. */
    public ShelterAir {
      requirePositive(heightMetres, "height");
    }

    @Override
    public MediumKind kind() {
      return MediumKind.AIR;
    }

    @Override
    public String words() {
      return "air in a shelter at " + Numbers.plain(heightMetres) + " m";
    }
  }

  /**
   * Air inside a crop.
   *
   * @param heightMetres height of the thermometer above ground in m, above 0
   */
  record CanopyAir(double heightMetres) implements Medium {
    /** Refuses heights that are not above ground. */
    public CanopyAir {
      requirePositive(heightMetres, "height");
    }

    @Override
    public MediumKind kind() {
      return MediumKind.AIR;
    }

    @Override
    public String words() {
      return "air in the canopy at " + Numbers.plain(heightMetres) + " m";
    }
  }

  /** Air in a nursery tunnel or under a crop cover. */
  record Tunnel() implements Medium {
    @Override
    public MediumKind kind() {
      return MediumKind.AIR;
    }

    @Override
    public String words() {
      return "air in a tunnel";
    }
  }

  /**
   * Soil.
   *
   * @param depthMetres depth of the thermometer below the surface in m, above 0
   */
  record Soil(double depthMetres) implements Medium {
    /** Refuses depths that are not below the surface. */
    public Soil {
      requirePositive(depthMetres, "depth");
    }

    @Override
    public MediumKind kind() {
      return MediumKind.SOIL;
    }

    @Override
    public String words() {
      return "soil at " + Numbers.plain(depthMetres * 100) + " cm";
    }
  }

  private static void requirePositive(double metres, String what) {
    if (!(Double.isFinite(metres) && metres > 0)) {
      throw InputProblem.of("a " + what + " of " + metres + " m")
          .expected("a finite number of metres above 0")
          .because("the " + what + " of a thermometer decides what its figures mean")
          .mend("give the " + what + " in metres, for example 2 for a shelter or 0.06 for soil");
    }
  }
}
