package agro.trial.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.ProgressCurve;
import agro.trial.FieldTrial;
import agro.trial.PlotColumns;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PestLoadTest {

  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);
  private static final LocalDate FIRST = LocalDate.of(2026, 6, 1);

  static List<NamedCsvRecord> loads() {
    return ReferenceTable.read(PestLoadTest.class, "loads.csv");
  }

  static PlotVisits plot(String name, String treatment, int[] days, double... means) {
    var visits = new TreeMap<LocalDate, Double>();
    for (int i = 0; i < days.length; i++) {
      visits.put(FIRST.plusDays(days[i]), means[i]);
    }
    return new PlotVisits(name, "1", treatment, visits);
  }

  /** Sources and tolerance: loads.csv. */
  @ParameterizedTest
  @MethodSource("loads")
  void agreesWithTheReference(NamedCsvRecord row) {
    var visits = new TreeMap<LocalDate, Double>();
    String[] days = row.getField("days").split(" ", -1);
    String[] values = row.getField("values").split(" ", -1);
    for (int i = 0; i < days.length; i++) {
      visits.put(FIRST.plusDays(Long.parseLong(days[i])), Double.parseDouble(values[i]));
    }
    var greatest = row.getField("greatest");
    var settings =
        new PestLoad(
            PLANT,
            ProgressCurve.Between.valueOf(row.getField("between")),
            LoadMeasure.valueOf(row.getField("measure")),
            MissingDates.REFUSE,
            greatest.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Double.parseDouble(greatest)));
    var load = settings.evaluate(List.of(new PlotVisits("7", "", "A", visits)));
    assertThat(load.plot("7").value()).isCloseTo(ReferenceTable.number(row, "load"), offset(1e-9));
  }

  @Property(seed = "8")
  void aPointOnTheStraightLineChangesNothing(
      @ForAll @DoubleRange(min = 0, max = 50) double from,
      @ForAll @DoubleRange(min = 0, max = 50) double to) {
    var settings = PestLoad.withDefaults(PLANT);
    double without =
        settings.evaluate(List.of(plot("1", "A", new int[] {0, 8}, from, to))).plot("1").value();
    double with =
        settings
            .evaluate(
                List.of(plot("1", "A", new int[] {0, 2, 8}, from, 0.75 * from + 0.25 * to, to)))
            .plot("1")
            .value();
    assertThat(with).isCloseTo(without, offset(1e-9));
  }

  @Test
  void missingDaysFollowTheRule() {
    var plots =
        List.of(
            plot("1", "A", new int[] {0, 7, 14}, 2, 4, 6),
            plot("2", "A", new int[] {0, 14}, 2, 6),
            plot("3", "A", new int[] {0, 7}, 2, 4));
    var bridged = PestLoad.withDefaults(PLANT).evaluate(plots);
    assertThat(bridged.plots()).extracting(PlotLoad::plot).containsExactly("1", "2");
    assertThat(bridged.plot("2").value()).isCloseTo(56, offset(1e-9));
    assertThat(bridged.plot("2").bridged()).containsExactly(FIRST.plusDays(7));
    assertThat(bridged.presentation().toText())
        .contains("2026-06-08, bridged", "plot 3 is left out", "2026-06-15");
    var left = PestLoad.withDefaults(PLANT).with(MissingDates.LEAVE_OUT).evaluate(plots);
    assertThat(left.plots()).extracting(PlotLoad::plot).containsExactly("1");
    assertThatThrownBy(() -> PestLoad.withDefaults(PLANT).with(MissingDates.REFUSE).evaluate(plots))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("plot 2 without a count on [2026-06-08]");
    assertThatThrownBy(() -> bridged.plot("3")).hasMessageContaining("left out");
  }

  @Property(seed = "8", tries = 20)
  void orderOfPlotsDoesNotMatter(@ForAll long seed) {
    var plots = new ArrayList<PlotVisits>();
    for (int i = 0; i < 12; i++) {
      plots.add(plot("p" + i, "T" + i % 3, new int[] {0, 5, 9}, i, 2 * i, 0.3 * i));
    }
    var settings = PestLoad.withDefaults(PLANT);
    var first = settings.evaluate(plots);
    Collections.shuffle(plots, new Random(seed));
    assertThat(settings.evaluate(plots)).isEqualTo(first);
  }

  @Test
  void badInputIsRefused() {
    var settings = PestLoad.withDefaults(PLANT);
    assertThatThrownBy(() -> settings.evaluate(List.of(plot("1", "A", new int[] {0}, 3))))
        .hasMessageContaining("at least two");
    var one = plot("1", "A", new int[] {0, 7}, 3, 4);
    assertThatThrownBy(() -> settings.evaluate(List.of(one, one))).hasMessageContaining("twice");
    assertThatThrownBy(() -> plot("1", "A", new int[] {0, 7}, 3, -4))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> settings.with(LoadMeasure.RELATIVE_AREA))
        .hasMessageContaining("greatest");
  }

  @Test
  void aTrialGivesItsPlots() {
    var trial =
        FieldTrial.parse(
            "small",
            """
            plot,block,treatment,date,plant,larvae
            1,1,A,2026-06-01,1,2
            1,1,A,2026-06-01,2,4
            1,1,A,2026-06-11,1,6
            1,1,A,2026-06-11,2,8
            2,1,B,2026-06-01,1,1
            2,1,B,2026-06-11,1,1
            """,
            PlotColumns.ofCounts("larvae"));
    var load = PestLoad.withDefaults(PLANT).evaluate(trial, "larvae");
    assertThat(load.plot("1").value()).isCloseTo(50, offset(1e-9));
    assertThat(load.meansByTreatment()).containsEntry("B", 10.0);
    assertThat(load.plot("1").working().toText()).contains("10 d, from 3 to 7");
  }
}
