package agro.programme;

import agro.dose.DosePerArea;
import agro.dose.LabelEntry;
import agro.dose.LabelLimits;
import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What the user has recorded of one label for one crop.
 *
 * @param product what the product is called here
 * @param crop the crop of the label
 * @param pests pests for which it is labelled; empty if not recorded
 * @param actives its active ingredients; empty if not recorded
 * @param dose the dose that is usually taken; nothing if not recorded
 * @param limits limits counted on this product; a maximum in active ingredient stands in {@code
 *     caps}
 * @param caps maximum doses of active ingredient, counted over all products that hold it
 * @param stewardship rain-free time and bees
 * @param further cells of further columns of the user's table by column, for what this record does
 *     not know: cost, hazard class, days of residue
 * @param location where it was read
 */
public record LabelRecord(
    String product,
    String crop,
    List<String> pests,
    List<LabelActive> actives,
    Optional<DosePerArea> dose,
    LabelLimits limits,
    List<ActiveCap> caps,
    Stewardship stewardship,
    Map<String, String> further,
    SourceLocation location) {

  /**
   * What a label says of rain and bees.
   *
   * @param rainFree time without rain that the spray needs after its end
   * @param bees what is asked for bees
   * @param beeHours time before bees fly by which the application has to be over
   */
  public record Stewardship(
      LabelEntry<Duration> rainFree, LabelEntry<BeeRule> bees, LabelEntry<Duration> beeHours) {

    /** Refuses nulls. */
    public Stewardship {
      Objects.requireNonNull(rainFree, "rainFree");
      Objects.requireNonNull(bees, "bees");
      Objects.requireNonNull(beeHours, "beeHours");
    }

    /**
     * Nothing recorded.
     *
     * @return three entries that are not recorded
     */
    public static Stewardship notRecorded() {
      return new Stewardship(
          LabelEntry.notRecorded(), LabelEntry.notRecorded(), LabelEntry.notRecorded());
    }
  }

  /** Refuses a record without product or crop. */
  public LabelRecord {
    product = product.strip();
    crop = crop.strip();
    pests = List.copyOf(pests);
    actives = List.copyOf(actives);
    Objects.requireNonNull(dose, "dose");
    Objects.requireNonNull(limits, "limits");
    caps = List.copyOf(caps);
    Objects.requireNonNull(stewardship, "stewardship");
    further = Map.copyOf(further);
    Objects.requireNonNull(location, "location");
    if (product.isEmpty() || crop.isEmpty()) {
      throw InputProblem.at(location, "a label record of \"" + product + "\" on \"" + crop + "\"")
          .expected("a product and the crop for which its label was read")
          .because("limits of one crop do not hold for another")
          .mend("name both");
    }
  }

  /**
   * A record of a product on a crop with limits and nothing else.
   *
   * @param product the product
   * @param crop the crop
   * @param limits its limits
   * @param actives its active ingredients
   * @return the record
   */
  public static LabelRecord of(
      String product, String crop, LabelLimits limits, LabelActive... actives) {
    return new LabelRecord(
        product,
        crop,
        List.of(),
        List.of(actives),
        Optional.empty(),
        limits,
        List.of(),
        Stewardship.notRecorded(),
        Map.of(),
        SourceLocation.NONE);
  }

  /**
   * The same record with caps of active ingredient.
   *
   * @param other the caps
   * @return a new record
   */
  public LabelRecord withCaps(ActiveCap... other) {
    return new LabelRecord(
        product,
        crop,
        pests,
        actives,
        dose,
        limits,
        List.of(other),
        stewardship,
        further,
        location);
  }

  /**
   * The same record with what the label says of rain and bees.
   *
   * @param other the entries
   * @return a new record
   */
  public LabelRecord with(Stewardship other) {
    return new LabelRecord(
        product, crop, pests, actives, dose, limits, caps, other, further, location);
  }

  /**
   * The same record with a usual dose.
   *
   * @param other the dose
   * @return a new record
   */
  public LabelRecord withDose(DosePerArea other) {
    return new LabelRecord(
        product,
        crop,
        pests,
        actives,
        Optional.of(other),
        limits,
        caps,
        stewardship,
        further,
        location);
  }

  /**
   * The record in words.
   *
   * @return for example {@code "Product A on leeks"}
   */
  public String use() {
    return product + " on " + crop;
  }

  @Override
  public String toString() {
    return use();
  }
}
