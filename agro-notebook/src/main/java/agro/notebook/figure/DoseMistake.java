package agro.notebook.figure;

import agro.report.InputProblem;
import agro.units.Quantity;
import java.util.Objects;

/**
 * A mistake in dose arithmetic and its size: the dose that comes of it as a multiple of the dose
 * that was meant. Two is twice too much, a half is half of what was meant.
 *
 * @param name what is done wrongly
 * @param least least multiple, above zero
 * @param most greatest multiple
 * @param spread what lies between the two
 * @param stoppedBy what keeps it from happening; may be empty
 */
public record DoseMistake(String name, double least, double most, Spread spread, String stoppedBy) {

  /** What lies between the least and the greatest multiple. */
  public enum Spread {
    /** One size, least and greatest are the same. */
    ONE_SIZE,
    /** Two sizes, one for each way that the mistake can go. */
    EITHER_WAY,
    /** Every size between the two. */
    ANYWHERE_BETWEEN
  }

  /** Refuses a mistake without a name and multiples that are no sizes of a dose. */
  public DoseMistake {
    Objects.requireNonNull(spread, "spread");
    Objects.requireNonNull(stoppedBy, "stoppedBy");
    if (name.isBlank()) {
      throw InputProblem.of("a mistake without a name")
          .expected("what is done wrongly, in words")
          .because("the figure names each line with it")
          .mend("write for example \"kilograms weighed as pounds\"");
    }
    var ordered = least > 0 && least <= most && most < Double.POSITIVE_INFINITY;
    if (!ordered || (spread == Spread.ONE_SIZE) != (least == most)) {
      throw InputProblem.of("\"" + name + "\" of size " + least + " to " + most)
          .expected("multiples of the dose that was meant, above zero, the least one first")
          .because("they are drawn on a scale of multiples, which has no zero")
          .mend("divide the dose that comes of the mistake by the dose that was meant");
    }
  }

  /**
   * A mistake of one size.
   *
   * @param name what is done wrongly
   * @param got dose that comes of it
   * @param meant dose that was meant
   * @param <Q> kind of quantity
   * @return the mistake
   * @throws InputProblem if a dose is not above zero
   */
  public static <Q extends Quantity<Q>> DoseMistake of(String name, Q got, Q meant) {
    return of(name, got.ratioTo(meant));
  }

  /**
   * A mistake of one size.
   *
   * @param name what is done wrongly
   * @param multiple dose that comes of it over the dose that was meant
   * @return the mistake
   * @throws InputProblem if the multiple is not above zero
   */
  public static DoseMistake of(String name, double multiple) {
    return new DoseMistake(name, multiple, multiple, Spread.ONE_SIZE, "");
  }

  /**
   * One quantity taken for another or the other for the one.
   *
   * @param name what is mixed up
   * @param one the one
   * @param other the other, of another size
   * @param <Q> kind of quantity
   * @return the mistake, which goes either way
   * @throws InputProblem if a quantity is not above zero or both are the same
   */
  public static <Q extends Quantity<Q>> DoseMistake mixingUp(String name, Q one, Q other) {
    return mixingUp(name, one.ratioTo(other));
  }

  /**
   * A mistake that multiplies or divides the dose.
   *
   * @param name what is mixed up
   * @param multiple the multiple, or one part of it for the other way
   * @return the mistake, which goes either way
   * @throws InputProblem if the multiple is not above zero or is 1
   */
  public static DoseMistake mixingUp(String name, double multiple) {
    return eitherWay(name, Math.min(multiple, 1 / multiple), Math.max(multiple, 1 / multiple));
  }

  /**
   * A mistake with one size for each way that it can go.
   *
   * @param name what is done wrongly
   * @param least lesser multiple
   * @param most greater multiple
   * @return the mistake
   * @throws InputProblem if the multiples are not above zero and in order
   */
  public static DoseMistake eitherWay(String name, double least, double most) {
    return new DoseMistake(name, least, most, Spread.EITHER_WAY, "");
  }

  /**
   * A mistake of any size between two.
   *
   * @param name what is done wrongly
   * @param least least multiple
   * @param most greatest multiple
   * @return the mistake
   * @throws InputProblem if the multiples are not above zero and in order
   */
  public static DoseMistake between(String name, double least, double most) {
    return new DoseMistake(name, least, most, Spread.ANYWHERE_BETWEEN, "");
  }

  /**
   * Says what keeps the mistake from happening.
   *
   * @param words what does
   * @return the mistake with it
   */
  public DoseMistake stoppedBy(String words) {
    return new DoseMistake(name, least, most, spread, words);
  }

  /** How far from the dose that was meant, at its worst: 2 for twice and for a half. */
  double worst() {
    return Math.max(most, 1 / least);
  }
}
