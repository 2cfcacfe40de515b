package agro.sampling;

import agro.report.InputProblem;
import java.util.Locale;
import java.util.Objects;

/**
 * What one count belongs to. Counts in different units are different quantities: a mean for each
 * leaf becomes one for each plant only by a stated number of leaves.
 *
 * @param kind what is looked at
 * @param number how many of it make one unit, such as ten strokes of the net; 1 or more
 */
public record SamplingUnit(Kind kind, int number) {

  /** What is looked at. */
  public enum Kind {
    /** A whole plant. */
    PLANT,
    /** A single leaf. */
    LEAF,
    /** A growing point with its youngest leaves. */
    TERMINAL,
    /** A flower or a flower head. */
    FLOWER,
    /** A fruit. */
    FRUIT,
    /** A tiller of a cereal. */
    TILLER,
    /** A stroke of the sweep net. */
    SWEEP,
    /** A beat over a tray. */
    BEAT,
    /** A night of an open trap. */
    TRAP_NIGHT,
    /** A soil core of stated size. */
    SOIL_CORE,
    /** A length of row in metres. */
    METRE_OF_ROW,
    /** A square metre of ground. */
    SQUARE_METRE;

    /**
     * The thing in words.
     *
     * @return a phrase in lower case
     */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ').replace("trap night", "trap-night");
    }
  }

  /**
   * Checks the number.
   *
   * @throws InputProblem when it is below 1
   */
  public SamplingUnit {
    Objects.requireNonNull(kind, "kind");
    if (number < 1) {
      throw InputProblem.of("a sampling unit of " + number + " × " + kind.words())
          .expected("1 or more")
          .because("a count belongs to something that was looked at")
          .mend("give how many were counted together, usually 1");
    }
  }

  /**
   * One of a kind.
   *
   * @param kind what is looked at
   * @return the unit
   */
  public static SamplingUnit of(Kind kind) {
    return new SamplingUnit(kind, 1);
  }

  /**
   * The unit in words.
   *
   * @return for example {@code "plant"} or {@code "10 sweeps"}
   */
  public String words() {
    return number == 1 ? kind.words() : number + " × " + kind.words();
  }

  /**
   * Refuses counts in another unit.
   *
   * @param other the other unit
   * @param what what needs one unit, as the object of "for"
   * @throws InputProblem when the units differ
   */
  public void requireSame(SamplingUnit other, String what) {
    if (!equals(other)) {
      throw InputProblem.of("counts for each " + words() + " and for each " + other.words())
          .expected("one sampling unit for " + what)
          .because("counts in different units are different quantities")
          .mend("count in one unit, or convert the means by a stated density first");
    }
  }

  @Override
  public String toString() {
    return words();
  }
}
