package agro.units;

import java.util.Objects;

/** What stands below the line of a rate: an amount of a unit, or a number of things. */
public sealed interface RateDenominator {

  /**
   * How many units or things.
   *
   * @return a number above zero, 1 where the text gives none
   */
  double amount();

  /**
   * An amount of a unit, for example 100 litres of water.
   *
   * @param amount number above zero
   * @param unit the unit
   * @param of what it is an amount of, in lower case, for example {@code "seed"}; empty if the text
   *     does not say
   */
  record PerUnit(double amount, Unit<?> unit, String of) implements RateDenominator {

    /** Refuses nulls and amounts that are not above zero. */
    public PerUnit {
      Objects.requireNonNull(unit, "unit");
      Objects.requireNonNull(of, "of");
      requireAboveZero(amount);
    }

    @Override
    public String toString() {
      return counted(amount) + unit.symbol() + (of.isEmpty() ? "" : " " + of);
    }
  }

  /**
   * A number of things, for example 1000 plants.
   *
   * @param amount number above zero
   * @param thing the thing, in lower case and in the singular
   */
  record PerThing(double amount, String thing) implements RateDenominator {

    /** Refuses nulls and amounts that are not above zero. */
    public PerThing {
      Objects.requireNonNull(thing, "thing");
      requireAboveZero(amount);
    }

    @Override
    public String toString() {
      return counted(amount) + thing;
    }
  }

  private static void requireAboveZero(double amount) {
    if (!(amount > 0 && amount < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "an amount below the line is above zero and finite, but got " + amount);
    }
  }

  private static String counted(double amount) {
    return amount == 1 ? "" : Numbers.plain(amount) + " ";
  }
}
