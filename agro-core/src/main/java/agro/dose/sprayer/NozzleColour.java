package agro.dose.sprayer;

import java.util.Locale;

/** Colours of nozzle sizes. The colour of a droplet class is another code with other meanings. */
public enum NozzleColour {
  /** Orange. */
  ORANGE,
  /** Green. */
  GREEN,
  /** Yellow. */
  YELLOW,
  /** Lilac. */
  LILAC,
  /** Blue. */
  BLUE,
  /** Brown-red. */
  BROWN_RED,
  /** Red. */
  RED,
  /** Brown. */
  BROWN,
  /** Grey. */
  GREY,
  /** White. */
  WHITE,
  /** Light blue. */
  LIGHT_BLUE,
  /** Light green. */
  LIGHT_GREEN;

  /**
   * The colour in words.
   *
   * @return for example {@code "light blue"}; brown-red has a hyphen
   */
  public String words() {
    char joint = this == BROWN_RED ? '-' : ' ';
    return name().toLowerCase(Locale.ROOT).replace('_', joint);
  }
}
