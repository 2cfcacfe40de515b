package agro.dose.tank;

import agro.dose.DoseBound;
import agro.dose.DoseLimit;
import agro.dose.Formulation;
import agro.dose.LabelLimits;
import agro.dose.LabelSprayVolume;
import agro.dose.ProductPerArea;
import agro.dose.SprayVolume;
import agro.units.Volume;

/** An invented field of Osmere Vale with three invented products. */
final class OsmereVale {

  private OsmereVale() {}

  static TankMixPlan threePartners() {
    return TankMixPlan.of(
            SprayedField.parse("Mill Piece", "3.7 ha"),
            SprayVolume.parse("300 L/ha"),
            SprayTank.mounted(Volume.parse("400 L")).withDeadVolume(Volume.parse("10 L")))
        .with(productA())
        .with(productB())
        .with(productC());
  }

  /** The same field and sprayer with one partner. */
  static TankMixPlan onlyWith(TankPartner partner) {
    return TankMixPlan.of(
            SprayedField.parse("Mill Piece", "3.7 ha"),
            SprayVolume.parse("300 L/ha"),
            SprayTank.mounted(Volume.parse("400 L")).withDeadVolume(Volume.parse("10 L")))
        .with(partner);
  }

  /** A liquid with a range per area. */
  static TankPartner productA() {
    var limits =
        LabelLimits.of("Product A on leeks")
            .with(DoseLimit.maximum(ProductPerArea.parse("1.5 L/ha")))
            .with(DoseLimit.none(DoseBound.MINIMUM));
    return TankPartner.of("Product A", "1.2-1.5 L/ha")
        .as(Formulation.of("EC"))
        .withLimits(limits)
        .withPacks(
            PackOffer.of("1 L", Price.of("22.40", "OVC")),
            PackOffer.of("5 L", Price.of("79", "OVC")));
  }

  /** A powder per area. */
  static TankPartner productB() {
    var limits =
        LabelLimits.of("Product B on leeks")
            .with(DoseLimit.maximum(ProductPerArea.parse("250 g/ha")));
    return TankPartner.of("Product B", "200 g/ha")
        .as(Formulation.of("WG"))
        .withLimits(limits)
        .withPacks(PackOffer.of("250 g", Price.of("18", "OVC")), PackOffer.of("1 kg"));
  }

  /** An adjuvant per volume of spray. */
  static TankPartner productC() {
    var label =
        PartnerLabel.of(
                LabelLimits.of("Product C")
                    .with(DoseLimit.maximum(ProductPerArea.parse("0.5 L/ha"))))
            .assuming(LabelSprayVolume.parse("200-400 L/ha"));
    return TankPartner.of("Product C", "50 mL/100 L spray")
        .as(MixClass.SURFACTANT)
        .withLabel(label);
  }
}
