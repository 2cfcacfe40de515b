package agro.course.handwork;

import agro.course.sheet.LogProbabilityPaper;
import agro.course.sheet.PaperPoint;
import agro.course.sheet.ProbitLine;
import agro.report.InputProblem;
import agro.source.Reference;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import agro.working.TextLanguage;
import agro.working.Working;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** A calculation by hand in print. */
final class HandProbitPrint {

  /** Cycles that are shown; further ones differ in late decimals alone. */
  private static final int MOST_TABLES = 4;

  private final HandProbitFit fit;
  private final HandProbit question;
  private final HandRounding rounding;
  private final HandWords words;

  HandProbitPrint(HandProbitFit fit, TextLanguage language) {
    this.fit = fit;
    question = fit.question();
    rounding = question.rounding();
    words = HandWords.in(language);
  }

  private boolean isCorrected() {
    return question.naturalMortality() > 0;
  }

  private String title() {
    var of = question.data().title();
    return of.isBlank() ? words.say("title") : words.say("title.of", "assay", of);
  }

  ResultTable counts() {
    var columns = new ArrayList<Column>();
    var unit = question.data().axis().unit();
    columns.add(Column.of(words.say("column.dose"), unit));
    columns.add(words.column("column.x"));
    columns.add(words.column("column.n"));
    columns.add(words.column("column.r"));
    columns.add(words.column("column.percent"));
    if (isCorrected()) {
      columns.add(words.column("column.corrected"));
    }
    columns.add(words.column("column.empirical"));
    var rows = new ArrayList<List<Cell>>();
    for (var group : question.groups()) {
      var row = new ArrayList<Cell>();
      row.add(Cell.text(words.significant(group.dose(), 6)));
      row.add(words.cell(group.logDose(), rounding.logDosePrint()));
      row.add(Cell.number(group.exposed(), 0));
      row.add(Cell.number(group.responded(), 0));
      row.add(words.cell(group.percent(), rounding.percentPrint()));
      if (isCorrected()) {
        row.add(words.cell(group.corrected(), rounding.percentPrint()));
      }
      row.add(
          group.empirical().isPresent()
              ? words.cell(group.empirical().getAsDouble(), rounding.probitPrint())
              : Cell.text("–"));
      rows.add(row);
    }
    var table = ResultTable.of(words.say("table.counts"), columns, rows);
    boolean missing = question.groups().stream().anyMatch(each -> each.empirical().isEmpty());
    return missing ? table.withNote(words.say("note.no.probit")) : table;
  }

  ResultTable cycle(ProbitCycle cycle) {
    var columns =
        List.of("x", "n", "expected", "w", "nw", "least", "range", "y", "nwx", "nwy").stream()
            .map(key -> words.column("column." + key))
            .toList();
    var rows = new ArrayList<List<Cell>>();
    for (var row : cycle.rows()) {
      rows.add(
          List.of(
              words.cell(row.group().logDose(), rounding.logDosePrint()),
              Cell.number(row.group().exposed(), 0),
              words.cell(row.expected(), rounding.expectedPrint()),
              words.cell(row.coefficient(), rounding.weightPrint()),
              words.cell(row.weight(), rounding.totalPrint()),
              words.cell(row.least(), rounding.tablePrint()),
              words.cell(row.range(), rounding.tablePrint()),
              words.cell(row.working(), rounding.workingPrint()),
              words.cell(row.weightX(), 3),
              words.cell(row.weightY(), 3)));
    }
    var sums = cycle.sums();
    return ResultTable.of(
            words.say("table.cycle", "number", cycle.number(), "line", line(cycle.from())),
            columns,
            rows)
        .withNote(
            words.say(
                "note.sums",
                "w",
                words.number(sums.w(), 3),
                "wx",
                words.number(sums.wx(), 3),
                "wy",
                words.number(sums.wy(), 3),
                "wxx",
                words.number(sums.wxx(), 4),
                "wxy",
                words.number(sums.wxy(), 4),
                "wyy",
                words.number(sums.wyy(), 4)));
  }

  private String line(ProbitLine line) {
    var intercept = words.number(line.intercept(), rounding.resultPrint());
    var slope = words.number(Math.abs(line.slope()), rounding.resultPrint());
    return "Y = " + intercept + (line.slope() < 0 ? " − " : " + ") + slope + " x";
  }

  Working working() {
    var working =
        Working.of(title())
            .step(
                words.say("step.probits"),
                "",
                "",
                words.say("step.probits.result", "number", question.groups().size()));
    if (isCorrected()) {
      working =
          working.step(
              words.say("step.abbott", "share", control()),
              "p' = 100 (p − C) / (100 − C)",
              correction(first().percent()),
              words.say("step.abbott.result", "percent", percent(first().corrected())));
    }
    working =
        working.step(
            words.say("step.provisional." + question.start().way().name()),
            "",
            "",
            line(fit.provisional()));
    for (var cycle : fit.cycles().subList(0, Math.min(MOST_TABLES, fit.cycles().size()))) {
      working = working.followedBy(new CycleSteps(cycle, question, words).steps());
    }
    return working.followedBy(new ResultSteps(fit, words).steps());
  }

  private ProbitGroup first() {
    return question.groups().get(0);
  }

  private String percent(double percent) {
    return words.number(percent, rounding.percentPrint());
  }

  private String correction(double killed) {
    var natural = words.number(100 * question.naturalMortality(), 2);
    return "100 × (" + percent(killed) + " − " + natural + ") / (100 − " + natural + ")";
  }

  private String control() {
    return words.number(100 * question.naturalMortality(), 2) + " %";
  }

  Presentation page() {
    var page =
        Presentation.titled(title())
            .fact(words.say("fact.line"), line(fit.line()))
            .fact(words.say("fact.median"), median())
            .fact(words.say("fact.chi"), new ResultSteps(fit, words).chiSquared())
            .fact(words.say("fact.rounding"), words.say("rounding." + rounding.name()));
    if (isCorrected()) {
      page.fact(
          words.say("fact.control"),
          control() + "; " + words.say("weights." + question.weights().name()));
    }
    add(page, counts());
    fit.cycles().stream().limit(MOST_TABLES).forEach(cycle -> add(page, cycle(cycle)));
    if (fit.cycles().size() > MOST_TABLES) {
      page.paragraph(words.say("more.cycles", "number", fit.cycles().size() - MOST_TABLES));
    }
    page.working(working());
    comparison().ifPresent(page::paragraph);
    page.paragraph(words.say("laboratory"));
    if (words.words().language() == TextLanguage.ENGLISH) {
      return page.cautions(Caution.all()).sources(sources()).build();
    }
    return page.paragraph(words.say("caution")).paragraph(words.sources(sources())).build();
  }

  /** A table with its notes as paragraphs, since a table puts an English word before a note. */
  private static void add(Presentation.Builder page, ResultTable table) {
    page.table(ResultTable.of(table.title(), table.columns(), table.rows()));
    table.notes().forEach(page::paragraph);
  }

  private String median() {
    return fit.line().slope() > 0
        ? new ResultSteps(fit, words).inWords(fit.lethalDose(50))
        : words.say("falls");
  }

  /** Nothing where the data have no maximum-likelihood line. */
  private Optional<String> comparison() {
    try {
      var both = fit.comparison();
      return Optional.of(
          words.say(
              "comparison",
              "line",
              line(both.likelihood()),
              "slope",
              words.significant(both.slopeDifference(), 2),
              "log",
              words.significant(both.logDoseDifference(), 2),
              "percent",
              words.significant(both.dosePercent(), 2)));
    } catch (InputProblem none) {
      return Optional.of(words.say("comparison.none"));
    }
  }

  private List<Reference> sources() {
    var sources = new LinkedHashSet<Reference>();
    sources.add(HandworkSources.BLISS_1935);
    sources.add(HandworkSources.FINNEY_1947);
    sources.add(HandworkSources.FINNEY_1971);
    sources.add(HandworkSources.FINNEY_STEVENS_1948);
    sources.add(HandworkSources.FIELLER_1954);
    if (isCorrected()) {
      sources.add(HandworkSources.ABBOTT_1925);
    }
    return List.copyOf(sources);
  }

  LogProbabilityPaper paper() {
    var points = new ArrayList<PaperPoint>();
    for (var group : question.groups()) {
      double percent = Math.min(100, Math.max(0, group.corrected()));
      points.add(new PaperPoint(group.dose(), percent));
    }
    var unit = question.data().axis().unit();
    var dose = words.say("column.dose") + (unit.isBlank() ? "" : " (" + unit + ")");
    return LogProbabilityPaper.around(points).titled(title(), dose).withLine(fit.line());
  }
}
