package agro.working;

import agro.source.Reference;
import java.util.ArrayList;
import java.util.List;

/** The printed forms of a {@link Working}, and of the lists of sources and cautions below it. */
final class WorkingForms {

  private static final String SOURCES = "Sources";

  private WorkingForms() {}

  static String text(Working working) {
    var parts = new ArrayList<String>();
    parts.add(String.join("\n", PlainText.wrap(working.title(), PlainText.LINE_WIDTH)));
    for (int i = 0; i < working.steps().size(); i++) {
      parts.add(stepText(i + 1, working.steps().get(i)));
    }
    if (!working.references().isEmpty()) {
      parts.add(sourcesText(working.references()));
    }
    if (!working.cautions().isEmpty()) {
      parts.add(cautionsText(working.cautions()));
    }
    return String.join("\n\n", parts);
  }

  private static String stepText(int number, Working.Step step) {
    var lead = number + ". ";
    var indent = " ".repeat(lead.length());
    var text = new StringBuilder(PlainText.hanging(lead, step.name()));
    for (var line : step.lines()) {
      text.append('\n').append(PlainText.hanging(indent, line));
    }
    return text.toString();
  }

  static String sourcesText(List<Reference> references) {
    return listText(SOURCES, references.stream().map(Reference::citation).toList());
  }

  static String cautionsText(List<Caution> cautions) {
    return listText(Caution.HEADING, cautions.stream().map(Caution::line).toList());
  }

  private static String listText(String heading, List<String> items) {
    var text = new StringBuilder(heading);
    items.forEach(item -> text.append('\n').append(PlainText.hanging("- ", item)));
    return text.toString();
  }

  static String markdown(Working working) {
    var parts = new ArrayList<String>();
    parts.add("**" + MarkdownText.escape(working.title()) + "**");
    for (int i = 0; i < working.steps().size(); i++) {
      parts.add(stepMarkdown(i + 1, working.steps().get(i)));
    }
    if (!working.references().isEmpty()) {
      parts.add(sourcesMarkdown(working.references()));
    }
    if (!working.cautions().isEmpty()) {
      parts.add(cautionsMarkdown(working.cautions()));
    }
    return String.join("\n\n", parts);
  }

  private static String stepMarkdown(int number, Working.Step step) {
    var lead = number + ". ";
    var indent = " ".repeat(lead.length());
    var text = new StringBuilder(lead).append(MarkdownText.escape(step.name()));
    // A backslash at the end of a line is a hard line break in CommonMark.
    step.lines()
        .forEach(line -> text.append("\\\n").append(indent).append(MarkdownText.code(line)));
    return text.toString();
  }

  static String sourcesMarkdown(List<Reference> references) {
    return listMarkdown(SOURCES, references.stream().map(Reference::citation).toList());
  }

  static String cautionsMarkdown(List<Caution> cautions) {
    return listMarkdown(Caution.HEADING, cautions.stream().map(Caution::line).toList());
  }

  private static String listMarkdown(String heading, List<String> items) {
    var text = new StringBuilder("**").append(heading).append("**\n");
    items.forEach(item -> text.append("\n- ").append(MarkdownText.escape(item)));
    return text.toString();
  }

  static String html(Working working) {
    var html = new StringBuilder("<section class=\"agro-working\">\n");
    html.append(HtmlText.element("h3", working.title())).append("\n<ol>\n");
    for (var step : working.steps()) {
      html.append("<li>").append(HtmlText.element("p", step.name())).append('\n');
      for (var line : step.lines()) {
        html.append(HtmlText.element("p", "agro-formula", line)).append('\n');
      }
      html.append("</li>\n");
    }
    html.append("</ol>\n");
    if (!working.references().isEmpty()) {
      html.append(sourcesHtml(working.references())).append('\n');
    }
    if (!working.cautions().isEmpty()) {
      html.append(cautionsHtml(working.cautions())).append('\n');
    }
    return html.append("</section>").toString();
  }

  static String sourcesHtml(List<Reference> references) {
    return listHtml("agro-sources", SOURCES, references.stream().map(Reference::citation).toList());
  }

  static String cautionsHtml(List<Caution> cautions) {
    return listHtml(
        "agro-cautions", Caution.HEADING, cautions.stream().map(Caution::line).toList());
  }

  private static String listHtml(String cssClass, String heading, List<String> items) {
    var html = new StringBuilder("<aside class=\"").append(cssClass).append("\">\n");
    html.append(HtmlText.element("h3", heading)).append("\n<ul>\n");
    items.forEach(item -> html.append(HtmlText.element("li", item)).append('\n'));
    return html.append("</ul>\n</aside>").toString();
  }

  static String latex(Working working) {
    var lines = new ArrayList<String>();
    lines.add("\\paragraph{" + LatexText.escape(working.title()) + "}");
    lines.addAll(latexSteps(working.steps()));
    lines.addAll(
        latexList(SOURCES, working.references().stream().map(Reference::citation).toList()));
    lines.addAll(
        latexList(Caution.HEADING, working.cautions().stream().map(Caution::line).toList()));
    return String.join("\n", lines);
  }

  private static List<String> latexSteps(List<Working.Step> steps) {
    var lines = new ArrayList<String>();
    if (!steps.isEmpty()) {
      lines.add("\\begin{enumerate}");
      for (var step : steps) {
        lines.add("\\item " + LatexText.escape(step.name()));
        step.lines().forEach(line -> lines.add("\\par " + LatexText.escape(line)));
      }
      lines.add("\\end{enumerate}");
    }
    return lines;
  }

  private static List<String> latexList(String heading, List<String> items) {
    var lines = new ArrayList<String>();
    if (!items.isEmpty()) {
      lines.add("\\paragraph{" + LatexText.escape(heading) + "}");
      lines.add("\\begin{itemize}");
      items.forEach(item -> lines.add("\\item " + LatexText.escape(item)));
      lines.add("\\end{itemize}");
    }
    return lines;
  }
}
