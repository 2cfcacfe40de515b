package agro.stats.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DesignMatrixTest {

  private static final Factor A = Factor.of("a", "1", "1", "1", "2", "2", "2", "2", "1");
  private static final Factor B = Factor.of("b", "u", "u", "v", "v", "u", "v", "u", "v");

  private static DesignMatrix design(ModelTerm... terms) {
    return DesignMatrix.of(List.of(terms), ContrastCoding.SUM_TO_ZERO);
  }

  @Test
  void crossedFactors() {
    var design = DesignMatrix.of(ModelTerm.crossing(A, B), ContrastCoding.SUM_TO_ZERO);
    assertThat(design.columnNames()).containsExactly("intercept", "a[1]", "b[u]", "a[1]:b[u]");
    assertThat(design.rank()).isEqualTo(4);
    assertThat(design.value(3, 1)).isEqualTo(-1);
    assertThat(design.value(3, 3)).isEqualTo(1);
    assertThat(design.termOfColumn(3)).isEqualTo(2);
    assertThat(design.termOfColumn(0)).isEqualTo(-1);
    assertThat(design.meanFunction(Map.of(A, 1), MeanWeights.EQUAL))
        .usingComparatorWithPrecision(1e-15)
        .containsExactly(1, -1, 0, 0);
  }

  @Test
  void marginsThatLackAreTakenOver() {
    var within = design(ModelTerm.of(A), ModelTerm.of(A, B));
    assertThat(within.rank()).isEqualTo(4);
    assertThat(within.lostEffects()).isEmpty();
    var alone = design(ModelTerm.of(A, B));
    assertThat(alone.rank()).isEqualTo(4);
    assertThat(alone.columns()).isEqualTo(4);
    assertThat(alone.lostEffects()).isEmpty();
  }

  @Test
  void confoundingIsNamedFromBothSides() {
    var data = TrialData.read("npk.csv");
    var block = ModelTerm.of(data.factor("block"));
    var treatments = ModelTerm.crossing(data.factor("N"), data.factor("P"), data.factor("K"));
    var first = LinearModel.of(block).and(treatments).design().lostEffects();
    assertThat(first).hasSize(1);
    assertThat(first.get(0).isWhole()).isTrue();
    assertThat(first.get(0)).hasToString("N:P:K cannot be estimated: confounded with block");
    var last = LinearModel.of(treatments).and(block).design().lostEffects();
    assertThat(last).hasSize(1);
    assertThat(last.get(0))
        .hasToString("1 of 5 effects of block cannot be estimated: confounded with N:P:K");
  }

  @Test
  void treatmentsThatAreBlocks() {
    var block = Factor.of("block", "1", "1", "2", "2");
    var treatment = Factor.of("treatment", "x", "x", "y", "y");
    var lost = design(ModelTerm.of(block), ModelTerm.of(treatment)).lostEffects();
    assertThat(lost.get(0)).hasToString("treatment cannot be estimated: confounded with block");
    var constant = ModelTerm.slope(Covariate.of("x", 2, 2, 2, 2));
    assertThat(design(ModelTerm.of(block), constant).lostEffects().get(0))
        .hasToString("x cannot be estimated: confounded with the general mean");
  }

  @Test
  void slopesByLevel() {
    var x = Covariate.of("x", 1, 2, 3, 4, 5, 6, 7, 9);
    var design = design(ModelTerm.of(A), ModelTerm.slope(x), ModelTerm.of(A).timesSlope(x));
    assertThat(design.columnNames()).containsExactly("intercept", "a[1]", "x", "a[1]:x");
    assertThat(design.lostEffects()).isEmpty();
    assertThat(design.value(4, 3)).isEqualTo(-5);
  }

  @Test
  void wrongModelsAreRefused() {
    refused("at least one term");
    refused("one level \"only\"", ModelTerm.of(Factor.of("f", "only", "only")));
    refused("stands twice", ModelTerm.of(A, B), ModelTerm.of(B, A));
    refused("the same observations", ModelTerm.of(A), ModelTerm.of(Factor.of("c", "1", "2")));
    var other = Factor.of("a", "2", "1", "1", "2", "2", "2", "2", "1");
    refused("two different variables are named a", ModelTerm.of(A), ModelTerm.of(other, B));
    refused("one level in every cell", ModelTerm.of(A), ModelTerm.nested(other(), A));
    assertThatThrownBy(() -> ModelTerm.of(A, A)).isInstanceOf(InputProblem.class);
    var x = Covariate.of("x", 1, 2);
    assertThatThrownBy(() -> ModelTerm.slope(x).timesSlope(x))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("a square of a covariate");
    assertThatThrownBy(() -> ModelTerm.of(A).timesSlope(Covariate.of("a", 1, 2)))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> ModelTerm.nested(B, A).times(Factor.of("c", "x")))
        .isInstanceOf(InputProblem.class);
  }

  private static Factor other() {
    return Factor.of("farm", "n", "n", "n", "s", "s", "s", "s", "n");
  }

  private static void refused(String message, ModelTerm... terms) {
    assertThatThrownBy(() -> design(terms))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining(message);
  }

  @Test
  void namesOfTerms() {
    assertThat(ModelTerm.crossing(A, B))
        .extracting(ModelTerm::name)
        .containsExactly("a", "b", "a:b");
    assertThat(ModelTerm.nested(B, A)).hasToString("b in a");
    assertThat(ModelTerm.of(A, B).contains(ModelTerm.of(B))).isTrue();
    assertThat(ModelTerm.of(A).contains(ModelTerm.of(A))).isFalse();
    assertThat(ModelTerm.of(A, B)).isEqualTo(ModelTerm.of(B, A));
  }
}
