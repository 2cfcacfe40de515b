package agro.programme.interval;

import agro.dose.UseCondition;
import agro.programme.CropPlanting;
import agro.programme.Programme;
import agro.programme.SprayedProduct;
import agro.programme.Spraying;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A programme with everything that its rules are held against.
 *
 * @param programme labels, fields, crops, applications
 * @param sideEffects the user's table of side effects on natural enemies
 * @param beeFlight hours in which bees fly; nothing if no rule is set
 * @param circumstances whether the conditions hold that labels attach to limits
 */
public record SeasonRules(
    Programme programme,
    SideEffectTable sideEffects,
    Optional<BeeFlight> beeFlight,
    Map<UseCondition, Boolean> circumstances) {

  private static final LocalTime NOON = LocalTime.NOON;

  /** Copies the circumstances. */
  public SeasonRules {
    Objects.requireNonNull(programme, "programme");
    Objects.requireNonNull(sideEffects, "sideEffects");
    Objects.requireNonNull(beeFlight, "beeFlight");
    circumstances = Map.copyOf(circumstances);
  }

  /**
   * The rules of a programme, without side effects and hours of flight.
   *
   * @param programme the programme
   * @return the rules
   */
  public static SeasonRules of(Programme programme) {
    return new SeasonRules(programme, SideEffectTable.of(), Optional.empty(), Map.of());
  }

  /**
   * The same with a table of side effects.
   *
   * @param table the user's table
   * @return new rules
   */
  public SeasonRules with(SideEffectTable table) {
    return new SeasonRules(programme, table, beeFlight, circumstances);
  }

  /**
   * The same with hours in which bees fly.
   *
   * @param flight the hours
   * @return new rules
   */
  public SeasonRules with(BeeFlight flight) {
    return new SeasonRules(programme, sideEffects, Optional.of(flight), circumstances);
  }

  /**
   * The same for another programme.
   *
   * @param other the programme
   * @return new rules
   */
  public SeasonRules with(Programme other) {
    return new SeasonRules(other, sideEffects, beeFlight, circumstances);
  }

  /**
   * The same with a circumstance that a label names.
   *
   * @param words the words of the label
   * @param holds whether it holds
   * @return new rules
   */
  public SeasonRules withCircumstance(String words, boolean holds) {
    var more = new HashMap<>(circumstances);
    more.put(new UseCondition(words), holds);
    return new SeasonRules(programme, sideEffects, beeFlight, more);
  }

  /**
   * Holds one application against the rules, beside all others of the programme. An application of
   * the programme with the same name is taken to be this one.
   *
   * @param spraying the application, made or planned
   * @return what each rule says
   */
  public ApplicationVerdict check(Spraying spraying) {
    var findings = new ArrayList<RuleFinding>();
    var field = programme.field(spraying.field());
    var planting = programme.plantingFor(field.name(), spraying.day(field.zone()));
    for (var product : spraying.products()) {
      if (planting.isEmpty()) {
        findings.add(
            RuleFinding.of(
                Permission.NOT_RECORDED,
                LimitRule.LABELLED_USE,
                product.product(),
                "crop: not recorded",
                "No crop is entered for " + field.name() + " on that day or later."));
      } else {
        check(spraying, product, planting.get(), findings);
      }
    }
    return new ApplicationVerdict(spraying, findings);
  }

  private void check(
      Spraying spraying,
      SprayedProduct product,
      CropPlanting planting,
      List<RuleFinding> findings) {
    var label = programme.labels().find(product.product(), planting.crop());
    if (label.isEmpty()) {
      findings.add(
          RuleFinding.of(
              Permission.NOT_RECORDED,
              LimitRule.LABELLED_USE,
              product.product() + " on " + planting.crop(),
              "label record of the use: not recorded",
              "There is no label record of this use: look whether the label names the crop."));
      return;
    }
    var planned = PlannedProduct.of(this, spraying, product, label.get(), planting);
    NumberRule.check(planned, findings);
    SpacingRule.check(planned, findings);
    AmountRule.check(planned, findings);
    HarvestRule.check(planned, findings);
    DistanceRule.check(planned, findings);
    BloomRule.check(planned, findings);
    HelperRule.check(planned, findings);
  }

  /**
   * Holds every application of the programme against the rules.
   *
   * @return a verdict for each, in the order of the programme
   */
  public List<ApplicationVerdict> checkAll() {
    return programme.sprayings().stream().map(this::check).toList();
  }

  /**
   * An application of one product as it would be planned for a day: at the dose of the label
   * record, at noon or, where picking takes longer, when the picking of a day is over.
   *
   * @param field the field
   * @param product the product
   * @param day the day
   * @return the application
   */
  public Spraying planned(String field, String product, LocalDate day) {
    var zone = programme.field(field).zone();
    var planting = programme.plantingFor(field, day);
    var hour =
        planting.flatMap(each -> each.picking().doneBy()).filter(NOON::isBefore).orElse(NOON);
    var start = ZonedDateTime.of(day, hour, zone);
    var dose =
        planting
            .flatMap(each -> programme.labels().find(product, each.crop()))
            .flatMap(label -> label.dose());
    return Spraying.of(
        "planned: " + product + ", " + field + ", " + day,
        start,
        start,
        field,
        new SprayedProduct(product, dose, ""));
  }
}
