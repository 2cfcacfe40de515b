package agro.course;

import agro.dose.ProductAmount;
import agro.dose.tank.MeasuringKit;
import agro.dose.tank.VesselSuggestion;
import agro.units.Mass;
import agro.units.Unit;
import agro.units.Volume;

/**
 * How far a typed number may lie from the right one, and why that far.
 *
 * @param amount half width in the unit of the answer, 0 or more
 * @param reason what it comes from
 */
public record AnswerTolerance(double amount, Reason reason) {

  /** Half a unit of the third significant digit of 100, for amounts that no vessel measures. */
  private static final double USUAL_SHARE = 0.005;

  private static final double ROUNDING = 1e-9;

  /** What a tolerance comes from. */
  public enum Reason {
    /** Half a mark of the measuring vessel, or half a step of the scale, that suits the amount. */
    MEASURING_VESSEL,
    /** A share of the value, because it was computed from rounded numbers. */
    SHARE,
    /** Half a unit of the last decimal that is asked for. */
    DECIMALS,
    /** What a printed table or a hand-drawn line can show. */
    PRINTED_TABLE,
    /** It has to be met exactly. */
    EXACT
  }

  /** Refuses a negative width and one that is no number. */
  public AnswerTolerance {
    if (!(amount >= 0 && Double.isFinite(amount))) {
      throw new IllegalArgumentException("a tolerance is 0 or more, but got " + amount);
    }
  }

  /**
   * Half a mark of the vessel of the usual kit that suits a volume.
   *
   * @param value the right volume
   * @param unit unit of the answer
   * @return the tolerance; a share of the value where no vessel of the kit suits
   */
  public static AnswerTolerance vessel(Volume value, Unit<Volume> unit) {
    return measured(ProductAmount.liquid(value.in(unit), unit), value.in(unit));
  }

  /**
   * Half a step of the scale of the usual kit that suits a mass.
   *
   * @param value the right mass
   * @param unit unit of the answer
   * @return the tolerance; a share of the value where no scale of the kit suits
   */
  public static AnswerTolerance scale(Mass value, Unit<Mass> unit) {
    return measured(ProductAmount.solid(value.in(unit), unit), value.in(unit));
  }

  private static AnswerTolerance measured(ProductAmount amount, double value) {
    if (value > 0
        && MeasuringKit.usual().suggest(amount) instanceof VesselSuggestion.Suits suits
        && suits.reading().fillings() == 1) {
      double half = suits.reading().reading() * value;
      if (half >= USUAL_SHARE / 10 * value) {
        return new AnswerTolerance(half, Reason.MEASURING_VESSEL);
      }
    }
    return share(value, USUAL_SHARE);
  }

  /**
   * A share of the value.
   *
   * @param value the right value
   * @param share for example 0.005 for half a per cent
   * @return the tolerance
   */
  public static AnswerTolerance share(double value, double share) {
    return new AnswerTolerance(Math.abs(value) * share, Reason.SHARE);
  }

  /**
   * Half a per cent of the value, as three significant digits show it at the coarsest.
   *
   * @param value the right value
   * @return the tolerance
   */
  public static AnswerTolerance usual(double value) {
    return share(value, USUAL_SHARE);
  }

  /**
   * Half a unit of the last decimal.
   *
   * @param decimals decimals that are asked for; below zero for tens and hundreds
   * @return the tolerance
   */
  public static AnswerTolerance decimals(int decimals) {
    return new AnswerTolerance(0.5 * Math.pow(10, -decimals), Reason.DECIMALS);
  }

  /**
   * What a printed table or a drawn line can show.
   *
   * @param amount half width in the unit of the answer
   * @return the tolerance
   */
  public static AnswerTolerance table(double amount) {
    return new AnswerTolerance(amount, Reason.PRINTED_TABLE);
  }

  /**
   * No tolerance but the rounding of binary fractions.
   *
   * @return the tolerance
   */
  public static AnswerTolerance exact() {
    return new AnswerTolerance(0, Reason.EXACT);
  }

  /**
   * Whether a number is near enough.
   *
   * @param number typed number in the unit of the answer
   * @param right right number in the same unit
   * @return whether it lies within the tolerance, the ends included
   */
  public boolean accepts(double number, double right) {
    return Math.abs(number - right) <= amount * (1 + ROUNDING) + ROUNDING * Math.abs(right);
  }

  /**
   * Whether two answers with their tolerances could be taken for one another.
   *
   * @param here one number
   * @param other the other answer's tolerance, in the same unit
   * @param there the other number
   * @return whether some number is within both tolerances
   */
  public boolean meets(double here, AnswerTolerance other, double there) {
    return Math.abs(here - there)
        <= (amount + other.amount) * (1 + 2 * ROUNDING)
            + ROUNDING * (Math.abs(here) + Math.abs(there));
  }
}
