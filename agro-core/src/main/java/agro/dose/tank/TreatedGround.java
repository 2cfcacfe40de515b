package agro.dose.tank;

import agro.dose.DoseFinding;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.ProductPerTreatedArea;
import agro.dose.Severity;
import agro.dose.SprayVolume;
import agro.dose.TreatedShare;
import agro.units.Area;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The ground of a plan that gets wet. The hectare of a label is the hectare that gets wet, so doses
 * and spray volumes are compared with a label here and not over the field.
 */
record TreatedGround(TankMixPlan plan) {

  private static final String WORDS = ", on treated ground";

  /** Whether a part of the field stays dry. */
  boolean isPart() {
    return share() < 1;
  }

  double share() {
    return plan.field().treated().map(TreatedShare::number).orElse(1.0);
  }

  /** The part of a field area that gets wet. */
  Area of(Area field) {
    return isPart() ? field.times(share()) : field;
  }

  /** Spray per area of treated ground, which is what a label means by spray per area. */
  SprayVolume spray() {
    return isPart() ? new SprayVolume(plan.spray().perArea().dividedBy(share())) : plan.spray();
  }

  /** The dose on treated ground, which is what a label means by dose per area. */
  ProductPerArea dose(TankPartner partner) {
    if (partner.rate() instanceof ProductPerTreatedArea rate) {
      return new ProductPerArea(rate.amount(), rate.per());
    }
    if (partner.rate() instanceof ProductPerSprayVolume rate) {
      return rate.sprayedAt(spray());
    }
    var rate = (ProductPerArea) partner.rate();
    return isPart() ? rate.withAmount(rate.amount().times(1 / share())) : rate;
  }

  /** A finding about a dose or a volume per area says on which ground. */
  DoseFinding named(DoseFinding finding) {
    boolean perArea =
        finding.rule().contains(" dose per ") || finding.rule().startsWith("spray volume");
    return isPart() && perArea
        ? new DoseFinding(finding.severity(), finding.rule() + WORDS, finding.sentence())
        : finding;
  }

  /** What to look at where figures were counted over the field. */
  List<DoseFinding> remarks(TankPartner partner) {
    var found = new ArrayList<DoseFinding>();
    if (isPart() && partner.rate() instanceof ProductPerArea) {
      found.add(
          warning(
              partner.product() + ": rate over the field",
              "The rate of "
                  + partner.rate()
                  + " is counted over the whole field, which makes it "
                  + dose(partner).print(plan.style())
                  + " on treated ground. If the label means the ground that gets wet, write"
                  + " \"treated area\" behind the rate."));
    }
    boolean earlier =
        partner.label().flatMap(PartnerLabel::use).filter(u -> !u.earlier().isEmpty()).isPresent();
    if (isPart() && earlier) {
      found.add(
          warning(
              partner.product() + ": earlier applications",
              "They are added as doses on treated ground. One that was written down over the field"
                  + " counts for too little: state it on the ground that got wet."));
    }
    return found;
  }

  private static DoseFinding warning(String rule, String sentence) {
    return new DoseFinding(Severity.WARNING, rule, sentence);
  }

  /** Treated ground and field side by side; nothing for a plan that was told of no share. */
  Optional<ResultTable> table() {
    if (plan.field().treated().isEmpty()) {
      return Optional.empty();
    }
    var style = plan.style().per(plan.field().land());
    var rows = new ArrayList<List<Cell>>();
    var area = plan.field().area();
    rows.add(row("Area", style.print(of(area)), style.print(area)));
    rows.add(row("Spray", spray().print(style), plan.spray().print(style)));
    for (var partner : plan.partners()) {
      var overField = plan.overField(partner).dose(plan.spray());
      rows.add(row(partner.product(), dose(partner).print(style), overField.print(style)));
    }
    var columns =
        List.of(Column.of("Figure"), Column.of("On treated ground"), Column.of("Over the field"));
    return Optional.of(
        ResultTable.of("Treated ground and field", columns, rows)
            .withNote(
                "Here: "
                    + plan.field().treated().orElseThrow().print(plan.style())
                    + ". Limits of labels are compared on treated ground; the tank is filled for"
                    + " the field."));
  }

  private static List<Cell> row(String name, String treated, String field) {
    return List.of(Cell.text(name), Cell.text(treated), Cell.text(field));
  }
}
