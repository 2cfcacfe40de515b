package agro.course.sheet;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.sampling.VarianceModel;
import agro.sampling.sequential.ConfidenceBand;
import agro.sampling.sequential.CountFamily;
import agro.sampling.sequential.EndRule;
import agro.sampling.sequential.SequentialPlan;
import agro.sampling.sequential.WaldLines;
import agro.sampling.size.PrecisionStopLine;
import agro.working.Sheet;
import agro.working.TextLanguage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Paper to draw on: where lines stand, what is on it, and that nothing leaves the page. */
class PapersTest {

  static final ProbitLine LINE = new ProbitLine(2.1125, 4.2132);
  static final List<PaperPoint> POINTS =
      List.of(
          new PaperPoint(10.2, 88),
          new PaperPoint(7.7, 85.7),
          new PaperPoint(5.1, 52.2),
          new PaperPoint(3.8, 33.3),
          new PaperPoint(2.6, 12),
          new PaperPoint(20, 100),
          new PaperPoint(1.2, 0));

  static SequentialPlan plan() {
    var lines = WaldLines.of(new CountFamily.AtRandom(), 1, 2, 0.1, 0.1);
    return SequentialPlan.truncated(lines, 40, EndRule.BY_THE_MIDDLE);
  }

  /** Everything that is printed, by name. */
  static List<PrintableSheet> all() {
    var precision = new PrecisionStopLine(new VarianceModel.Power(3, 1.5), 0.25);
    var band =
        SequentialPlan.truncated(
            new ConfidenceBand(new VarianceModel.Power(3, 1.5), 5, 0.9), 60, EndRule.CALL_HIGH);
    return List.of(
        LogProbabilityPaper.of(1),
        LogProbabilityPaper.of(2),
        LogProbabilityPaper.of(3).startingAt(0.1).percents(1, 99),
        LogProbabilityPaper.of(4).percents(0.01, 99.99),
        LogProbabilityPaper.around(POINTS).titled("Rotenone", "mg/L").withLine(LINE),
        StopLinePaper.of(30, 60),
        StopLinePaper.of(500, 12000),
        StopLinePaper.of(plan()).titled("Aphids on Osmere Vale wheat", "tiller"),
        StopLinePaper.of(precision, 100),
        StopLinePaper.of(band),
        SineTable.of(),
        new SineTable(5),
        SineArcTable.of(),
        ProbitTable.of(),
        new ProbitTable(4),
        WorkingProbitTable.of(),
        NormalAreaTable.of(),
        StudentTable.of(),
        ChiSquaredTable.of());
  }

  @Test
  void bothLanguagesAreComplete() throws IOException {
    BundlesOfTwoLanguages.check(PapersTest.class, "sheet");
  }

  @Test
  void gridLinesStandAtNormalQuantiles() {
    var paper = LogProbabilityPaper.of(2).percents(0.01, 99.99);
    double unit = paper.downOfProbit(5) - paper.downOfProbit(6);
    for (var line : ReferenceTable.read(PapersTest.class, "probits.csv")) {
      double down = paper.down(number(line, "percent"));
      assertThat((paper.down(50) - down) / unit)
          .isCloseTo(number(line, "probit") - 5, within(1e-8));
    }
  }

  @Test
  void everyLabelledPercentHasItsLineInTheDrawing() {
    var sheet = LogProbabilityPaper.of(2).sheet(TextLanguage.ENGLISH);
    var paper = LogProbabilityPaper.of(2);
    for (double percent : new double[] {0.2, 1, 5, 20, 50, 84, 97, 99.5}) {
      assertThat(horizontals(sheet)).anyMatch(y -> Math.abs(y - paper.down(percent)) < 1e-9);
    }
    assertThat(words(sheet)).contains("0.1", "50", "99.9", "5.0");
    assertThat(words(LogProbabilityPaper.of(2).sheet(TextLanguage.GERMAN))).contains("0,1", "5,0");
  }

  private static List<Double> horizontals(Sheet sheet) {
    var places = new ArrayList<Double>();
    for (var mark : sheet.marks()) {
      if (mark instanceof Sheet.Line line && line.from().y() == line.to().y()) {
        places.add(line.from().y());
      }
    }
    return places;
  }

  private static List<String> words(Sheet sheet) {
    return sheet.marks().stream()
        .filter(Sheet.Words.class::isInstance)
        .map(mark -> ((Sheet.Words) mark).text())
        .toList();
  }

  @Test
  void dosesStandAtTheirLogarithms() {
    var paper = LogProbabilityPaper.of(3).startingAt(0.1);
    double cycle = paper.across(0) - paper.across(-1);
    assertThat(paper.across(Math.log10(5)) - paper.across(-1))
        .isCloseTo(cycle * Math.log10(50), within(1e-9));
    assertThat(words(paper.sheet())).contains("0.1", "1", "10", "100", "0.2");
  }

  @Test
  void neighbouringGridLinesCanBeToldApart() {
    for (int cycles = 1; cycles <= 4; cycles++) {
      var sheet = LogProbabilityPaper.of(cycles).sheet();
      var places = horizontals(sheet).stream().sorted().distinct().toList();
      var paper = LogProbabilityPaper.of(cycles);
      var inside =
          places.stream().filter(y -> y >= paper.down(99.9) && y <= paper.down(0.1)).toList();
      assertThat(inside.size()).isGreaterThan(60);
    }
  }

  @Test
  void theDrawnLineGoesThroughItsMedian() {
    var paper = LogProbabilityPaper.around(POINTS).withLine(LINE);
    var drawn =
        paper.sheet().marks().stream()
            .filter(Sheet.Line.class::isInstance)
            .map(Sheet.Line.class::cast)
            .filter(line -> line.pen().equals(PaperPage.DRAWN))
            .filter(line -> line.from().x() != line.to().x())
            .findFirst()
            .orElseThrow();
    double share = (paper.down(50) - drawn.from().y()) / (drawn.to().y() - drawn.from().y());
    double x = drawn.from().x() + share * (drawn.to().x() - drawn.from().x());
    assertThat(x).isCloseTo(paper.across(LINE.logDoseFor(50)), within(1e-9));
    assertThat(words(paper.sheet())).contains("LD50 = 4.85");
  }

  @Test
  void nothingLeavesThePageAndOnlyGreysAreUsed() {
    for (var language : TextLanguage.values()) {
      for (var each : all()) {
        var sheet = each.sheet(language);
        var outside =
            sheet.marks().stream()
                .filter(mark -> !corners(mark).stream().allMatch(at -> isInside(sheet, at)))
                .toList();
        assertThat(outside).as(sheet.title()).isEmpty();
        assertThat(words(sheet))
            .noneMatch(text -> text.contains("{") || text.contains("not known"));
      }
    }
  }

  /** The furthest corners of a mark; of words as wide as they are reckoned. */
  private static List<Sheet.Place> corners(Sheet.Mark mark) {
    if (mark instanceof Sheet.Line line) {
      return List.of(line.from(), line.to());
    }
    if (mark instanceof Sheet.Box box) {
      var corner = box.corner();
      return List.of(
          corner, new Sheet.Place(corner.x() + box.widthMm(), corner.y() + box.heightMm()));
    }
    if (mark instanceof Sheet.Shade shade) {
      return shade.corners();
    }
    var words = (Sheet.Words) mark;
    double width = Sheet.width(words.text(), words.type());
    double from =
        switch (words.type().align()) {
          case START -> words.at().x();
          case MIDDLE -> words.at().x() - width / 2;
          case END -> words.at().x() - width;
        };
    return List.of(
        new Sheet.Place(from, words.at().y()), new Sheet.Place(from + width, words.at().y()));
  }

  private static boolean isInside(Sheet sheet, Sheet.Place place) {
    return place.x() >= 8
        && place.x() <= sheet.widthMm() - 8
        && place.y() >= 8
        && place.y() <= sheet.heightMm() - 10;
  }

  @Test
  void stopLinesStandAtTheirTotals() {
    var plan = plan();
    var paper = StopLinePaper.of(plan);
    var drawn =
        paper.sheet().marks().stream()
            .filter(Sheet.Line.class::isInstance)
            .map(Sheet.Line.class::cast)
            .filter(line -> line.pen().equals(PaperPage.DRAWN))
            .toList();
    assertThat(drawn)
        .anyMatch(
            line ->
                Math.abs(line.to().x() - paper.across(40)) < 1e-9
                    && Math.abs(line.to().y() - paper.down(plan.bounds().high(40))) < 1e-9)
        .anyMatch(
            line ->
                Math.abs(line.to().x() - paper.across(40)) < 1e-9
                    && Math.abs(line.to().y() - paper.down(plan.bounds().low(40))) < 1e-9);
    assertThat(words(paper.sheet())).contains(Long.toString(plan.firstHigh(40)), "high ≥");
    assertThat(words(paper.empty().sheet())).doesNotContain("high ≥", "go on");
  }

  @Test
  void whatHasNoPlaceIsRefused() {
    assertThatThrownBy(() -> LogProbabilityPaper.of(5)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> LogProbabilityPaper.of(2).startingAt(3))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> LogProbabilityPaper.of(2).percents(0, 99))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> LogProbabilityPaper.of(1).startingAt(1).withPoints(POINTS))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> LogProbabilityPaper.of(1).withLine(LINE))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> LogProbabilityPaper.around(List.of()))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new PaperPoint(0, 50)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new PaperPoint(1, 101)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> StopLinePaper.of(2, 10)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> StopLinePaper.of(SequentialPlan.of((WaldLines) plan().bounds())))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> ProbitLine.through(2, 10, 2, 50)).isInstanceOf(InputProblem.class);
  }

  @Test
  void aPointOnThePowerOfTenNeedsNoFurtherCycle() {
    var paper = LogProbabilityPaper.around(List.of(new PaperPoint(1, 20), new PaperPoint(100, 80)));
    assertThat(paper.cycles()).isEqualTo(2);
    assertThat(LogProbabilityPaper.around(List.of(new PaperPoint(1, 20))).cycles()).isEqualTo(1);
  }
}
