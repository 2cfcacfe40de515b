package agro.notebook.page;

import agro.notebook.figure.TrialMapFigure;
import agro.notebook.figure.TrialMeansFigure;
import agro.trial.TrialDesign;
import agro.trial.TrialFinding;
import agro.trial.TrialFinding.Severity;
import agro.trial.analysis.AnalysedTrial;
import agro.working.Caution;
import agro.working.HtmlText;
import agro.working.Presentation;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The first sheet: what was done, what came of it and what to be careful about. */
final class FrontSheet {

  /** Findings and corrections beyond this stand in the annex alone. */
  private static final int MOST = 4;

  private final TrialParts parts;

  FrontSheet(TrialParts parts) {
    this.parts = parts;
  }

  String html() {
    return "<section class=\"front\">\n"
        + "<h1>"
        + HtmlText.escape(parts.title())
        + "</h1>\n<p class=\"facts\">"
        + HtmlText.escape(facts())
        + "</p>\n"
        + parts.remarks().stream().map(FrontSheet::paragraph).collect(Collectors.joining())
        + "<div class=\"beside\">\n"
        + map()
        + "<div class=\"data\">\n"
        + findings()
        + corrections()
        + "</div>\n</div>\n"
        + parts.first().map(FrontSheet::result).orElse("")
        + SummaryTable.of(parts).toHtml()
        + Presentation.titled("").cautions(Caution.all()).build().toHtml()
        + "\n</section>\n";
  }

  private static String paragraph(String text) {
    return "<p>" + HtmlText.escape(text) + "</p>\n";
  }

  private String facts() {
    var trial = parts.trial();
    var facts = new ArrayList<String>();
    facts.add(
        trial.review().designs().values().stream()
            .map(TrialDesign::words)
            .distinct()
            .collect(Collectors.joining("; ")));
    facts.add(trial.treatments().size() + " treatments");
    facts.add(trial.plots().size() + " plots");
    if (!trial.controls().isEmpty()) {
      facts.add("control: " + String.join("; ", trial.controls()));
    }
    var days = trial.dates();
    if (!days.isEmpty()) {
      facts.add(
          "assessed on "
              + days.stream().map(LocalDate::toString).collect(Collectors.joining(", ")));
    }
    parts.course().ifPresent(course -> facts.add("treated on " + course.treated()));
    return String.join(" · ", facts);
  }

  private String map() {
    boolean placed =
        parts.trial().environments().size() == 1
            && parts.trial().plots().stream().allMatch(plot -> plot.place().isPresent());
    return placed ? PageFigures.bare(TrialMapFigure.of(parts.trial()), "map") : "";
  }

  private String findings() {
    var findings = parts.trial().review().findings();
    var grave = findings.stream().filter(one -> one.severity() != Severity.NOTE).toList();
    return "<h2>Data</h2>\n"
        + (grave.isEmpty()
            ? paragraph("The review of the data found nothing that needs a decision.")
            : list(grave.stream().map(FrontSheet::words).toList()));
  }

  private static String words(TrialFinding finding) {
    return capital(finding.severity()) + ": " + finding.text();
  }

  private static String capital(Severity severity) {
    return severity == Severity.ERROR ? "Error" : "Warning";
  }

  private String corrections() {
    var history = parts.trial().corrections().corrections();
    return history.isEmpty()
        ? paragraph("No value was corrected.")
        : list(history.stream().map(one -> "Corrected: " + one).toList());
  }

  private static String sentence(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static String list(List<String> items) {
    var more = items.size() - MOST;
    return "<ul>\n"
        + items.stream()
            .limit(MOST)
            .map(item -> "<li>" + HtmlText.escape(item) + "</li>\n")
            .collect(Collectors.joining())
        + (more > 0 ? "<li>" + more + " more, see below</li>\n" : "")
        + "</ul>\n";
  }

  private static String result(AnalysedTrial analysed) {
    return "<p class=\"sentence\">"
        + HtmlText.escape(
            sentence(analysed.subject().title())
                + ", "
                + analysed.subject().route().words()
                + (analysed.subject().transformation().isNone()
                    ? ""
                    : " on the scale of the " + analysed.subject().transformation().words())
                + ": "
                + analysed.sentence())
        + "</p>\n"
        + PageFigures.bare(TrialMeansFigure.of(analysed), "means");
  }
}
