package agro.dose.tank;

import agro.dose.ActiveRate;
import agro.dose.LabelRate;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.ProductPerTreatedArea;
import agro.dose.ProductRate;
import agro.dose.RateKind;
import agro.report.InputProblem;
import java.util.List;

/** What a tank mix refuses, with the sentence that mends it. */
final class TankRefusals {

  private TankRefusals() {}

  static ProductRate productRate(String product, LabelRate rate) {
    if (rate instanceof ActiveRate) {
      throw InputProblem.of(product + " is to be mixed at " + rate)
          .expected("a rate of the product, per area of the field or per volume of spray")
          .because(
              "what is measured out is product; taken for product, a rate of active ingredient"
                  + " gives too little by the strength, five times too little at 20 %")
          .mend("turn it into product with the strength of the formulation first");
    }
    return (ProductRate) rate;
  }

  static void requireCarried(String product, ProductRate rate) {
    if (rate instanceof ProductPerArea
        || rate instanceof ProductPerTreatedArea
        || rate instanceof ProductPerSprayVolume) {
      return;
    }
    throw InputProblem.of(product + " has a rate of " + rate + ", " + rate.kind().words())
        .expected("product per area of the field, per treated area or per volume of spray")
        .because("loads are counted on the area of the field and on the volume of spray")
        .mend(cure(rate.kind()));
  }

  static void requireShare(SprayedField field, TankPartner partner) {
    if (field.treated().isEmpty() && partner.rate() instanceof ProductPerTreatedArea) {
      throw noShare(partner, "the field \"" + field.name() + "\" does not say which share it is");
    }
  }

  static InputProblem noShare(TankPartner partner, String where) {
    return InputProblem.of(partner.product() + " at " + partner.rate() + ", but " + where)
        .expected("the share of the field that gets wet, beside a rate per treated area")
        .because(
            "the tank is filled for the field: bands of a third counted as the whole field take"
                + " three times the product")
        .mend("state band width and row spacing, or the treated area, with the field");
  }

  static void requireSomething(String product, ProductRate rate) {
    if (!(rate.amount().highNumber() > 0)) {
      throw InputProblem.of(product + " has a rate of " + rate)
          .expected("a rate above zero")
          .because("a product that is not put in is no partner of the mix")
          .mend("copy the rate of the label, or leave the product out");
    }
  }

  private static String cure(RateKind kind) {
    return switch (kind) {
      case PRODUCT_PER_TREE_ROW_VOLUME, PRODUCT_PER_LEAF_WALL_AREA ->
          "turn it into product per ground area with the canopy of the label first";
      default -> "work this rate out per plant, row, seed or heap; it does not depend on a spray";
    };
  }

  static void requireLike(String product, ProductAmount rate, PackOffer pack) {
    if (!rate.isLike(pack.content())) {
      throw InputProblem.of(
              product + " is dosed as " + rate.words() + ", but a pack holds " + pack.content())
          .expected("packs that are measured as the product is dosed")
          .because("a mass becomes a volume only through a density, which is never guessed")
          .mend("copy the content of the pack from its label in the measure of the rate");
    }
  }

  static void requireStock(String product, ProductAmount need, ProductAmount inHand) {
    if (!need.isLike(inHand) || !inHand.isSingle()) {
      throw InputProblem.of(
              inHand + " of " + product + " in hand beside " + need.words() + " that is needed")
          .expected("one amount, measured as the product is dosed")
          .because("what is in hand is taken from what has to be bought")
          .mend("measure what is left in the packs, in the measure of the rate");
    }
  }

  static void requirePacks(String product, List<PackOffer> packs) {
    if (packs.isEmpty()) {
      throw InputProblem.of("a stock of " + product + " in hand, but no packs that are sold")
          .expected("the packs first, then the stock")
          .because("what the stock leaves open is bought in whole packs")
          .mend("state sizes and prices of the packs before the stock in hand");
    }
  }

  static InputProblem mixOf(String product, Object amount, Object made) {
    return InputProblem.of(product + " with " + amount + " would more than fill " + made)
        .expected("liquid products that leave room for water")
        .because("a rate ten or a hundred times too high looks like this")
        .mend("look at the decimal point and at the unit of the rate and of the spray volume");
  }
}
