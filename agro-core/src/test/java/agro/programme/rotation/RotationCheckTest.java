package agro.programme.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.ReferenceTable;
import agro.dose.Severity;
import agro.programme.ApplicationWay;
import agro.programme.LabelBook;
import agro.programme.LabelRecord;
import agro.programme.Spraying;
import agro.report.InputProblem;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rules of rotation against cases worked by hand. */
class RotationCheckTest {

  static List<NamedCsvRecord> cases() {
    return ReferenceTable.read(RotationCheckTest.class, "rotation-rules.csv");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void rulesSayWhatTheHandSays(NamedCsvRecord line) {
    var groups = List.of(line.getField("groups").split(" "));
    var days = Arrays.stream(line.getField("days").split(" ")).map(Integer::valueOf).toList();
    int cycle = ReferenceTable.whole(line, "cycle");
    int length = line.getField("case").contains("30 days") ? 30 : 21;
    var programme = RotationScenes.sprayed(groups, days, cycle);
    var windows =
        RotationWindows.every(
            RotationScenes.START, RotationScenes.START.plusDays(cycle - 1), length);
    var report = RotationCheck.of(programme, RotationScenes.FIELD, windows).check();
    if (line.getField("rule").isEmpty()) {
      assertThat(report.findings()).isEmpty();
      assertThat(report.isAdmissible()).isTrue();
    } else {
      assertThat(report.findings())
          .allMatch(each -> each.rule() == RotationRule.valueOf(line.getField("rule")))
          .allMatch(each -> each.severity() == Severity.valueOf(line.getField("severity")))
          .isNotEmpty();
    }
  }

  @Test
  void shareIsToldInPerCent() {
    var programme = RotationScenes.sprayed(List.of("28", "5", "28"), List.of(0, 30, 60), 90);
    var windows = RotationWindows.everyThirtyDays(RotationScenes.START, LocalDate.of(2027, 6, 29));
    var report = RotationCheck.of(programme, RotationScenes.FIELD, windows).check();
    assertThat(report.of(RotationRule.SHARE_OF_SEASON).get(0).words()).contains("66.7 %", "50 %");
    var lax = RotationRules.standard().withLargestShare(0.7);
    assertThat(
            RotationCheck.of(programme, RotationScenes.FIELD, windows).with(lax).check().findings())
        .isEmpty();
    assertThat(windows.presentation().toText()).contains("not known");
  }

  @Test
  void groupsOfTheNurseryRestForAGeneration() {
    var base = RotationScenes.sprayed(List.of("28", "5"), List.of(10, 30), 120);
    var drench = RotationScenes.spray("N", RotationScenes.START.minusDays(3), "Product 28");
    var nursery =
        new Spraying(
            drench.name(),
            drench.start(),
            drench.end(),
            drench.field(),
            drench.products(),
            ApplicationWay.NURSERY_DRENCH,
            Optional.empty(),
            "",
            "");
    var windows =
        RotationWindows.every(RotationScenes.START, RotationScenes.START.plusDays(119), 21);
    var check = RotationCheck.of(base.with(nursery), RotationScenes.FIELD, windows);
    assertThat(check.check().of(RotationRule.NURSERY_BREAK)).hasSize(1);
    assertThat(check.with(RotationRules.standard().withoutNurseryBreak()).check().findings())
        .isEmpty();
    assertThat(check.check().presentation().toText()).contains("nursery");
  }

  @Test
  void mixturesCountForEveryPartner() {
    var mixture =
        RotationScenes.record(
            "Mix",
            RotationScenes.limits(3, 9, 1),
            RotationScenes.active("a", "28"),
            RotationScenes.active("b", "5"));
    var single =
        RotationScenes.record(
            "Single", RotationScenes.limits(3, 9, 1), RotationScenes.active("c", "5"));
    var programme =
        RotationScenes.programme(LabelBook.of(mixture, single), 120)
            .with(RotationScenes.spray("1", RotationScenes.START.plusDays(2), "Mix"))
            .with(RotationScenes.spray("2", RotationScenes.START.plusDays(30), "Single"));
    var windows =
        RotationWindows.every(RotationScenes.START, RotationScenes.START.plusDays(119), 21);
    var report = RotationCheck.of(programme, RotationScenes.FIELD, windows).check();
    assertThat(report.of(RotationRule.SUCCESSIVE_WINDOWS)).hasSize(1);
    assertThat(report.isAdmissible()).isFalse();
  }

  @Test
  void anUnrecordedGroupIsNeverTakenForAnotherMode() {
    var unknown = LabelRecord.of("Product X", RotationScenes.CROP, RotationScenes.limits(3, 9, 1));
    var programme =
        RotationScenes.programme(LabelBook.of(unknown), 120)
            .with(RotationScenes.spray("1", RotationScenes.START.plusDays(2), "Product X"));
    var windows =
        RotationWindows.every(RotationScenes.START, RotationScenes.START.plusDays(119), 21);
    var report = RotationCheck.of(programme, RotationScenes.FIELD, windows).check();
    assertThat(report.of(RotationRule.GROUP_RECORDED)).hasSize(1);
  }

  @Test
  void tableOfGroupsIsWholeAndVersioned() {
    var table = ModeOfActionTable.builtIn();
    assertThat(table.edition().version()).isEqualTo("11.4");
    assertThat(table.groups()).hasSizeGreaterThan(75).doesNotHaveDuplicates();
    assertThat(table.find("28").orElseThrow().target()).contains("ryanodine");
    assertThat(table.find("26")).isEmpty();
    assertThat(table.find("27")).isEmpty();
    assertThat(table.of("4g").number()).isEqualTo("4");
    assertThat(table.of("N-2").number()).isEqualTo("6");
    assertThat(table.of("UNX").isUnknown()).isTrue();
    assertThat(table.presentation().toText()).contains("from memory");
  }

  @Test
  void windowsThatOverlapAreRefused() {
    var first =
        new RotationWindow(
            1, LocalDate.of(2027, 4, 1), LocalDate.of(2027, 4, 21), WindowBasis.DISTRICT);
    var second =
        new RotationWindow(
            2, LocalDate.of(2027, 4, 21), LocalDate.of(2027, 5, 11), WindowBasis.DISTRICT);
    assertThatThrownBy(() -> new RotationWindows(List.of(first, second)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2027-04-20");
  }
}
