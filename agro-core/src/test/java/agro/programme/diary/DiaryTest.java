package agro.programme.diary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.dose.ActivePerArea;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.programme.ApplicationWay;
import agro.programme.SprayedProduct;
import agro.programme.Spraying;
import agro.report.InputProblem;
import agro.units.Area;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiaryTest {

  private static final LocalDate DAY = LocalDate.of(2027, 6, 1);
  private static final ZoneId ZONE = ZoneId.of("Europe/Ljubljana");

  @TempDir Path folder;

  private static AppliedUse applied(String product, String reason) {
    var start = ZonedDateTime.of(2027, 10, 31, 2, 30, 0, 0, ZONE).withLaterOffsetAtOverlap();
    return new AppliedUse(
        new Spraying(
            "",
            start,
            start.plusMinutes(50),
            "Long Acre",
            List.of(
                new SprayedProduct(product, Optional.of(ProductPerArea.parse("0.75 L/ha")), "L 17"),
                new SprayedProduct("Product B", Optional.of(ActivePerArea.parse("60 g ai/ha")), ""),
                new SprayedProduct("Product C", Optional.empty(), "C-9")),
            ApplicationWay.BAND_SPRAY,
            Optional.of(Area.parse("1.2 ha")),
            "BBCH 43",
            reason),
        new AppliedUse.Conditions(
            "300 L/ha",
            "flat fan 03",
            "A. B.",
            OptionalDouble.of(2.5),
            OptionalDouble.of(-1.5),
            "12 larvae on 40 plants"));
  }

  @Test
  void everyKindOfRecordIsReadBackAsItWasWritten() {
    var diary = Diary.in(folder);
    var records =
        List.of(
            new AdvisedUse(
                DAY,
                "Long Acre",
                "Product A",
                Optional.of(ProductPerArea.parse("0.5 to 0.75 L/ha")),
                Optional.of(DAY),
                Optional.of(DAY.plusDays(3)),
                "adviser",
                "12 of 40 plants"),
            new BoughtProduct(
                DAY, "Product A", "L 17", Optional.of(ProductAmount.parse("5 L")), "note"),
            ScoutedField.counted(DAY, "Long Acre", "leek moth", 12, 40, "plant", "A. B."),
            new ReleasedEnemy(DAY, "Long Acre", "lacewing", "20 per m²", "", "evening"));
    for (var each : records) {
      diary.append(each, "A. B.");
    }
    var id = diary.append(applied("Product A", "threshold"), "A. B.");

    var book = diary.read();
    var told = book.lines().stream().<Object>map(DiaryEntry::what).toList();
    assertThat(told).containsAll(records);
    var back = book.current(AppliedUse.class).get(0);
    var expected = applied("Product A", "threshold");
    assertThat(back.what().conditions()).isEqualTo(expected.conditions());
    assertThat(back.what().spraying())
        .usingRecursiveComparison()
        .ignoringFields("name")
        .isEqualTo(expected.spraying());
    assertThat(back.what().spraying().name()).isEqualTo(id);
    assertThat(book.sprayings()).hasSize(1);
    assertThat(book.releases().get(0).organism()).isEqualTo("lacewing");
    assertThat(book.presentation().toHtml()).contains("applied");
  }

  @Test
  void aCorrectionKeepsTheOldLine() throws IOException {
    var diary = Diary.in(folder);
    var first = diary.append(applied("Product A", "one"), "A. B.");
    var before = Files.readString(folder.resolve("applied.csv"));
    var second = diary.correct(first, applied("Product D", "two"), "wrong product", "C. D.");

    assertThat(Files.readString(folder.resolve("applied.csv"))).startsWith(before);
    var book = diary.read();
    assertThat(book.all(AppliedUse.class)).hasSize(2);
    assertThat(book.current(AppliedUse.class)).hasSize(1);
    assertThat(book.sprayings().get(0).mixture()).startsWith("Product D");
    assertThat(book.history(first)).extracting("id").containsExactly(first, second);
    var correction = book.find(second).orElseThrow();
    assertThat(correction.by()).isEqualTo("C. D.");
    assertThat(correction.written()).isPresent();
    assertThat(correction.correction().orElseThrow().reason()).isEqualTo("wrong product");

    assertThatThrownBy(() -> diary.correct(first, applied("E", "x"), "again", "C. D."))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("second correction");
    diary.withdraw(second, "not sprayed at all", "C. D.");
    assertThat(diary.read().sprayings()).isEmpty();
    assertThat(diary.read().all(AppliedUse.class)).hasSize(3);
    assertThatThrownBy(() -> diary.withdraw("applied-99", "no", "C. D."))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> diary.correct(second, applied("E", "x"), " ", "C. D."))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void noCellStartsAFormulaAndTextIsReadBackUnchanged() throws IOException {
    var diary = Diary.in(folder);
    var texts =
        List.of(
            "=1+1",
            "+cmd",
            "-2+3",
            "@x",
            "'=1",
            "'plain",
            "''",
            "\tx",
            " both ends ",
            "a\nb\r\nc",
            "#not a comment",
            "<script>",
            "\u00A0x\u00A0",
            "back\\slash \\u0041",
            "-1.5",
            "\uFF1Dx",
            "=\"q\",1");
    for (var text : texts) {
      diary.append(new ReleasedEnemy(DAY, text, text, text, text, text), text);
    }
    var entries = diary.read().current(ReleasedEnemy.class);
    assertThat(entries).extracting(entry -> entry.what().note()).containsExactlyElementsOf(texts);
    assertThat(entries).extracting(DiaryEntry::by).containsExactlyElementsOf(texts);
    var lines = Files.readAllLines(folder.resolve("released.csv"));
    assertThat(lines).hasSize(texts.size() + 2);
    for (var line : lines.subList(2, lines.size())) {
      for (var cell : line.split(",", -1)) {
        assertThat(cell.replaceFirst("^\"", "")).doesNotStartWith("=").doesNotStartWith("@");
      }
    }
  }

  @Test
  void anEntryThatWouldBeReadBackAsAnotherIsRefused() {
    var diary = Diary.in(folder);
    assertThatThrownBy(() -> diary.append(applied("Product A + Product B", "x"), "A. B."))
        .isInstanceOf(InputProblem.class);
    assertThat(Files.exists(folder.resolve("applied.csv"))).isFalse();
  }

  @Test
  void columnsOfTheUserAreKept() throws IOException {
    Files.writeString(
        folder.resolve("released.csv"),
        """
            id,day,field,organism,amount,lot,note,by,written,corrects,correction_reason,withdrawn,mine
            released-7,2027-05-01,Long Acre,lacewing,100,,,,,,,,own
            """);
    var id =
        Diary.in(folder)
            .append(new ReleasedEnemy(DAY, "Long Acre", "lacewing", "5", "", ""), "A. B.");
    assertThat(id).isEqualTo("released-8");
    assertThat(Files.readString(folder.resolve("released.csv"))).contains(",own\n");
    assertThat(Diary.in(folder).read().releases()).hasSize(2);
  }

  @Test
  void visitsToTrapsReachTheVisitBookOfTheForecast() throws IOException {
    var diary = Diary.in(folder);
    var set = ScoutedField.TrapVisitState.SET;
    var working = ScoutedField.TrapVisitState.WORKING;
    diary.append(ScoutedField.trap(DAY, "LA1", "leek moth", set, OptionalInt.empty(), "A"), "A");
    var id =
        diary.append(
            ScoutedField.trap(DAY.plusDays(7), "LA1", "leek moth", working, OptionalInt.of(4), "A"),
            "A");
    assertThat(diary.bringVisitsTo(folder)).isEqualTo(2);
    assertThat(diary.bringVisitsTo(folder)).isZero();
    diary.append(
        ScoutedField.trap(DAY.plusDays(3), "LA1", "leek moth", working, OptionalInt.of(1), "A"),
        "A");
    diary.correct(
        id,
        ScoutedField.trap(DAY.plusDays(7), "LA1", "leek moth", working, OptionalInt.of(14), "A"),
        "a digit was lost",
        "A");
    assertThat(diary.bringVisitsTo(folder)).isEqualTo(2);
    assertThat(Files.readAllLines(folder.resolve("visits.csv")))
        .containsExactly(
            "trap,date,state,count,nights_open,lure_renewed",
            "LA1,2027-06-01,set,,,",
            "LA1,2027-06-04,working,1,,",
            "LA1,2027-06-08,working,14,,");
    var last = diary.read().current(ScoutedField.class).get(2).id();
    diary.withdraw(last, "another trap", "A");
    assertThat(diary.bringVisitsTo(folder)).isEqualTo(1);
    assertThat(Files.readAllLines(folder.resolve("visits.csv"))).hasSize(3);
  }

  @Test
  void aVisitThatTheFolderTellsOtherwiseIsRefused() throws IOException {
    Files.writeString(
        folder.resolve("visits.csv"), "trap,date,state,count\nLA1,2027-06-01,working,9\n");
    var diary = Diary.in(folder);
    diary.append(
        ScoutedField.trap(
            DAY, "LA1", "leek moth", ScoutedField.TrapVisitState.WORKING, OptionalInt.of(4), "A"),
        "A");
    assertThatThrownBy(() -> diary.bringVisitsTo(folder))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("another visit");
  }
}
