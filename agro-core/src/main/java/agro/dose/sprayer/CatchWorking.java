package agro.dose.sprayer;

import agro.units.FlowRate;
import agro.units.Numbers;
import agro.units.WorkTimeUnit;
import agro.working.Caution;
import agro.working.Working;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The steps of a catch test. */
final class CatchWorking {

  /** More nozzles than these are not written out in a sum. */
  private static final int WRITTEN_OUT = 12;

  private CatchWorking() {}

  static Working of(
      CatchTest test,
      List<NozzleFinding> findings,
      double mean,
      Optional<FlowRate> spread,
      Optional<RelativeUncertainty> uncertainty) {
    var units = test.units();
    var flow = new FlowRate(mean);
    var working =
        Working.of("Catch test of " + findings.size() + " nozzles")
            .step(
                "mean flow of one nozzle",
                "q = sum of the flows / n, blocked nozzles left out",
                sum(findings, units),
                units.flow(flow)
                    + " (each caught for "
                    + SprayUnits.print(test.time(), WorkTimeUnit.SECOND)
                    + ")");
    if (spread.isPresent()) {
      working =
          working.step(
              "spread between nozzles",
              "s = √(Σ (qi − q)² / (n − 1)); coefficient of variation = s / q",
              "",
              units.flow(spread.get())
                  + ", "
                  + Numbers.significant(100 * spread.get().ratioTo(flow), 3)
                  + " %");
    }
    double share = test.tolerance().share();
    working =
        working.step(
            "nozzles outside " + test.tolerance() + " of the mean",
            "q × (1 ± " + Numbers.plain(share) + ")",
            units.flow(flow.times(1 - share)) + " to " + units.flow(flow.times(1 + share)),
            outside(findings),
            test.tolerance().source());
    working = wear(working, test, findings);
    if (uncertainty.isPresent()) {
      working = error(working, uncertainty.get(), test);
    }
    return working.withCautions(Caution.all());
  }

  private static Working wear(Working working, CatchTest test, List<NozzleFinding> findings) {
    if (test.newFlow().isEmpty()) {
      return working;
    }
    var worn =
        findings.stream()
            .filter(NozzleFinding::worn)
            .map(NozzleFinding::nozzle)
            .collect(Collectors.joining(", "));
    return working.step(
        "worn nozzles",
        "flow ≥ 1.1 × flow of a new nozzle",
        "1.1 × " + test.units().flow(test.newFlow().get()),
        worn.isEmpty() ? "none" : worn,
        SprayerSources.WORN_NOZZLE);
  }

  private static Working error(Working working, RelativeUncertainty known, CatchTest test) {
    boolean once = test.catches().stream().allMatch(one -> one.volumes().size() == 1);
    return working.step(
        "relative standard error of the mean",
        once
            ? "u = s / (√n × q); each nozzle was caught once, so the whole spread counts"
            : "u from a two-stage sample: nozzles of the sprayer, catches of each",
        "",
        known.toString(),
        once ? SprayerSources.T_INTERVAL : SprayerSources.TWO_STAGE_SAMPLE);
  }

  private static String sum(List<NozzleFinding> findings, SprayUnits units) {
    var flowing = findings.stream().filter(one -> one.verdict() != NozzleVerdict.BLOCKED).toList();
    if (flowing.size() > WRITTEN_OUT) {
      return "";
    }
    return flowing.stream()
            .map(one -> Numbers.significant(one.flow().in(units.flow()), 5))
            .collect(Collectors.joining(" + ", "(", ")"))
        + " / "
        + flowing.size();
  }

  private static String outside(List<NozzleFinding> findings) {
    var names =
        findings.stream()
            .filter(one -> one.verdict() != NozzleVerdict.WITHIN)
            .map(one -> one.nozzle() + " (" + one.verdict().words() + ")")
            .collect(Collectors.joining(", "));
    return names.isEmpty() ? "none" : names;
  }
}
