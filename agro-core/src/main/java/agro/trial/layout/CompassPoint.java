package agro.trial.layout;

import java.util.Locale;

/** A direction in the field. */
public enum CompassPoint {
  /** North. */
  NORTH(0),
  /** North-east. */
  NORTH_EAST(45),
  /** East. */
  EAST(90),
  /** South-east. */
  SOUTH_EAST(135),
  /** South. */
  SOUTH(180),
  /** South-west. */
  SOUTH_WEST(225),
  /** West. */
  WEST(270),
  /** North-west. */
  NORTH_WEST(315);

  private final int degrees;

  CompassPoint(int degrees) {
    this.degrees = degrees;
  }

  /**
   * Degrees from north by way of east.
   *
   * @return 0 to 315
   */
  public int degrees() {
    return degrees;
  }

  /**
   * The direction to the back.
   *
   * @return for example south for north
   */
  public CompassPoint opposite() {
    return switch (this) {
      case NORTH -> SOUTH;
      case NORTH_EAST -> SOUTH_WEST;
      case EAST -> WEST;
      case SOUTH_EAST -> NORTH_WEST;
      case SOUTH -> NORTH;
      case SOUTH_WEST -> NORTH_EAST;
      case WEST -> EAST;
      case NORTH_WEST -> SOUTH_EAST;
    };
  }

  /**
   * The direction in words.
   *
   * @return for example {@code "north-east"}
   */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
