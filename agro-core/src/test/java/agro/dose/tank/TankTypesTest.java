package agro.dose.tank;

import static org.assertj.core.api.Assertions.assertThat;

import agro.CompilerCheck;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What has the unit of another figure cannot stand in its place in a tank mix. */
class TankTypesTest {

  private static final CompilerCheck COMPILER =
      new CompilerCheck(List.of("agro.dose.*", "agro.dose.tank.*", "agro.units.*"));

  private static final String GIVEN =
      "SprayedField field = null; SprayVolume spray = null; SprayTank tank = null;"
          + " ProductPerArea perArea = null; ActivePerArea active = null; Volume volume = null;"
          + " VolumePerArea bare = null; LabelSprayVolume labelSpray = null; Density density = null;"
          + " TankMix mix = null; TankPartner partner = null; MassPerVolume content = null;"
          + " PumpsPerArea pumps = null; Mass mass = null; ProductAmount.Solid solid = null;"
          + " MeasuringKit kit = null; MeasuringVessel vessel = null; Area area = null; ";

  private static final List<List<String>> PAIRS =
      List.of(
          List.of("TankMixPlan.of(field, spray, tank);", "TankMixPlan.of(field, perArea, tank);"),
          List.of("TankMixPlan.of(field, spray, tank);", "TankMixPlan.of(field, bare, tank);"),
          List.of(
              "TankMixPlan.of(field, spray, tank);", "TankMixPlan.of(field, labelSpray, tank);"),
          List.of("TankMixPlan.of(field, spray, tank);", "TankMixPlan.of(area, spray, tank);"),
          List.of("TankPartner.of(\"A\", perArea);", "TankPartner.of(\"A\", active);"),
          List.of("TankPartner.of(\"A\", perArea);", "TankPartner.of(\"A\", spray);"),
          List.of("partner.dose(spray);", "partner.dose(perArea);"),
          List.of("partner.withBulkDensity(density);", "partner.withBulkDensity(content);"),
          List.of("pumps.dosePerPump(perArea);", "pumps.dosePerPump(active);"),
          List.of("pumps.dosePerPump(perArea);", "pumps.dosePerPump(spray);"),
          List.of("SprayTank.knapsack(volume);", "SprayTank.knapsack(mass);"),
          List.of("mix.check(volume);", "mix.check(spray);"),
          List.of(
              "kit.measurePowder(solid, vessel, density);",
              "kit.measurePowder(solid, vessel, content);"));

  @Test
  void figuresOfOneUnitAndTwoMeaningsCannotBeSwapped() {
    var statements = new ArrayList<String>();
    PAIRS.forEach(pair -> pair.forEach(statement -> statements.add(GIVEN + statement)));
    var errors = COMPILER.errors(statements);
    for (int i = 0; i < statements.size(); i += 2) {
      assertThat(errors.get(i)).as(statements.get(i)).isEmpty();
      assertThat(errors.get(i + 1)).as(statements.get(i + 1)).isNotEmpty();
    }
  }
}
