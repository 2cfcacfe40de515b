package agro.dose.tank;

import agro.dose.SprayVolume;
import agro.report.InputProblem;
import agro.units.QuantityStyle;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;

/**
 * What is to be sprayed where and with which sprayer; {@link #evaluate()} works out loads, amounts,
 * water, what is left over, the order of mixing and the packs to buy.
 *
 * @param field the field
 * @param spray volume of spray per area, as calibrated
 * @param tank the tank
 * @param partners one or more products, each name once
 * @param lastLoad what is done with the part of a load that remains
 * @param order order of mixing
 * @param kit vessels at hand
 * @param style units of the reader
 */
public record TankMixPlan(
    SprayedField field,
    SprayVolume spray,
    SprayTank tank,
    List<TankPartner> partners,
    LastLoad lastLoad,
    MixingOrder order,
    MeasuringKit kit,
    QuantityStyle style) {

  /** Refuses two products of one name, and a rate on treated ground without a treated share. */
  public TankMixPlan {
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(spray, "spray");
    Objects.requireNonNull(tank, "tank");
    Objects.requireNonNull(lastLoad, "lastLoad");
    Objects.requireNonNull(order, "order");
    Objects.requireNonNull(kit, "kit");
    Objects.requireNonNull(style, "style");
    partners = List.copyOf(partners);
    var names = new HashSet<String>();
    for (var partner : partners) {
      TankRefusals.requireShare(field, partner);
      if (!names.add(partner.product())) {
        throw InputProblem.of("\"" + partner.product() + "\" is twice in the mix")
            .expected("each product once")
            .because("the same product in two lines is measured out twice")
            .mend("leave one of the two out, or name them apart");
      }
    }
  }

  /**
   * A plan without products yet: full loads and a part load, the order of mixing of {@link
   * PublishedMixingOrder#OKLAHOMA_STATE}, the usual kit, metric print.
   *
   * @param field the field
   * @param spray volume of spray per area, as calibrated
   * @param tank the tank
   * @return the plan
   */
  public static TankMixPlan of(SprayedField field, SprayVolume spray, SprayTank tank) {
    return new TankMixPlan(
        field,
        spray,
        tank,
        List.of(),
        LastLoad.PART_LOAD,
        PublishedMixingOrder.OKLAHOMA_STATE.order(),
        MeasuringKit.usual(),
        QuantityStyle.METRIC);
  }

  /**
   * The plan with one more product.
   *
   * @param partner the product
   * @return a new plan
   * @throws InputProblem if the product is in the mix already, or if its rate is per treated area
   *     and the field does not say which share of it is treated
   */
  public TankMixPlan with(TankPartner partner) {
    var more = new ArrayList<>(partners);
    more.add(partner);
    return new TankMixPlan(field, spray, tank, more, lastLoad, order, kit, style);
  }

  /**
   * The plan with another last load.
   *
   * @param choice what is done with the part of a load that remains
   * @return a new plan
   */
  public TankMixPlan lastLoad(LastLoad choice) {
    return new TankMixPlan(field, spray, tank, partners, choice, order, kit, style);
  }

  /**
   * The plan with another order of mixing.
   *
   * @param choice a published order, or the order of a label
   * @return a new plan
   */
  public TankMixPlan mixedAfter(MixingOrder choice) {
    return new TankMixPlan(field, spray, tank, partners, lastLoad, choice, kit, style);
  }

  /**
   * The plan with another kit.
   *
   * @param choice vessels at hand
   * @return a new plan
   */
  public TankMixPlan measuredWith(MeasuringKit choice) {
    return new TankMixPlan(field, spray, tank, partners, lastLoad, order, choice, style);
  }

  /**
   * The plan printed in other units.
   *
   * @param choice units of the reader
   * @return a new plan
   */
  public TankMixPlan printedIn(QuantityStyle choice) {
    return new TankMixPlan(field, spray, tank, partners, lastLoad, order, kit, choice);
  }

  /** A partner with its rate counted over the field, as the tank is filled. */
  TankPartner overField(TankPartner partner) {
    return field.treated().map(partner::overField).orElse(partner);
  }

  /**
   * Works out the mix.
   *
   * @return loads, amounts, water, leftover, order, packs and findings
   * @throws InputProblem if no product was given, if the products leave no room for water, or if
   *     the loads are so many that a unit must be wrong
   */
  public TankMix evaluate() {
    if (partners.isEmpty()) {
      throw InputProblem.of("a tank mix for " + field.name() + " without a product")
          .expected("one or more products with their rates")
          .because("water alone needs no plan")
          .mend("add the products with their label rates");
    }
    return TankMix.of(this);
  }
}
