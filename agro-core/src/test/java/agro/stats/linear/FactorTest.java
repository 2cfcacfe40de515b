package agro.stats.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class FactorTest {

  @Test
  void naturalOrder() {
    var plots = Factor.of("plot", "T10", "T2", "T1", "T02", "T2a", "b", "T2");
    assertThat(plots.levels()).containsExactly("T1", "T02", "T2", "T2a", "T10", "b");
    assertThat(plots.counts()).containsExactly(1, 1, 2, 1, 1, 1);
    assertThat(plots.label(0)).isEqualTo("T10");
    assertThat(plots.code(0)).isEqualTo(4);
    assertThat(plots.placeOf("T2a")).isEqualTo(3);
    var long1 = Factor.of("n", "123456789012345678901", "99999999999999999999");
    assertThat(long1.levels()).startsWith("99999999999999999999");
  }

  @Test
  void numbersByTheirValue() {
    assertThat(Factor.of("dose", "0.5", "0.25", "10", "2", "-1", "-10").levels())
        .containsExactly("-10", "-1", "0.25", "0.5", "2", "10");
    assertThat(Factor.of("rate", "0,5 L", "0,25 L", "untreated", "1 L").levels())
        .containsExactly("0,25 L", "0,5 L", "1 L", "untreated");
    assertThat(Factor.of("place", "1.2.10", "1.2.9", "1.10.1").levels())
        .containsExactly("1.2.9", "1.2.10", "1.10.1");
  }

  @Test
  void orderOfRowsDoesNotMatter() {
    assertThat(Factor.of("a", "y", "x").levels()).isEqualTo(Factor.of("a", "x", "y").levels());
  }

  @Test
  void declaredOrder() {
    var dose = Factor.declared("dose", List.of("low", "middle", "high"), List.of("high", "low"));
    assertThat(dose.levels()).containsExactly("low", "high");
    assertThatThrownBy(() -> Factor.declared("dose", List.of("low"), List.of("hihg")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("hihg");
    assertThatThrownBy(() -> Factor.declared("dose", List.of("low", "low"), List.of("low")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("twice");
  }

  @Test
  void missingLabelsAreRefused() {
    assertThatThrownBy(() -> Factor.of("a", Arrays.asList("x", null)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("observation 2 has no label of factor a");
    assertThatThrownBy(() -> Factor.of("a", "x", " ")).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> Factor.of("a")).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> Factor.of("a", "x").placeOf("y"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("[x]");
    assertThatThrownBy(() -> Covariate.of("x", 1, Double.POSITIVE_INFINITY))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("observation 2");
    assertThatThrownBy(() -> Covariate.of("x")).isInstanceOf(InputProblem.class);
  }

  @Test
  void selectionsAndCombinations() {
    var a = Factor.of("a", "x", "y", "x", "z");
    var b = Factor.of("b", "2", "1", "1", "1");
    assertThat(a.select(3, 0).levels()).containsExactly("x", "z");
    assertThat(a.select(3, 0).label(0)).isEqualTo("z");
    var both = a.combinedWith(b);
    assertThat(both.name()).isEqualTo("a:b");
    assertThat(both.levels()).containsExactly("x:1", "x:2", "y:1", "z:1");
    assertThat(both.label(0)).isEqualTo("x:2");
    assertThat(Covariate.of("x", 1, 2, 6).select(2, 0).mean()).isEqualTo(3.5);
    assertThat(a).isEqualTo(Factor.of("a", "x", "y", "x", "z")).isNotEqualTo(b);
  }
}
