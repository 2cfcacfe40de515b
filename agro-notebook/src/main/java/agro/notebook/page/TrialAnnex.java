package agro.notebook.page;

import agro.notebook.figure.EfficacyFigure;
import agro.notebook.figure.LoadFigure;
import agro.notebook.figure.LoadYieldFigure;
import agro.notebook.figure.ResidualFigure;
import agro.notebook.figure.TrialMeansFigure;
import agro.source.Reference;
import agro.trial.analysis.AnalysedTrial;
import agro.trial.efficacy.EfficacyCourse;
import agro.trial.efficacy.EfficacyLimits;
import agro.trial.load.LoadYieldLine;
import agro.trial.load.TrialLoad;
import agro.trial.load.TrialValue;
import agro.working.HtmlText;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What the front sheet rests on: data, checks, tests, figures and sources. */
final class TrialAnnex {

  private final TrialParts parts;
  private final StringBuilder html = new StringBuilder();

  TrialAnnex(TrialParts parts) {
    this.parts = parts;
  }

  String html() {
    data();
    parts.analyses().forEach(this::analysis);
    parts.course().ifPresent(this::efficacy);
    parts.load().ifPresent(this::load);
    parts.line().ifPresent(this::yieldOnLoad);
    parts.value().ifPresent(this::value);
    var sources = sources();
    if (!sources.isEmpty()) {
      html.append("<section class=\"annex\">\n");
      add(Presentation.titled("").sources(List.copyOf(sources)).build());
      close();
    }
    return html.toString();
  }

  private void open(String heading) {
    html.append("<section class=\"annex\">\n<h2>")
        .append(HtmlText.escape(heading))
        .append("</h2>\n");
  }

  private void close() {
    html.append("</section>\n");
  }

  private void add(Presentation part) {
    html.append(part.toHtml()).append('\n');
  }

  private void add(ResultTable table) {
    html.append(table.toHtml()).append('\n');
  }

  private void add(String paragraph) {
    html.append("<p>").append(HtmlText.escape(paragraph)).append("</p>\n");
  }

  private void data() {
    open("Design, data and corrections");
    // Headings of the parts would stand below that of the section with the same words.
    add(untitled(parts.trial().review().presentation()));
    add(untitled(parts.trial().corrections().presentation()));
    add(untitled(Presentation.of(parts.trial().report())));
    close();
  }

  private static Presentation untitled(Presentation part) {
    return new Presentation("", part.blocks());
  }

  private void analysis(AnalysedTrial analysed) {
    open("Analysis of " + analysed.subject().title());
    analysed.reasons().forEach(this::add);
    html.append(PageFigures.captioned(ResidualFigure.of(analysed)));
    add(analysed.checkTable());
    analysed.effectTable().ifPresent(this::add);
    add(analysed.sentence() + ".");
    for (var means : analysed.means()) {
      add(analysed.meansTable(means));
      analysed.differenceTable(means).ifPresent(this::add);
    }
    add(analysed.blockTable());
    var figure = TrialMeansFigure.of(analysed);
    if (parts.first().map(analysed::equals).orElse(false)) {
      add("On the figure of the means on the front sheet: " + figure.caption());
    } else {
      html.append(PageFigures.captioned(figure));
    }
    analysed.advice().forEach(this::add);
    close();
  }

  private void efficacy(EfficacyCourse course) {
    open("Efficacy");
    var first = course.dates().values().iterator().next();
    add(first.formula().title() + ": " + first.formula().form() + ". " + first.advice().reason());
    html.append(PageFigures.captioned(EfficacyFigure.of(course)));
    add(course.table());
    close();
  }

  private void load(TrialLoad load) {
    open("Pest load");
    html.append(PageFigures.captioned(LoadFigure.of(load)));
    close();
  }

  private void yieldOnLoad(LoadYieldLine line) {
    open("Yield on pest load");
    html.append(PageFigures.captioned(LoadYieldFigure.of(line)));
    close();
  }

  private void value(TrialValue value) {
    open("Value");
    add(value.table());
    close();
  }

  private Set<Reference> sources() {
    var sources = new LinkedHashSet<Reference>();
    parts.analyses().forEach(one -> sources.addAll(one.sources()));
    parts.course().ifPresent(course -> sources.addAll(sources(course)));
    parts.load().ifPresent(load -> sources.add(load.settings().measure().source()));
    return sources;
  }

  private static Set<Reference> sources(EfficacyCourse course) {
    var sources = new LinkedHashSet<Reference>();
    for (var date : course.dates().values()) {
      sources.add(date.formula().source());
      for (var one : date.treatments()) {
        one.pooled()
            .limitsToPrint()
            .map(EfficacyLimits::method)
            .ifPresent(method -> sources.addAll(method.sources()));
      }
    }
    return sources;
  }
}
