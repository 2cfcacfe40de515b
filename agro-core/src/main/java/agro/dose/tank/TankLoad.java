package agro.dose.tank;

import agro.dose.ProductAmount;
import agro.units.Area;
import agro.units.QuantityRange;
import agro.units.Volume;
import java.util.List;
import java.util.Objects;

/**
 * Loads that are filled alike.
 *
 * @param kind full, part or equal
 * @param first number of the first of these loads, counted from 1
 * @param count how many, one or more
 * @param made finished spray that is made up for one of them
 * @param sprayed spray that one of them brings onto the field
 * @param area area that one of them covers
 * @param amounts product that goes into one of them
 * @param water water in one of them: spray less the liquid products; the room that solids take up
 *     is not known and not counted
 */
public record TankLoad(
    LoadKind kind,
    int first,
    int count,
    Volume made,
    Volume sprayed,
    Area area,
    List<PartnerAmount> amounts,
    QuantityRange<Volume> water) {

  /** What a load is. */
  public enum LoadKind {
    /** Filled to the highest mark, from empty. */
    FULL("full"),
    /** Filled up to the highest mark again, on top of the dead volume. */
    REFILL("filled up again"),
    /** Less than full: just what is still needed. */
    PART("part"),
    /** One of several equal ones. */
    EQUAL("equal");

    private final String words;

    LoadKind(String words) {
      this.words = words;
    }

    /**
     * The kind in words.
     *
     * @return for example {@code "part"}
     */
    public String words() {
      return words;
    }
  }

  /** Copies the list. */
  public TankLoad {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(made, "made");
    Objects.requireNonNull(sprayed, "sprayed");
    Objects.requireNonNull(area, "area");
    Objects.requireNonNull(water, "water");
    amounts = List.copyOf(amounts);
  }

  /**
   * Number of the last of these loads.
   *
   * @return the number, counted from 1
   */
  public int last() {
    return first + count - 1;
  }

  /**
   * The loads by their numbers.
   *
   * @return for example {@code "1 to 12"} or {@code "13"}
   */
  public String numbers() {
    return count == 1 ? String.valueOf(first) : first + " to " + last();
  }

  /**
   * The amount of one product in one of these loads.
   *
   * @param product name of the product
   * @return low and high amount
   * @throws java.util.NoSuchElementException if the mix has no such product
   */
  public ProductAmount amountOf(String product) {
    return amounts.stream()
        .filter(amount -> amount.product().equals(product))
        .findFirst()
        .orElseThrow()
        .amount();
  }
}
