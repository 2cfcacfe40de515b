package agro.dose.tank;

import agro.dose.ProductAmount;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Whole packs that cover a need.
 *
 * @param packs each size that is bought, the largest first; none where the stock in hand is enough
 * @param bought what the packs hold together
 * @param waste what is bought beyond what is wanting
 * @param cost price of all packs; nothing where a price is not known or nothing is bought
 */
public record PackChoice(
    List<PackCount> packs, ProductAmount bought, ProductAmount waste, Optional<Price> cost) {

  /**
   * A number of packs of one size.
   *
   * @param pack the pack
   * @param number how many, above zero
   */
  public record PackCount(PackOffer pack, long number) {
    /** Refuses null. */
    public PackCount {
      Objects.requireNonNull(pack, "pack");
    }

    @Override
    public String toString() {
      return number + " × " + pack.content();
    }
  }

  /** Copies the list. */
  public PackChoice {
    packs = List.copyOf(packs);
    Objects.requireNonNull(bought, "bought");
    Objects.requireNonNull(waste, "waste");
    Objects.requireNonNull(cost, "cost");
  }

  /**
   * How many packs are carried home.
   *
   * @return the sum over all sizes
   */
  public long numberOfPacks() {
    return packs.stream().mapToLong(PackCount::number).sum();
  }

  /**
   * The packs in print.
   *
   * @return for example {@code "2 × 1 L + 1 × 250 mL"}, or {@code "none"} if nothing is bought
   */
  public String printPacks() {
    return packs.isEmpty()
        ? "none"
        : packs.stream().map(PackCount::toString).collect(Collectors.joining(" + "));
  }

  /** Number times price of each size, for the steps; all prices are known there. */
  String printCost() {
    return packs.stream()
        .map(count -> count.number() + " × " + count.pack().price().orElseThrow())
        .collect(Collectors.joining(" + "));
  }
}
