package agro.stats.glm;

import agro.ReferenceTable;
import agro.stats.linear.Covariate;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.List;
import java.util.stream.IntStream;

/** Published data of the tests. */
final class Examples {

  static final ModelResponse BEETLES =
      ModelResponse.outOf(
          new double[] {6, 13, 18, 28, 52, 53, 61, 60},
          new double[] {59, 60, 62, 56, 63, 59, 62, 60});

  static final Covariate BEETLE_DOSE =
      Covariate.of("dose", 1.6907, 1.7242, 1.7552, 1.7842, 1.8113, 1.8369, 1.8610, 1.8839);

  static final ModelResponse ROTENONE =
      ModelResponse.outOf(new double[] {44, 42, 24, 16, 6}, new double[] {50, 49, 46, 48, 50});

  static final Covariate ROTENONE_DOSE =
      Covariate.of(
          "dose",
          Math.log10(10.2),
          Math.log10(7.7),
          Math.log10(5.1),
          Math.log10(3.8),
          Math.log10(2.6));

  static final ModelResponse BUDWORM =
      ModelResponse.outOf(
          new double[] {1, 4, 9, 13, 18, 20, 0, 2, 6, 10, 12, 16},
          IntStream.range(0, 12).mapToDouble(i -> 20).toArray());

  static final Factor BUDWORM_SEX =
      Factor.of("sex", List.of("M", "M", "M", "M", "M", "M", "F", "F", "F", "F", "F", "F"));

  static final Covariate BUDWORM_DOSE =
      Covariate.of("dose", IntStream.range(0, 12).mapToDouble(i -> i % 6).toArray());

  private Examples() {}

  static GeneralisedLinearModel of(ErrorFamily family) {
    return GeneralisedLinearModel.of(family);
  }

  static double[] column(String table, String name) {
    return ReferenceTable.read(Examples.class, table + ".csv").stream()
        .mapToDouble(line -> ReferenceTable.number(line, name))
        .toArray();
  }

  static Factor factor(String table, String name) {
    return Factor.of(
        name,
        ReferenceTable.read(Examples.class, table + ".csv").stream()
            .map(line -> line.getField(name))
            .toList());
  }

  static Factor factor(String table, String name, String... levels) {
    return Factor.declared(
        name,
        List.of(levels),
        ReferenceTable.read(Examples.class, table + ".csv").stream()
            .map(line -> line.getField(name))
            .toList());
  }

  static ModelResponse sprayCounts() {
    return ModelResponse.counts(column("insect-sprays", "count"));
  }

  static ModelTerm spray() {
    return ModelTerm.of(factor("insect-sprays", "spray"));
  }
}
