package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;

import agro.CompilerCheck;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Amounts with one unit and two meanings: the right one compiles, the other does not. */
class DoseTypesTest {

  private static final CompilerCheck COMPILER =
      new CompilerCheck(List.of("agro.dose.*", "agro.units.*"));

  private static final List<String> GIVEN =
      List.of(
          "ProductPerArea perArea = null;",
          "ProductPerTreatedArea perTreatedArea = null;",
          "ProductPerSprayVolume perSpray = null;",
          "ProductPerLeafWallArea perWall = null;",
          "ProductPerTreeRowVolume perRowVolume = null;",
          "ProductPerWetSubstrate perWet = null;",
          "ProductPerDrySubstrate perDry = null;",
          "ActivePerArea activePerArea = null;",
          "SprayVolume spray = null;",
          "LabelSprayVolume labelSpray = null;",
          "ProductAmount product = null;",
          "ActiveAmount active = null;",
          "LeafWallArea walls = null;",
          "TreeRowVolume rows = null;",
          "ActiveStrength strength = null;",
          "LivingStrength living = null;",
          "Area area = null;",
          "VolumePerArea bare = null;",
          "Volume volume = null;");

  /**
   * A statement that compiles beside the same one with an amount of another meaning.
   *
   * @param right compiles
   * @param wrong is refused
   */
  private record Pair(String right, String wrong) {}

  private static final List<Pair> PAIRS =
      List.of(
          new Pair("SprayVolume v = spray;", "SprayVolume v = perArea;"),
          new Pair("ProductPerArea r = perArea;", "ProductPerArea r = spray;"),
          new Pair("perSpray.sprayedAt(spray);", "perSpray.sprayedAt(perArea);"),
          new Pair("perSpray.sprayedAt(spray);", "perSpray.sprayedAt(bare);"),
          new Pair("perSpray.sprayedAt(spray);", "perSpray.sprayedAt(labelSpray);"),
          new Pair("perArea.inSpray(spray);", "perArea.inSpray(perArea);"),
          new Pair("ProductPerArea r = perArea;", "ProductPerArea r = activePerArea;"),
          new Pair("ActivePerArea r = activePerArea;", "ActivePerArea r = perArea;"),
          new Pair("ProductAmount a = product;", "ProductAmount a = active;"),
          new Pair("ActiveAmount a = active;", "ActiveAmount a = product;"),
          new Pair("strength.activeIn(product);", "strength.activeIn(active);"),
          new Pair(
              "strength.productFor(active, ProductState.LIQUID);",
              "strength.productFor(product, ProductState.LIQUID);"),
          new Pair("strength.activeIn(product);", "living.activeIn(product);"),
          new Pair("living.livingIn(product);", "strength.livingIn(product);"),
          new Pair(
              "activePerArea.product(strength, ProductState.SOLID);",
              "activePerArea.product(living, ProductState.SOLID);"),
          new Pair("ProductPerArea r = perArea;", "ProductPerArea r = perTreatedArea;"),
          new Pair(
              "ProductPerTreatedArea r = perTreatedArea;", "ProductPerTreatedArea r = perArea;"),
          new Pair("ProductPerArea r = perArea;", "ProductPerArea r = perWall;"),
          new Pair("ProductPerArea r = perArea;", "ProductPerArea r = perSpray;"),
          new Pair("ProductPerWetSubstrate r = perWet;", "ProductPerWetSubstrate r = perDry;"),
          new Pair("ProductPerDrySubstrate r = perDry;", "ProductPerDrySubstrate r = perWet;"),
          new Pair("perWall.on(walls);", "perWall.on(area);"),
          new Pair("perWall.on(walls);", "perWall.on(rows);"),
          new Pair("perArea.on(area);", "perArea.on(walls);"),
          new Pair("perRowVolume.on(rows);", "perRowVolume.on(volume);"),
          new Pair("perSpray.in(volume);", "perSpray.in(rows);"),
          new Pair("product.plus(product);", "product.plus(active);"),
          new Pair("PlannedUse.of(perArea);", "PlannedUse.of(perTreatedArea);"),
          new Pair("DoseLimit.maximum(perArea);", "DoseLimit.maximum(spray);"),
          new Pair(
              "SprayStrengthLimit.maximum(perSpray);", "SprayStrengthLimit.maximum(perArea);"));

  private static List<List<String>> errors(List<String> statements) {
    var bodies = new ArrayList<String>();
    for (var statement : statements) {
      bodies.add(String.join(" ", GIVEN) + " " + statement);
    }
    return COMPILER.errors(bodies);
  }

  @Test
  void theRightOnesCompile() {
    var errors = errors(PAIRS.stream().map(Pair::right).toList());

    assertThat(errors).hasSameSizeAs(PAIRS).allMatch(List::isEmpty);
  }

  @Test
  void theOthersDoNot() {
    var errors = errors(PAIRS.stream().map(Pair::wrong).toList());

    assertThat(PAIRS).hasSizeGreaterThanOrEqualTo(20);
    for (int i = 0; i < PAIRS.size(); i++) {
      assertThat(errors.get(i)).as(PAIRS.get(i).wrong()).hasSize(1);
      assertThat(errors.get(i).get(0))
          .as(PAIRS.get(i).wrong())
          .matches("(?s)compiler\\.err\\.(prob\\.found\\.req|cant\\.apply|cant\\.resolve).*")
          .doesNotContain("symbol:   class");
    }
  }
}
