package agro.dose.tank;

import agro.dose.ProductAmount;
import agro.report.InputProblem;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The packs to buy for one need: those that leave the least over, and those that cost least. They
 * differ where a large pack is cheap.
 *
 * @param product name of the product
 * @param need amount that has to be covered, one amount above zero
 * @param inHand product of it that is in the store already, one amount, zero or more
 * @param leastWaste packs with the smallest waste; of those, the cheapest
 * @param leastCost packs with the lowest cost; of those, the smallest waste; nothing where a price
 *     is not known
 */
public record Purchase(
    String product,
    ProductAmount need,
    ProductAmount inHand,
    PackChoice leastWaste,
    Optional<PackChoice> leastCost)
    implements Presentable {

  /** A need this share above the stock is rounding and no product. */
  private static final double ROUNDING = 1e-9;

  /** Refuses nulls. */
  public Purchase {
    Objects.requireNonNull(product, "product");
    Objects.requireNonNull(need, "need");
    Objects.requireNonNull(inHand, "inHand");
    Objects.requireNonNull(leastWaste, "leastWaste");
    Objects.requireNonNull(leastCost, "leastCost");
  }

  /**
   * The packs that cover a need. All numbers of packs that can matter are looked at, so the answer
   * is the best one and no approximation.
   *
   * @param product name of the product
   * @param need one amount above zero; of a range, choose an end first
   * @param packs the packs that are sold, one or more, priced in one currency
   * @return packs of least waste and of least cost
   * @throws InputProblem if the need is a range or nothing, if no pack is sold, if packs and need
   *     are measured differently or priced in two currencies, or if the packs are so small beside
   *     the need that the sums are too many to look at
   */
  public static Purchase of(String product, ProductAmount need, List<PackOffer> packs) {
    return of(product, need, Amounts.like(need, 0, 0), packs);
  }

  /**
   * The packs that cover what a need takes beyond the stock in hand.
   *
   * @param product name of the product
   * @param need one amount above zero; of a range, choose an end first
   * @param inHand what is in the store and still fit for use, one amount, zero or more
   * @param packs the packs that are sold, one or more, priced in one currency
   * @return packs of least waste and of least cost; no packs where the stock is enough
   * @throws InputProblem as without a stock, and if the stock is a range or measured differently
   */
  public static Purchase of(
      String product, ProductAmount need, ProductAmount inHand, List<PackOffer> packs) {
    requireNeed(product, need);
    TankRefusals.requireStock(product, need, inHand);
    if (packs.isEmpty()) {
      throw InputProblem.of("no pack of " + product + " was given")
          .expected("one or more sizes that are sold")
          .because("what is bought comes in whole packs of those sizes")
          .mend("copy sizes and prices from the shop");
    }
    for (var pack : packs) {
      TankRefusals.requireLike(product, need, pack);
    }
    requireOneCurrency(packs);
    return wanting(need, inHand) > 0
        ? new PackSearch(product, need, inHand, packs).purchase()
        : enough(product, need, inHand);
  }

  private static Purchase enough(String product, ProductAmount need, ProductAmount inHand) {
    var nothing = Amounts.like(need, 0, 0);
    var none = new PackChoice(List.of(), nothing, nothing, Optional.empty());
    return new Purchase(product, need, inHand, none, Optional.of(none));
  }

  /** The number that the stock leaves open, in the base unit. */
  static double wanting(ProductAmount need, ProductAmount inHand) {
    double open = need.highNumber() - inHand.highNumber();
    return open > ROUNDING * need.highNumber() ? open : 0;
  }

  /**
   * What has to be bought: need − stock in hand.
   *
   * @return one amount, zero where the stock is enough
   */
  public ProductAmount toBuy() {
    double open = wanting(need, inHand);
    return Amounts.like(need, open, open);
  }

  private static void requireNeed(String product, ProductAmount need) {
    if (!need.isSingle() || !(need.highNumber() > 0)) {
      throw InputProblem.of("packs of " + product + " are asked for a need of " + need)
          .expected("one amount above zero")
          .because("packs for the low end of a range do not cover its high end")
          .mend("ask for the low and for the high end, each by itself");
    }
  }

  private static void requireOneCurrency(List<PackOffer> packs) {
    var prices = packs.stream().flatMap(pack -> pack.price().stream()).toList();
    prices.forEach(price -> prices.get(0).requireSame(price));
  }

  /**
   * Whether the packs that leave least over are those that cost least.
   *
   * @return true if both are the same packs; false if they differ or a price is not known
   */
  public boolean isOneChoice() {
    return leastCost.filter(cheap -> cheap.packs().equals(leastWaste.packs())).isPresent();
  }

  /**
   * The steps with their units.
   *
   * @param style units of the reader
   * @return what the packs hold, what is over, and what it costs, with the cautions
   */
  public Working working(QuantityStyle style) {
    var working =
        steps(
            stock(Working.of("Packs of " + product), style),
            isOneChoice() ? "least waste and lowest cost" : "least waste",
            leastWaste,
            style);
    if (leastCost.isPresent() && !isOneChoice()) {
      working = steps(working, "lowest cost", leastCost.get(), style);
    }
    return working.withCautions(Caution.all());
  }

  private Working stock(Working start, QuantityStyle style) {
    return inHand.highNumber() > 0
        ? start.step(
            product + ", to buy",
            "to buy = need − in hand, never below nothing",
            need.print(style) + " − " + inHand.print(style),
            toBuy().print(style),
            TankSources.PACKS)
        : start;
  }

  private Working steps(Working start, String choice, PackChoice packs, QuantityStyle style) {
    if (packs.packs().isEmpty()) {
      return start;
    }
    var working =
        start.step(
            product + ", packs of the " + choice,
            inHand.highNumber() > 0 ? "over = packs − to buy" : "over = packs − need",
            packs.printPacks() + " − " + toBuy().print(style),
            packs.waste().print(style) + " over",
            TankSources.PACKS);
    return packs.cost().isEmpty()
        ? working
        : working.step(
            product + ", cost of the " + choice,
            "cost = sum of number × price",
            packs.printCost(),
            packs.cost().get().toString());
  }

  @Override
  public Presentation presentation() {
    var page = Presentation.titled("What to buy of " + product);
    page.fact("Need", need.print(QuantityStyle.METRIC));
    if (inHand.highNumber() > 0) {
      page.fact("In hand", inHand.print(QuantityStyle.METRIC));
      page.fact("To buy", toBuy().print(QuantityStyle.METRIC));
    }
    return page.working(working(QuantityStyle.METRIC)).build();
  }
}
