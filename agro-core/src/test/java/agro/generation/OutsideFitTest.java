package agro.generation;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The whole fit against base R's optim() on the same likelihood, two-seasons-fit.R. */
class OutsideFitTest {

  private static final double EXPECTED_INTERVAL = 450;

  @Test
  void reachesTheOptimumOfBaseR() {
    var reference = optimum();
    var model = new CatchModel(List.of(season(1), season(2)), 2, FlightCurve.NORMAL);
    var prior = new WeakPrior(model, EXPECTED_INTERVAL);
    var free = new boolean[model.parameters()];
    Arrays.fill(free, true);
    var fit =
        new CatchFit(model, prior, free, 315, 630)
            .maximise(prior.start(new double[] {160, 160}, 460), 0.7, true);

    assertThat(fit.converged).isTrue();
    assertThat(fit.objective).isGreaterThan(reference.get("penalised log likelihood") - 1e-4);
    assertThat(fit.objective).isLessThan(reference.get("penalised log likelihood") + 1e-4);
    assertThat(fit.logLikelihood).isCloseTo(reference.get("log likelihood"), within(1e-3));
    assertThat(fit.parameters[model.intervalIndex()])
        .isCloseTo(reference.get("interval"), within(0.05));
    assertThat(fit.parameters[0]).isCloseTo(reference.get("start 1"), within(0.05));
    assertThat(fit.parameters[1]).isCloseTo(reference.get("start 2"), within(0.05));
    assertThat(fit.parameters[model.firstScaleIndex()])
        .isCloseTo(reference.get("log first scale"), within(1e-2));
    assertThat(Math.log(fit.size)).isCloseTo(reference.get("log size"), within(1e-2));
  }

  private static Map<String, Double> optimum() {
    var values = new HashMap<String, Double>();
    for (var line : ReferenceTable.read(OutsideFitTest.class, "two-seasons-fit.csv")) {
      values.put(line.getField("name"), number(line, "value"));
    }
    return values;
  }

  private static CatchData season(int season) {
    var lines =
        ReferenceTable.read(OutsideFitTest.class, "two-seasons-visits.csv").stream()
            .filter(line -> whole(line, "season") == season)
            .toList();
    var visits = new ArrayList<TrapVisit>();
    var day = LocalDate.of(2000 + season, 4, 1);
    for (var line : lines) {
      var next = day.plusDays(whole(line, "nights"));
      var state = line.getField("full").equals("TRUE") ? TrapState.FULL : TrapState.WORKING;
      visits.add(
          new TrapVisit("A", day, next, whole(line, "count"), state, whole(line, "open"), false));
      day = next;
    }
    return new CatchData(
        2000 + season,
        visits,
        lines.stream().mapToDouble(line -> number(line, "from")).toArray(),
        lines.stream().mapToDouble(line -> number(line, "to")).toArray());
  }
}
