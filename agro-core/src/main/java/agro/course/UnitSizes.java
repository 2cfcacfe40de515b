package agro.course;

import agro.units.Quantity;
import agro.units.Unit;
import java.util.LinkedHashSet;
import java.util.Set;

/** Sizes of units as they stand in an exercise, so that nobody has to know them by heart. */
public final class UnitSizes {

  private final CourseWords words;
  private final Set<String> lines = new LinkedHashSet<>();

  private UnitSizes(CourseWords words) {
    this.words = words;
  }

  /**
   * No sizes yet.
   *
   * @param words language
   * @return sizes to be added to
   */
  public static UnitSizes in(CourseWords words) {
    return new UnitSizes(words);
  }

  /**
   * Adds the larger of two units in terms of the smaller one; nothing for units of one size.
   *
   * @param <Q> their kind
   * @param one a unit
   * @param other another unit
   * @return these sizes
   */
  public <Q extends Quantity<Q>> UnitSizes and(Unit<Q> one, Unit<Q> other) {
    double ratio = one.toBase(1) / other.toBase(1);
    if (ratio > 1) {
      lines.add("1 " + words.symbol(one) + " = " + words.number(ratio) + " " + words.symbol(other));
    } else if (ratio < 1) {
      lines.add(
          "1 " + words.symbol(other) + " = " + words.number(1 / ratio) + " " + words.symbol(one));
    }
    return this;
  }

  /**
   * All sizes in one line.
   *
   * @return for example {@code "1 gal (US) = 3.7854 L; 1 ha = 2.4711 ac"}; empty without any
   */
  public String print() {
    return String.join("; ", lines);
  }
}
