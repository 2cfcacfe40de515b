package agro.dose.tank;

import static org.assertj.core.api.Assertions.assertThat;

import agro.dose.Formulation;
import agro.dose.SprayVolume;
import agro.source.Standing;
import agro.units.QuantityStyle;
import agro.units.Volume;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Orders of mixing against what their sources print. */
class MixingOrderTest {

  private static TankMixPlan plan(String... codes) {
    var plan =
        TankMixPlan.of(
            SprayedField.parse("Mill Piece", "1 ha"),
            SprayVolume.parse("200 L/ha"),
            SprayTank.mounted(Volume.parse("400 L")));
    for (var code : codes) {
      plan = plan.with(TankPartner.of(code, "1 L/ha").as(Formulation.of(code)));
    }
    return plan;
  }

  private static List<String> products(MixingSequence sequence) {
    var products = new ArrayList<String>();
    sequence.steps().forEach(step -> products.addAll(step.products()));
    return products;
  }

  /** Oklahoma State, South Dakota State, Manitoba guide, Canadian farm press; one from memory. */
  @ParameterizedTest
  @CsvSource({
    "OKLAHOMA_STATE, CS SL EC, ''",
    "SOUTH_DAKOTA_STATE, SL EC CS, ''",
    "MANITOBA, SL EC, CS",
    "CANADIAN_FARM_PRESS, EC SL, CS",
    "RECALLED, CS EC, SL"
  })
  void sourcesDisagreeOnCapsulesAndSolutions(
      PublishedMixingOrder published, String order, String withoutPlace) {
    var sequence = plan("EC", "CS", "SL").mixedAfter(published.order()).evaluate().sequence();
    assertThat(String.join(" ", products(sequence))).isEqualTo(order);
    assertThat(String.join(" ", sequence.withoutPlace())).isEqualTo(withoutPlace);
  }

  @Test
  void disagreementOnCapsulesIsSaidEitherWay() {
    var before = plan("EC", "CS").evaluate().sequence();
    assertThat(before.disagreements())
        .containsExactly(
            "Sources disagree: South Dakota State University Extension puts emulsifiable"
                + " concentrates before capsule suspensions; Oklahoma State University Extension"
                + " has it the other way round.");
    var after =
        plan("EC", "CS")
            .mixedAfter(PublishedMixingOrder.SOUTH_DAKOTA_STATE.order())
            .evaluate()
            .sequence();
    assertThat(after.disagreements())
        .hasSize(2)
        .allSatisfy(s -> assertThat(s).contains("capsule suspensions before emulsifiable"));
    assertThat(plan("EC", "WG").evaluate().sequence().disagreements()).isEmpty();
  }

  @Test
  void dryComesBeforeSuspensionsBeforeEmulsionsEverywhere() {
    for (var published : PublishedMixingOrder.values()) {
      var sequence = plan("EC", "SC", "WG").mixedAfter(published.order()).evaluate().sequence();
      assertThat(products(sequence)).containsExactly("WG", "SC", "EC");
    }
  }

  /** Shares of water as printed: half to three quarters; a third, then 80 %; and so on. */
  @ParameterizedTest
  @CsvSource({
    "OKLAHOMA_STATE, 200 L to 300 L",
    "SOUTH_DAKOTA_STATE, 133.3 L|320 L",
    "MANITOBA, 100 L to 300 L",
    "CANADIAN_FARM_PRESS, 200 L"
  })
  void waterStandsInLitresOfTheLoad(PublishedMixingOrder published, String levels) {
    var sequence = plan("EC").mixedAfter(published.order()).evaluate().sequence();
    var printed =
        sequence.table(Volume.parse("400 L"), QuantityStyle.METRIC).rows().stream()
            .map(row -> row.get(2).printed())
            .filter(cell -> !cell.isEmpty())
            .toList();
    assertThat(String.join("|", printed)).isEqualTo(levels);
  }

  @ParameterizedTest
  @EnumSource(PublishedMixingOrder.class)
  void everyOrderNamesItsSourceAndTheReminders(PublishedMixingOrder published) {
    var page = plan("EC").mixedAfter(published.order()).evaluate().presentation().toText();
    assertThat(page)
        .contains("labels come first", "jar test", "no more than a few partners")
        .contains("Order used: " + published.order().name());
    assertThat(published.order().steps()).hasSizeGreaterThan(5);
    assertThat(published.order().source().standing())
        .isEqualTo(
            published == PublishedMixingOrder.RECALLED ? Standing.FROM_MEMORY : Standing.READ);
  }

  @Test
  void formsThatNoOrderNamesAreLeftToTheirLabel() {
    var sequence = plan("SE", "EC").evaluate().sequence();
    assertThat(sequence.withoutPlace()).containsExactly("SE");
    assertThat(sequence.table().toText()).contains("SE has no place in this order");
  }

  @Test
  void moreThanAFewPartnersIsAWarning() {
    assertThat(plan("EC", "SC", "WG", "SL").evaluate().findings())
        .noneSatisfy(f -> assertThat(f.rule()).isEqualTo("number of partners"));
    assertThat(plan("EC", "SC", "WG", "SL", "CS").evaluate().findings())
        .anySatisfy(f -> assertThat(f.rule()).isEqualTo("number of partners"));
  }
}
