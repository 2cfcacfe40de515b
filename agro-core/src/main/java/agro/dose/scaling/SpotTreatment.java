package agro.dose.scaling;

import agro.dose.LabelLimits;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.ProductPerTreatedArea;
import agro.dose.SprayVolume;
import agro.dose.Strength;
import agro.units.Area;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;
import java.util.Optional;

/**
 * Spots sprayed with a dose per litre: product = strength × spray made up. Nothing in it says what
 * the ground gets, so that the dose per treated area is worked out and held against the label.
 *
 * @param strength product per volume of spray
 * @param spray spray that is put on the spots, above zero
 * @param treated area of all spots together, above zero
 * @param field area of the field with the ground between the spots; nothing if it is not known
 * @param limits limits of the label
 * @param content strength of the product, needed where the label limits active ingredient
 */
public record SpotTreatment(
    ProductPerSprayVolume strength,
    Volume spray,
    Area treated,
    Optional<Area> field,
    LabelLimits limits,
    Optional<Strength> content) {

  /** Refuses spots without area and spots larger than the field. */
  public SpotTreatment {
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(content, "content");
    ScalingChecks.aboveZero(
        spray,
        "spray on the spots",
        "the product is strength times spray",
        "state how much spray was made up and used");
    ScalingChecks.aboveZero(
        treated,
        "area of the spots",
        "the dose per treated area is divided by it",
        "measure the ground that gets wet: width times length of the spots, times their number");
    field.ifPresent(
        whole ->
            ScalingChecks.notAbove(
                treated,
                "area of the spots",
                whole,
                "area of the field",
                "ground that is wetted twice gets the dose twice",
                "check the units of both areas"));
  }

  /**
   * Spots without a field around them and with the strength of the product not stated.
   *
   * @param strength product per volume of spray
   * @param spray spray that is put on the spots
   * @param treated area of all spots together
   * @param limits limits of the label
   * @return the treatment
   */
  public static SpotTreatment of(
      ProductPerSprayVolume strength, Volume spray, Area treated, LabelLimits limits) {
    return new SpotTreatment(strength, spray, treated, Optional.empty(), limits, Optional.empty());
  }

  /**
   * The same spots in a field.
   *
   * @param whole area of the field
   * @return the treatment
   */
  public SpotTreatment inField(Area whole) {
    return new SpotTreatment(strength, spray, treated, Optional.of(whole), limits, content);
  }

  /**
   * The same spots with the strength of the product stated.
   *
   * @param stated what the product holds
   * @return the treatment
   */
  public SpotTreatment withStrength(Strength stated) {
    return new SpotTreatment(strength, spray, treated, field, limits, Optional.of(stated));
  }

  /**
   * Works out the dose, printed in metric units.
   *
   * @return product, dose per treated area and per area of field, check and steps
   */
  public SpotTreatmentResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Works out the dose.
   *
   * @param style units of print
   * @return product, dose per treated area and per area of field, check and steps
   */
  public SpotTreatmentResult evaluate(QuantityStyle style) {
    var product = strength.in(spray);
    var volume = new TreatedSprayVolume(spray.dividedBy(treated));
    var onSpots = ProductPerTreatedArea.ofHectare(product.times(10_000 / treated.squareMetres()));
    var onField =
        field.map(whole -> ProductPerArea.ofHectare(product.times(10_000 / whole.squareMetres())));
    var fieldSpray = field.map(whole -> new SprayVolume(spray.dividedBy(whole)));
    var working =
        Working.of("Spot treatment")
            .step(
                "product",
                "strength × spray",
                strength + " × " + style.print(spray),
                product.print(style),
                ScalingSources.UNITS_ALONE)
            .step(
                "spray per treated area",
                "spray / area of the spots",
                style.print(spray) + " / " + style.print(treated),
                style.print(volume.perTreatedArea()))
            .step(
                "product per treated area",
                "product / area of the spots",
                product.print(style) + " / " + style.print(treated),
                onSpots.print(style));
    if (onField.isPresent()) {
      working =
          working.step(
              "product per area of field, beside the treated area",
              "product / area of the field",
              product.print(style) + " / " + style.print(field.get()),
              onField.get().print(style));
    }
    var notStated = "field not stated";
    var table =
        new SideBySide("Spots and field")
            .row(
                "Product",
                onSpots.print(style),
                onField.map(rate -> rate.print(style)).orElse(notStated))
            .row(
                "Spray",
                style.print(volume.perTreatedArea()),
                fieldSpray.map(rate -> rate.print(style)).orElse(notStated))
            .table();
    var check = new TreatedAreaCheck(limits, onSpots, content).evaluate();
    working = working.followedBy(check.working()).withCautions(Caution.all());
    return new SpotTreatmentResult(
        product, volume, onSpots, onField, fieldSpray, check.findings(), table, working);
  }
}
