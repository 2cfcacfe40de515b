package agro.notebook.run;

import agro.notebook.display.MimeBundle;
import agro.notebook.kernel.CellFailure;
import agro.notebook.kernel.CellOutput;
import agro.notebook.run.NotebookCell.Content;
import agro.working.HtmlText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Lays out a run as one page: prose, folded code, results, and contents made from the headings. */
final class NotebookPage {

  private static final int HEADINGS_WORTH_A_LIST = 3;
  private static final List<String> BEST_FIRST =
      List.of(MimeBundle.HTML, MimeBundle.MARKDOWN, MimeBundle.PNG, MimeBundle.TEXT);

  /** Nothing is loaded and nothing is run, whatever a cell may have written. */
  private static final String POLICY =
      "default-src 'none'; img-src data:; style-src 'unsafe-inline'";

  private final NotebookRun run;
  private final CodeView view;
  private final PageProse prose;

  NotebookPage(NotebookRun run, CodeView view) {
    this.run = run;
    this.view = view;
    this.prose = new PageProse(Path.of(run.notebook().name()).toAbsolutePath().getParent());
  }

  String html() {
    var parts = new ArrayList<String>();
    for (var cell : run.cells()) {
      if (cell.content() == Content.MARKDOWN) {
        parts.add("<section class=\"prose\">\n" + prose.html(cell.source()) + "</section>\n");
      } else if (cell.content() == Content.CODE) {
        run.outcome(cell).ifPresent(outcome -> parts.add(step(outcome)));
      }
    }
    var titled = !parts.isEmpty() && parts.get(0).contains("<h1");
    parts.add(titled ? 1 : 0, contents());
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\""
        + POLICY
        + "\">\n<title>"
        + HtmlText.escape(run.notebook().title())
        + "</title>\n<style>\n"
        + style()
        + "</style>\n</head>\n<body>\n<main>\n"
        + String.join("", parts)
        + footer()
        + "</main>\n</body>\n</html>\n";
  }

  private static String style() {
    try (var css = NotebookPage.class.getResourceAsStream("page.css")) {
      return new String(css.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the style of pages could not be read", unreadable);
    }
  }

  private String contents() {
    var headings = prose.headings().stream().filter(heading -> heading.level() > 1).toList();
    if (headings.size() < HEADINGS_WORTH_A_LIST) {
      return "";
    }
    var list = new StringBuilder("<nav aria-label=\"Contents\">\n<p>Contents</p>\n<ul>\n");
    for (var heading : headings) {
      list.append("<li class=\"level-")
          .append(heading.level())
          .append("\"><a href=\"#")
          .append(heading.id())
          .append("\">")
          .append(HtmlText.escape(heading.text()))
          .append("</a></li>\n");
    }
    return list.append("</ul>\n</nav>\n").toString();
  }

  private String footer() {
    return "<footer><p>Made by running the notebook <code>"
        + HtmlText.escape(run.notebook().fileStem())
        + ".ipynb</code> from its first cell to its last.</p></footer>\n";
  }

  private String step(CellOutcome outcome) {
    var html = new StringBuilder("<section class=\"step\">\n").append(code(outcome));
    outcome.outputs().forEach(output -> html.append(output(output)));
    var value = outcome.result().value();
    if (value.present() && !value.shown().isEmpty()) {
      html.append(shown(value.shown()));
    }
    outcome.result().failure().ifPresent(failure -> html.append(failure(failure)));
    return html.append("</section>\n").toString();
  }

  private String code(CellOutcome outcome) {
    var given = outcome.cell().tags().contains(InjectedParameters.INJECTED);
    var open = given || view == CodeView.SHOWN;
    return "<details class=\"code\""
        + (open ? " open" : "")
        + "><summary>"
        + (given ? "Values given for this page" : "Java, cell " + outcome.number())
        + "</summary>\n<pre><code>"
        + HtmlText.escape(outcome.cell().source().strip())
        + "</code></pre>\n</details>\n";
  }

  private String output(CellOutput output) {
    if (output instanceof CellOutput.Printed printed) {
      return "<pre class=\""
          + (printed.isOrdinary() ? "printed" : "remark")
          + "\">"
          + HtmlText.escape(printed.text().stripTrailing())
          + "</pre>\n";
    }
    return output.bundle().map(this::shown).orElse("");
  }

  private String shown(MimeBundle bundle) {
    for (var format : BEST_FIRST) {
      var content = bundle.get(format).filter(text -> isHarmless(format, text));
      if (content.isPresent()) {
        return "<div class=\"result\">\n" + shown(format, content.get(), bundle) + "\n</div>\n";
      }
    }
    return "";
  }

  private String shown(String format, String content, MimeBundle bundle) {
    return switch (format) {
      case MimeBundle.HTML -> content;
      case MimeBundle.MARKDOWN -> prose.aside(content);
      case MimeBundle.PNG ->
          "<img src=\"data:image/png;base64,"
              + content
              + "\" alt=\""
              + HtmlText.escape(
                  bundle.plainText().isBlank() ? "A picture without a text" : bundle.plainText())
              + "\">";
      default -> words(content.stripTrailing());
    };
  }

  /** One line reads like prose; several may be laid out in columns. */
  private static String words(String text) {
    var tag = text.contains("\n") ? "pre" : "p";
    return "<" + tag + " class=\"value\">" + HtmlText.escape(text) + "</" + tag + ">";
  }

  private static boolean isHarmless(String format, String content) {
    return !format.equals(MimeBundle.HTML) || !content.toLowerCase(Locale.ROOT).contains("<script");
  }

  private static String failure(CellFailure failure) {
    return "<pre class=\"failure\">"
        + HtmlText.escape(String.join("\n", failure.trace()))
        + "</pre>\n";
  }
}
