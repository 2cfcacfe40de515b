package agro.course.sheet;

import agro.course.sheet.GridLines.Weight;
import agro.units.Numbers;
import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Sheet.Pen;
import agro.working.Sheet.Place;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Draws {@link LogProbabilityPaper}. */
final class LogProbabilityDrawing {

  private static final double[] LOW_LABELS = {
    0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 40, 50
  };
  private static final Sheet.Type RIGHT_TEXT = new Sheet.Type(3, false, Align.END);
  private static final Sheet.Type LEFT_TEXT = new Sheet.Type(3, false, Align.START);
  private static final Sheet.Type MIDDLE_TEXT = new Sheet.Type(3, false, Align.MIDDLE);
  private static final Sheet.Type MIDDLE_BOLD = new Sheet.Type(3.4, true, Align.MIDDLE);
  private static final Sheet.Type READ = new Sheet.Type(3.4, true, Align.START);
  private static final double RADIUS = 1.3;
  private static final int CORNERS = 16;

  private final LogProbabilityPaper paper;
  private final Wording words;
  private final Sheet.Builder page;
  private final double left;
  private final double right;
  private final double top;
  private final double bottom;

  LogProbabilityDrawing(LogProbabilityPaper paper, TextLanguage language) {
    this.paper = paper;
    words = PaperPage.words(language);
    page = PaperPage.titled(paper.title().isBlank() ? words.say("log.probability") : paper.title());
    left = paper.across(paper.firstLogDose());
    right = paper.across(paper.firstLogDose() + paper.cycles());
    top = paper.down(paper.highestPercent());
    bottom = paper.down(paper.lowestPercent());
  }

  Sheet draw() {
    PaperPage.blanks(page, words, 27);
    percents();
    doses();
    probits();
    page.box(left, top, right - left, bottom - top, PaperPage.FRAME);
    paper.line().ifPresent(this::line);
    paper.points().forEach(this::point);
    PaperPage.foot(page, words.say("log.probability.foot"));
    return page.build();
  }

  private static Pen pen(Weight weight) {
    return switch (weight) {
      case LABELLED -> PaperPage.STRONG;
      case HALF -> PaperPage.MIDDLE;
      case FINE -> PaperPage.FINE;
    };
  }

  private void percents() {
    var labels = percentLabels(paper.lowestPercent(), paper.highestPercent());
    for (var line : GridLines.of(labels, paper::down)) {
      double y = paper.down(line.value());
      page.line(left, y, right, y, pen(line.weight()));
    }
    for (double label : labels) {
      page.words(left - 1.6, paper.down(label) + 1.05, plain(label), RIGHT_TEXT);
    }
    page.words(
        PaperPage.LEFT,
        top - 4.4,
        words.say("axis.percent"),
        new Sheet.Type(3.2, true, Align.START));
  }

  /** Values with a label between two shares, which have one themselves. */
  static List<Double> percentLabels(double lowest, double highest) {
    var labels = new TreeSet<Double>();
    labels.add(lowest);
    labels.add(highest);
    for (double low : LOW_LABELS) {
      for (double each : new double[] {low, HandNumbers.rounded(100 - low, 2)}) {
        if (each > lowest && each < highest) {
          labels.add(each);
        }
      }
    }
    return List.copyOf(labels);
  }

  private void doses() {
    double first = paper.firstLogDose();
    for (int cycle = 0; cycle < paper.cycles(); cycle++) {
      double power = first + cycle;
      var labels = doseLabels();
      for (var line : GridLines.of(labels, each -> paper.across(power + Math.log10(each)))) {
        double x = paper.across(power + Math.log10(line.value()));
        page.line(x, top, x, bottom, pen(line.weight()));
      }
      for (double label : labels) {
        if (label < 10 || cycle == paper.cycles() - 1) {
          label(power, label);
        }
      }
    }
    var name = paper.doseName().isBlank() ? words.say("axis.dose.blank") : paper.doseName();
    page.words(
        (left + right) / 2, bottom + 10.5, words.say("axis.dose", "dose", name), MIDDLE_BOLD);
  }

  /** On an axis without numbers only the digits within each power of ten are printed. */
  private void label(double power, double label) {
    boolean isPower = label == 1 || label == 10;
    var text =
        paper.firstDose().isPresent()
            ? plain(HandNumbers.rounded(label * Math.pow(10, power), 12))
            : isPower ? "1" : plain(label);
    double x = paper.across(power + Math.log10(label));
    page.words(x, bottom + 4.4, text, isPower ? MIDDLE_BOLD : MIDDLE_TEXT);
  }

  private List<Double> doseLabels() {
    return switch (paper.cycles()) {
      case 1 -> List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0);
      case 2 -> List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0);
      case 3 -> List.of(1.0, 2.0, 3.0, 5.0, 10.0);
      default -> List.of(1.0, 2.0, 5.0, 10.0);
    };
  }

  private void probits() {
    double low = ProbitLine.probit(paper.lowestPercent());
    double high = ProbitLine.probit(paper.highestPercent());
    for (int tenth = (int) Math.ceil(10 * low - 1e-9); tenth <= 10 * high + 1e-9; tenth++) {
      double y = paper.downOfProbit(tenth / 10.0);
      boolean labelled = tenth % 5 == 0;
      page.line(right, y, right + (labelled ? 2.4 : 1.3), y, PaperPage.STRONG);
      if (labelled) {
        page.words(
            right + 3.2, y + 1.05, words.quantity(Numbers.fixed(tenth / 10.0, 1)), LEFT_TEXT);
      }
    }
    page.words(right, top - 4.4, words.say("axis.probit"), new Sheet.Type(3.2, true, Align.START));
  }

  private void line(ProbitLine line) {
    var ends = clipped(line);
    if (ends.size() == 2) {
      page.line(
          ends.get(0).x(), ends.get(0).y(), ends.get(1).x(), ends.get(1).y(), PaperPage.DRAWN);
    }
    double median = line.logDoseFor(50);
    double x = paper.across(median);
    if (x >= left && x <= right) {
      double y = paper.down(50);
      page.line(left, y, x, y, PaperPage.READING).line(x, y, x, bottom, PaperPage.READING);
      var text =
          words.say("median", "dose", words.quantity(Numbers.significant(Math.pow(10, median), 3)));
      double width = Sheet.width(text, READ);
      double at = x + 2 + width > right ? x - 2 - width : x + 2;
      page.shade(rectangle(at - 0.6, bottom - 8.6, at + width + 0.6, bottom - 3), 1);
      page.words(at, bottom - 4.6, text, READ);
    }
  }

  private static List<Place> rectangle(double x1, double y1, double x2, double y2) {
    return List.of(new Place(x1, y1), new Place(x2, y1), new Place(x2, y2), new Place(x1, y2));
  }

  /** Where the line enters and leaves the area; nothing when it does not cross it. */
  private List<Place> clipped(ProbitLine line) {
    double low = ProbitLine.probit(paper.lowestPercent());
    double high = ProbitLine.probit(paper.highestPercent());
    double from = paper.firstLogDose();
    double to = from + paper.cycles();
    if (line.slope() != 0) {
      double one = (low - line.intercept()) / line.slope();
      double other = (high - line.intercept()) / line.slope();
      from = Math.max(from, Math.min(one, other));
      to = Math.min(to, Math.max(one, other));
    } else if (line.intercept() < low || line.intercept() > high) {
      return List.of();
    }
    return from < to
        ? List.of(
            new Place(paper.across(from), paper.downOfProbit(line.at(from))),
            new Place(paper.across(to), paper.downOfProbit(line.at(to))))
        : List.of();
  }

  private void point(PaperPoint point) {
    double x = paper.across(Math.log10(point.dose()));
    if (point.percent() > paper.highestPercent()) {
      arrow(x, top, 1);
    } else if (point.percent() < paper.lowestPercent()) {
      arrow(x, bottom, -1);
    } else {
      double y = paper.down(point.percent());
      var corners = new ArrayList<Place>();
      for (int i = 0; i < CORNERS; i++) {
        double turn = 2 * Math.PI * i / CORNERS;
        corners.add(new Place(x + RADIUS * Math.cos(turn), y + RADIUS * Math.sin(turn)));
      }
      page.shade(corners, 0);
    }
  }

  /** A tip at the edge and a stem into the area. */
  private void arrow(double x, double edge, double inwards) {
    page.shade(
        List.of(
            new Place(x, edge),
            new Place(x - 1.4, edge + inwards * 3.2),
            new Place(x + 1.4, edge + inwards * 3.2)),
        0);
    page.line(x, edge + inwards * 3, x, edge + inwards * 6, PaperPage.DRAWN);
  }

  private String plain(double value) {
    return words.quantity(Numbers.plain(value));
  }
}
