package agro.course.marking;

import agro.course.Mistake;

/** Mistakes that can happen in any exercise, looked for when none of its own fits. */
public enum GeneralMistake implements Mistake {
  /** The right digits with the decimal point one or two places off. */
  DECIMAL_POINT,
  /** A thousand or a million times too much or too little. */
  WRONG_PREFIX,
  /** The right number with a unit that was not meant. */
  WRONG_UNIT,
  /** One divided by the right number. */
  UPSIDE_DOWN,
  /** The right number with the wrong sign. */
  WRONG_SIGN,
  /** The right number, rounded too far. */
  ROUNDED_TOO_FAR,
  /** One day early or late. */
  OFF_BY_ONE_DAY;

  @Override
  public String bundle() {
    return "marking";
  }
}
