package agro.dose.tank;

import agro.dose.ProductAmount;
import agro.dose.tank.PackChoice.PackCount;
import agro.report.InputProblem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Finds the packs that cover a need. Sums of packs are visited from the smallest up; for each the
 * cheapest way to reach it is kept, or the one of fewest packs where not all prices are known. A
 * sum that covers the need is not continued, because every further pack would only add waste and
 * cost. Contents are whole numbers of a very small unit, so that equal sums meet.
 */
final class PackSearch {

  /** More sums than this are not looked at. */
  static final int MOST_SUMS = 200_000;

  /** The largest amount has this many of the small unit; sums stay far below the range of long. */
  private static final double FINENESS = 1e15;

  /**
   * A need this share below a sum of packs is covered by it; a cover of rounding and no product.
   */
  private static final double ROUNDING = 1e-9;

  private static final Comparator<State> CHEAPEST =
      Comparator.comparing(State::cost).thenComparing(State::count);

  private final String product;
  private final ProductAmount need;
  private final ProductAmount inHand;
  private final double wanting;
  private final List<PackOffer> packs;
  private final List<BigDecimal> prices;
  private final boolean priced;
  private final long[] sizes;
  private final double unit;

  /** How a sum is reached: the last pack and the sum before it. */
  private record State(BigDecimal cost, long count, int pack, long before) {}

  /** A sum that covers the need, with its cost. */
  private record Cover(long sum, State state) {}

  PackSearch(String product, ProductAmount need, ProductAmount inHand, List<PackOffer> packs) {
    this.product = product;
    this.need = need;
    this.inHand = inHand;
    this.wanting = Purchase.wanting(need, inHand);
    this.packs =
        packs.stream().sorted(Comparator.comparingDouble(p -> -p.content().highNumber())).toList();
    this.priced = packs.stream().allMatch(pack -> pack.price().isPresent());
    this.prices =
        this.packs.stream()
            .map(p -> priced ? p.price().orElseThrow().amount() : BigDecimal.ZERO)
            .toList();
    double largest = Math.max(wanting, this.packs.get(0).content().highNumber());
    this.unit = Math.pow(10, Math.ceil(Math.log10(largest))) / FINENESS;
    this.sizes =
        this.packs.stream().mapToLong(p -> Math.round(p.content().highNumber() / unit)).toArray();
    for (int i = 0; i < sizes.length; i++) {
      if (sizes[i] <= 0) {
        throw tooMany();
      }
    }
  }

  /** Covers stand in the order of their sums, so the first of equal cost has the least waste. */
  Purchase purchase() {
    var reached = new TreeMap<Long, State>();
    long wanted = (long) Math.ceil(wanting * (1 - ROUNDING) / unit);
    var covers = covers(reached, wanted);
    long least = covers.get(0).sum();
    long same = (long) (least * (1 + ROUNDING));
    var tight =
        covers.stream()
            .filter(cover -> cover.sum() <= same)
            .min(Comparator.comparing(Cover::state, CHEAPEST))
            .orElseThrow();
    var cheap = covers.stream().min(Comparator.comparing(cover -> cover.state().cost()));
    return new Purchase(
        product,
        need,
        inHand,
        choice(reached, tight),
        priced ? cheap.map(cover -> choice(reached, cover)) : Optional.empty());
  }

  private List<Cover> covers(NavigableMap<Long, State> reached, long wanted) {
    reached.put(0L, new State(BigDecimal.ZERO, 0, -1, 0));
    var covers = new ArrayList<Cover>();
    for (Long sum = 0L; sum != null; sum = reached.higherKey(sum)) {
      var state = reached.get(sum);
      if (sum >= wanted) {
        covers.add(new Cover(sum, state));
        continue;
      }
      for (int i = 0; i < sizes.length; i++) {
        var next = new State(state.cost().add(prices.get(i)), state.count() + 1, i, sum);
        reached.merge(sum + sizes[i], next, PackSearch::better);
      }
      if (reached.size() > MOST_SUMS) {
        throw tooMany();
      }
    }
    return covers;
  }

  private static State better(State first, State second) {
    return CHEAPEST.compare(second, first) < 0 ? second : first;
  }

  private PackChoice choice(NavigableMap<Long, State> reached, Cover cover) {
    var numbers = new long[packs.size()];
    for (long sum = cover.sum(); sum > 0; sum = reached.get(sum).before()) {
      numbers[reached.get(sum).pack()]++;
    }
    var counts = new ArrayList<PackCount>();
    double held = 0;
    for (int i = 0; i < numbers.length; i++) {
      if (numbers[i] > 0) {
        counts.add(new PackCount(packs.get(i), numbers[i]));
        held += numbers[i] * packs.get(i).content().highNumber();
      }
    }
    double over = held - wanting;
    double waste = over < ROUNDING * held ? 0 : over;
    boolean known = counts.stream().allMatch(count -> count.pack().price().isPresent());
    return new PackChoice(
        counts,
        Amounts.like(need, held, held),
        Amounts.like(need, waste, waste),
        known ? Optional.of(cost(counts)) : Optional.empty());
  }

  private static Price cost(List<PackCount> counts) {
    return counts.stream()
        .map(count -> count.pack().price().orElseThrow().times(count.number()))
        .reduce(Price::plus)
        .orElseThrow();
  }

  private InputProblem tooMany() {
    return InputProblem.of(
            need + " of " + product + " in packs of " + String.join(", ", contents()))
        .expected("sizes of which not too many different sums reach the need")
        .because(
            "the best packs are found by looking at every sum, and more than "
                + MOST_SUMS
                + " sums are possible here")
        .mend("leave out the sizes that are far too small for this need");
  }

  private List<String> contents() {
    return packs.stream().map(pack -> pack.content().toString()).toList();
  }
}
