package agro.dose.tank;

import agro.dose.Formulation;
import agro.dose.LabelLimits;
import agro.dose.LabelRate;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.ProductPerTreatedArea;
import agro.dose.ProductRate;
import agro.dose.SprayVolume;
import agro.dose.TreatedShare;
import agro.report.InputProblem;
import agro.units.Density;
import agro.units.Volume;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One product of a tank mix with what its label says.
 *
 * @param product name for print, for example {@code "Product A"}
 * @param rate product per area of the field, per treated area or per volume of spray, a range where
 *     the label has one
 * @param mixClass when it is mixed in; nothing where it was not stated
 * @param label limits of the label; nothing where none were recorded, which is never no limit
 * @param bulkDensity mass per volume of the loose powder or granule, measured; nothing otherwise
 * @param packs packs in which it is sold, possibly none
 * @param inHand what is in the store and still fit for use, one amount; nothing if not stated
 */
public record TankPartner(
    String product,
    ProductRate rate,
    Optional<MixClass> mixClass,
    Optional<PartnerLabel> label,
    Optional<Density> bulkDensity,
    List<PackOffer> packs,
    Optional<ProductAmount> inHand) {

  /** Refuses a product without a name, a rate that no spray carries, and packs of another kind. */
  public TankPartner {
    if (product.isBlank()) {
      throw InputProblem.of("a product without a name at " + rate)
          .expected("the name on the label")
          .because("a sheet for the sprayer has to say what goes into the tank")
          .mend("name the product");
    }
    TankRefusals.requireCarried(product, rate);
    TankRefusals.requireSomething(product, rate);
    Objects.requireNonNull(mixClass, "mixClass");
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(bulkDensity, "bulkDensity");
    packs = List.copyOf(packs);
    for (var pack : packs) {
      TankRefusals.requireLike(product, rate.amount(), pack);
    }
    if (inHand.isPresent()) {
      TankRefusals.requirePacks(product, packs);
      TankRefusals.requireStock(product, rate.amount(), inHand.get());
    }
  }

  /**
   * A product with its rate.
   *
   * @param product name for print
   * @param rate product per area of the field, per treated area or per volume of spray
   * @return the partner
   * @throws InputProblem if a spray cannot carry this kind of rate as it stands
   */
  public static TankPartner of(String product, ProductRate rate) {
    return new TankPartner(
        product,
        rate,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  /**
   * A product with its rate as the label writes it.
   *
   * @param product name for print
   * @param rate for example {@code "250-300 mL/acre"} or {@code "1 mL/L spray"}, and {@code "220
   *     g/ha treated area"} for bands
   * @return the partner
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws InputProblem if it is a rate of active ingredient, or if a spray cannot carry this kind
   *     of rate as it stands
   */
  public static TankPartner of(String product, String rate) {
    return of(product, TankRefusals.productRate(product, LabelRate.parse(rate)));
  }

  /**
   * The same product at another rate, for example the one for bands counted over the whole field.
   *
   * @param other product per area of the field or per volume of spray
   * @return the partner
   * @throws InputProblem if a spray cannot carry this kind of rate as it stands
   */
  public TankPartner at(ProductRate other) {
    return new TankPartner(product, other, mixClass, label, bulkDensity, packs, inHand);
  }

  /**
   * The same product with its formulation, which tells when it is mixed in.
   *
   * @param formulation type of formulation
   * @return the partner
   * @throws InputProblem if the formulation is not diluted in water
   */
  public TankPartner as(Formulation formulation) {
    return as(MixClass.of(formulation));
  }

  /**
   * The same product with its place in the order of mixing.
   *
   * @param other when it is mixed in
   * @return the partner
   */
  public TankPartner as(MixClass other) {
    return new TankPartner(product, rate, Optional.of(other), label, bulkDensity, packs, inHand);
  }

  /**
   * The same product with the limits of its label.
   *
   * @param recorded the limits
   * @return the partner
   */
  public TankPartner withLimits(LabelLimits recorded) {
    return withLabel(PartnerLabel.of(recorded));
  }

  /**
   * The same product with all that its label says and what is known of the use.
   *
   * @param read what was read from the label
   * @return the partner
   */
  public TankPartner withLabel(PartnerLabel read) {
    return new TankPartner(product, rate, mixClass, Optional.of(read), bulkDensity, packs, inHand);
  }

  /**
   * The same product with the density of the loose powder, so that it may be measured by volume.
   *
   * @param density measured mass per volume
   * @return the partner
   */
  public TankPartner withBulkDensity(Density density) {
    return new TankPartner(product, rate, mixClass, label, Optional.of(density), packs, inHand);
  }

  /**
   * The same product with the packs that are sold.
   *
   * @param offers the packs
   * @return the partner
   */
  public TankPartner withPacks(PackOffer... offers) {
    return new TankPartner(product, rate, mixClass, label, bulkDensity, List.of(offers), inHand);
  }

  /**
   * The same product with what is in the store already, which is taken from what has to be bought.
   *
   * @param stock one amount, still fit for use
   * @return the partner
   * @throws InputProblem if no packs were stated, or if the stock is a range or measured otherwise
   */
  public TankPartner withStock(ProductAmount stock) {
    return new TankPartner(product, rate, mixClass, label, bulkDensity, packs, Optional.of(stock));
  }

  /**
   * The same product with a rate per treated area counted over the field, as the tank is filled.
   *
   * @param share share of the field that gets wet
   * @return rate × share for a rate per treated area, and this partner for any other rate
   */
  public TankPartner overField(TreatedShare share) {
    return rate instanceof ProductPerTreatedArea onTreated ? at(share.overField(onTreated)) : this;
  }

  private ProductPerArea perField() {
    if (rate instanceof ProductPerArea dose) {
      return dose;
    }
    throw TankRefusals.noShare(this, "nothing says which share of a field it is");
  }

  /**
   * The amount in a volume of spray: rate per volume × volume, or rate per area × the area that the
   * volume is enough for.
   *
   * @param spray finished spray
   * @param perArea spray volume of the sprayer
   * @return low and high amount
   * @throws InputProblem for a rate per treated area, which {@link #overField} turns into one first
   */
  public ProductAmount in(Volume spray, SprayVolume perArea) {
    return rate instanceof ProductPerSprayVolume concentration
        ? concentration.in(spray)
        : perField().on(perArea.areaOf(spray));
  }

  /**
   * The dose per area of the field that this mix gives.
   *
   * @param spray spray volume of the sprayer
   * @return the rate itself, or the strength of the spray times the spray volume
   * @throws InputProblem for a rate per treated area, which {@link #overField} turns into one first
   */
  public ProductPerArea dose(SprayVolume spray) {
    return rate instanceof ProductPerSprayVolume concentration
        ? concentration.sprayedAt(spray)
        : perField();
  }

  /**
   * The strength of the spray in the tank.
   *
   * @param spray spray volume of the sprayer
   * @return the rate itself, or the dose per area divided by the spray volume
   * @throws InputProblem for a rate per treated area, which {@link #overField} turns into one first
   */
  public ProductPerSprayVolume strength(SprayVolume spray) {
    return rate instanceof ProductPerSprayVolume each ? each : perField().inSpray(spray);
  }
}
