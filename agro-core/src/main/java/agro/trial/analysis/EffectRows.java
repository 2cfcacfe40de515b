package agro.trial.analysis;

import agro.stats.linear.VarianceRow;
import java.util.List;
import java.util.OptionalDouble;

/** Lines of an analysis of variance as lines of a trial. */
final class EffectRows {

  private EffectRows() {}

  /** Where there is no test, the reason stands with the error. */
  static EffectRow of(String stratum, VarianceRow row, EffectRow.Role role, VarianceRow error) {
    boolean untold = row.test().isEmpty() && row.note().isEmpty();
    return new EffectRow(
        stratum,
        row.source(),
        role,
        row.degreesOfFreedom(),
        OptionalDouble.of(row.sumOfSquares()),
        row.test()
            .map(
                ratio ->
                    new EffectTest(
                        "F", ratio.f(), List.of(ratio.df1(), ratio.df2()), ratio.pValue())),
        untold ? error.note() : row.note());
  }
}
