package agro.dose.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.dose.ProductAmount;
import agro.report.InputProblem;
import agro.units.QuantityStyle;
import agro.units.VolumeUnit;
import agro.working.Caution;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Packs are whole, cover the need, and are the best of all; prices and sizes are invented. */
class PurchaseTest {

  private static PackOffer pack(String content, String price) {
    return PackOffer.of(content, Price.of(price, "OVC"));
  }

  private static Purchase buy(String need, PackOffer... packs) {
    return Purchase.of("Product A", ProductAmount.parse(need), List.of(packs));
  }

  /** Two small packs leave nothing over, one large pack is cheaper. */
  @Test
  void leastWasteAndLowestCostDiffer() {
    var purchase = buy("500 mL", pack("250 mL", "9"), pack("1 L", "15"));
    assertThat(purchase.leastWaste().printPacks()).isEqualTo("2 × 250 mL");
    assertThat(purchase.leastWaste().waste().highNumber()).isZero();
    assertThat(purchase.leastWaste().cost().orElseThrow()).hasToString("18 OVC");
    var cheap = purchase.leastCost().orElseThrow();
    assertThat(cheap.printPacks()).isEqualTo("1 × 1 L");
    assertThat(cheap.waste().highNumber()).isCloseTo(0.5, within(1e-12));
    assertThat(cheap.cost().orElseThrow()).hasToString("15 OVC");
  }

  /** Largest first (9 + 3 × 1 = 12 in four packs) is not the best: 6 + 6 costs less. */
  @Test
  void largestPackFirstIsNotAlwaysBest() {
    var purchase = buy("12 kg", pack("9 kg", "9"), pack("6 kg", "5"), pack("1 kg", "2"));
    assertThat(purchase.leastCost().orElseThrow().printPacks()).isEqualTo("2 × 6 kg");
    assertThat(purchase.leastWaste().printPacks()).isEqualTo("2 × 6 kg");
  }

  /** 13 from packs of 5 and 4 is two of 4 and one of 5. */
  @Test
  void sumsThatNeedBothSizes() {
    assertThat(buy("13 L", pack("5 L", "5"), pack("4 L", "5")).leastWaste().printPacks())
        .isEqualTo("1 × 5 L + 2 × 4 L");
    assertThat(buy("11 L", pack("5 L", "5"), pack("4 L", "5")).leastWaste().waste().highNumber())
        .isCloseTo(1, within(1e-12));
  }

  @Test
  void needOfExactlyOnePackIsOnePack() {
    double need = 0.1 + 0.2;
    var purchase =
        Purchase.of(
            "Product A",
            ProductAmount.liquid(need, VolumeUnit.LITRE),
            List.of(pack("100 mL", "1"), pack("300 mL", "2")));
    assertThat(purchase.leastWaste().printPacks()).isEqualTo("1 × 300 mL");
    assertThat(purchase.leastWaste().waste().highNumber()).isZero();
    assertThat(buy("0.300001 L", pack("100 mL", "1")).leastWaste().numberOfPacks()).isEqualTo(4);
  }

  @Test
  void gallonsAndLitresMeet() {
    var purchase =
        buy("2 gal (US)", pack("1 gal (US)", "40"), pack("1 qt (US)", "9"), pack("1 L", "10"));
    assertThat(purchase.leastCost().orElseThrow().printPacks()).isEqualTo("8 × 1 qt (US)");
    assertThat(purchase.leastWaste().waste().highNumber()).isZero();
    assertThat(purchase.leastWaste().cost().orElseThrow()).hasToString("72 OVC");
  }

  @Test
  void largeNeedInSeveralSmallSizes() {
    var purchase =
        buy(
            "487.3 L",
            pack("20 L", "180"),
            pack("5 L", "50"),
            pack("1 L", "12"),
            pack("250 mL", "4"),
            pack("100 mL", "2"));
    assertThat(purchase.leastWaste().waste().highNumber()).isCloseTo(0, within(1e-9));
    assertThat(purchase.leastWaste().packs().get(0).number()).isEqualTo(24);
    assertThat(purchase.leastCost().orElseThrow().cost().orElseThrow().amount())
        .isLessThanOrEqualTo(purchase.leastWaste().cost().orElseThrow().amount());
  }

  @Test
  void withoutAPriceThereIsNoCheapest() {
    var purchase = buy("600 g", pack("250 g", "5"), PackOffer.of("500 g"));
    assertThat(purchase.leastCost()).isEmpty();
    assertThat(purchase.leastWaste().printPacks()).isEqualTo("1 × 500 g + 1 × 250 g");
    assertThat(purchase.leastWaste().cost()).isEmpty();
    assertThat(purchase.working(QuantityStyle.METRIC).cautions()).isEqualTo(Caution.all());
  }

  @Test
  void sizesFarTooSmallAreRefused() {
    assertThatThrownBy(() -> buy("5000 L", pack("7 mL", "1"), pack("11 L", "1")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("leave out the sizes that are far too small");
  }

  /** All numbers of packs up to the cover, by brute force. */
  @Property(seed = "8", tries = 200)
  void packsCoverTheNeedAndNothingIsBetter(
      @ForAll @IntRange(min = 1, max = 120) int need,
      @ForAll @Size(min = 1, max = 3) List<@IntRange(min = 1, max = 40) Integer> sizes,
      @ForAll @IntRange(min = 0, max = 1000) int price) {
    var packs = new ArrayList<PackOffer>();
    for (int i = 0; i < sizes.size(); i++) {
      int each = (price + 137 * i) % 97;
      packs.add(
          new PackOffer(
              ProductAmount.liquid(sizes.get(i) / 10.0, VolumeUnit.LITRE),
              Optional.of(new Price(BigDecimal.valueOf(each), "OVC"))));
    }
    var purchase =
        Purchase.of("Product A", ProductAmount.liquid(need / 10.0, VolumeUnit.LITRE), packs);
    long[] best = bruteForce(need, packs, sizes);
    var tight = purchase.leastWaste();
    var cheap = purchase.leastCost().orElseThrow();
    for (var choice : List.of(tight, cheap)) {
      assertThat(choice.bought().lowNumber()).isGreaterThanOrEqualTo(need / 10.0 - 1e-9);
    }
    assertThat(tight.waste().highNumber()).isCloseTo((best[0] - need) / 10.0, within(1e-9));
    assertThat(tight.cost().orElseThrow().amount()).isEqualTo(BigDecimal.valueOf(best[1]));
    assertThat(cheap.cost().orElseThrow().amount()).isEqualTo(BigDecimal.valueOf(best[2]));
    assertThat(cheap.waste().highNumber()).isCloseTo((best[3] - need) / 10.0, within(1e-9));
  }

  /** Least sum with its least cost, and least cost with its least sum. */
  private static long[] bruteForce(int need, List<PackOffer> packs, List<Integer> sizes) {
    long[] best = {Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE};
    int most = 120;
    for (int a = 0; a <= most; a++) {
      for (int b = 0; b <= (sizes.size() > 1 ? most : 0); b++) {
        long two = (long) a * sizes.get(0) + (b == 0 ? 0 : (long) b * sizes.get(1));
        int c = 0;
        if (two < need && sizes.size() > 2) {
          c = (int) ((need - two + sizes.get(2) - 1) / sizes.get(2));
        }
        long sum = two + (c == 0 ? 0 : (long) c * sizes.get(2));
        if (sum < need) {
          continue;
        }
        long cost = cost(packs, 0, a) + cost(packs, 1, b) + cost(packs, 2, c);
        if (sum < best[0] || (sum == best[0] && cost < best[1])) {
          best[0] = sum;
          best[1] = cost;
        }
        if (cost < best[2] || (cost == best[2] && sum < best[3])) {
          best[2] = cost;
          best[3] = sum;
        }
      }
    }
    return best;
  }

  private static long cost(List<PackOffer> packs, int place, int number) {
    return number == 0
        ? 0
        : number * packs.get(place).price().orElseThrow().amount().longValueExact();
  }

  /** 12 L needed and 4.5 L in the store: packs for 7.5 L. */
  @Test
  void stockInHandIsTakenOff() {
    var packs = List.of(pack("1 L", "22.40"), pack("5 L", "79"));
    var need = ProductAmount.parse("12 L");
    var purchase = Purchase.of("Product A", need, ProductAmount.parse("4.5 L"), packs);
    assertThat(purchase.toBuy().highNumber()).isCloseTo(7.5, within(1e-12));
    assertThat(purchase.leastWaste().printPacks()).isEqualTo("1 × 5 L + 3 × 1 L");
    assertThat(purchase.leastWaste().waste().highNumber()).isCloseTo(0.5, within(1e-9));
    assertThat(purchase.working(QuantityStyle.METRIC).toText())
        .contains("= need − in hand", "= 12 L − 4.5 L", "= 7.5 L", "over = packs − to buy");
    assertThat(purchase.presentation().toText()).contains("In hand", "To buy");
  }

  @Test
  void enoughInHandBuysNothing() {
    for (var stock : List.of("12 L", "20 L")) {
      var purchase =
          Purchase.of(
              "Product A",
              ProductAmount.parse("12 L"),
              ProductAmount.parse(stock),
              List.of(pack("5 L", "79")));
      assertThat(purchase.leastWaste().printPacks()).isEqualTo("none");
      assertThat(purchase.leastWaste().numberOfPacks()).isZero();
      assertThat(purchase.toBuy().highNumber()).isZero();
      assertThat(purchase.isOneChoice()).isTrue();
      assertThat(purchase.working(QuantityStyle.METRIC).cautions()).isEqualTo(Caution.all());
    }
  }

  /** Of a range of the label both ends are bought for, less the same stock. */
  @Test
  void stockOfAPartnerIsTakenOffBothEnds() {
    var partner = OsmereVale.productA().withStock(ProductAmount.parse("4.6 L"));
    var mix = OsmereVale.onlyWith(partner).evaluate();
    assertThat(mix.purchases())
        .extracting(purchase -> purchase.leastWaste().printPacks())
        .containsExactly("none", "1 × 1 L");
    assertThat(mix.presentation().toText()).contains("In hand", "4.6 L");
  }
}
