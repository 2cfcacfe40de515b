package agro.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Corrections keep the old value, and refuse to be applied to another one. */
class CorrectionTest {

  private static final LocalDate JUNE = LocalDate.of(2026, 6, 3);

  private static FieldTrial trial() {
    return FieldTrial.parse(
        "Osmere Vale",
        """
        plot,block,treatment,date,larvae
        1,1,a,2026-06-03,4
        2,1,b,2026-06-03,61
        3,2,b,2026-06-03,5
        4,2,a,2026-06-03,2
        """,
        PlotColumns.ofCounts("larvae"));
  }

  private static Assessment plot(FieldTrial trial, String name) {
    return trial.assessments().stream()
        .filter(line -> line.plot().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aCorrectionGivesANewTrialAndKeepsTheOldValue() {
    var trial = trial();

    var corrected =
        trial.withCorrection(
            Correction.of(plot(trial, "2"), 6, "misread: 6 on the sheet", "M. K.", "7 June"));

    assertThat(corrected.variable("larvae").on(JUNE).means()).containsExactly(4, 6, 5, 2);
    assertThat(trial.variable("larvae").on(JUNE).means()).containsExactly(4, 61, 5, 2);
    assertThat(corrected.corrections().toString())
        .contains("plot 2", "61 corrected to 6", "M. K.", "7 June", "misread");
    assertThat(corrected.corrections().presentation().toHtml()).contains("misread: 6 on the sheet");
    assertThat(trial.corrections().corrections()).isEmpty();
  }

  @Test
  void anotherOldValueOrPlaceIsRefused() {
    var trial = trial();
    var once = Correction.of(plot(trial, "2"), 6, "misread", "M. K.", "");
    var corrected = trial.withCorrection(once);

    assertThatThrownBy(() -> corrected.withCorrection(once))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("from 61")
        .hasMessageContaining("stands as 6");
    var elsewhere =
        Correction.of(
            plot(trial, "2").withPlot(TrialPlot.of("9", "1", "b")), 6, "misread", "M. K.", "");
    assertThatThrownBy(() -> trial.withCorrection(elsewhere))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("plot 9")
        .hasMessageContaining("nothing to correct");
  }

  @Test
  void aValueCanBeSetToMissingAndFoundAgain() {
    var trial = trial();

    var missing =
        trial.withCorrection(Correction.toMissing(plot(trial, "2"), "plot flooded", "M. K.", ""));
    var back =
        missing.withCorrection(
            Correction.of(plot(missing, "2"), 6, "counted on the photograph", "M. K.", ""));

    assertThat(missing.variable("larvae").on(JUNE).missing()).hasSize(1);
    assertThat(back.variable("larvae").on(JUNE).means()).containsExactly(4, 6, 5, 2);
    assertThat(back.corrections().corrections()).hasSize(2);
    assertThat(trial.withCorrections(back.corrections()).variable("larvae").on(JUNE))
        .isEqualTo(back.variable("larvae").on(JUNE));
  }

  @Test
  void correctionsNeedReasonPersonAndChange() {
    var line = plot(trial(), "2");

    assertThatThrownBy(() -> Correction.of(line, 6, " ", "M. K.", ""))
        .hasMessageContaining("reason");
    assertThatThrownBy(() -> Correction.of(line, 6, "misread", "", ""))
        .hasMessageContaining("who decided");
    assertThatThrownBy(() -> Correction.of(line, 61, "misread", "M. K.", ""))
        .hasMessageContaining("both 61");
  }

  @Test
  void theHistoryIsWrittenToAFileAndReadAgain(@TempDir Path folder) {
    var trial = trial();
    var history =
        trial
            .withCorrection(
                Correction.of(plot(trial, "2"), 6, "=6, not 61; \"sure\"", "M. K.", "7 June"))
            .corrections();
    var file = folder.resolve("corrections.csv");

    history.write(file);

    assertThat(CorrectionHistory.read(file)).isEqualTo(history);
    assertThat(trial.withCorrections(CorrectionHistory.read(file)).corrections())
        .isEqualTo(history);
  }

  @Property(seed = "8", tries = 200)
  void anyHistorySurvivesItsFile(@ForAll("corrections") List<Correction> corrections) {
    var history = new CorrectionHistory(corrections);

    assertThat(CorrectionHistory.parse("history", history.toCsv())).isEqualTo(history);
  }

  @Provide
  Arbitrary<List<Correction>> corrections() {
    var words =
        Arbitraries.strings()
            .withChars("ab ,;\"=+-@#é7'")
            .ofMinLength(1)
            .ofMaxLength(8)
            .filter(text -> text.equals(text.strip()) && !text.startsWith("'"));
    var values = Arbitraries.doubles().between(-1e6, 1e6);
    return Combinators.combine(
            words,
            words,
            words,
            words,
            values,
            values.injectNull(0.3),
            Arbitraries.integers().between(1990, 2100).injectNull(0.5),
            Arbitraries.integers().between(0, 400).injectNull(0.3))
        .filter((a, b, c, d, old, now, year, day) -> !old.equals(now))
        .as(
            (plot, variable, reason, who, old, now, year, day) ->
                new Correction(
                    "",
                    year == null ? OptionalInt.empty() : OptionalInt.of(year),
                    plot,
                    day == null ? Optional.empty() : Optional.of(JUNE.plusDays(day)),
                    "",
                    variable,
                    OptionalDouble.of(old + 0.0),
                    now == null ? OptionalDouble.empty() : OptionalDouble.of(now + 0.0),
                    reason,
                    who,
                    ""))
        .list()
        .ofMaxSize(5);
  }
}
