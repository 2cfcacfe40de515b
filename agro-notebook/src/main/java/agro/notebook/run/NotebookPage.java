package agro.notebook.run;

import agro.notebook.run.NotebookCell.Content;
import agro.working.HtmlText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Lays out a run as one page: prose, folded code, results, and contents made from the headings. */
final class NotebookPage {

  private static final int HEADINGS_WORTH_A_LIST = 3;
  private static final Pattern LATER_HEADING = Pattern.compile("(?m)^<h[1-6] ");

  /** A cell with this tag is printed on a page of its own. */
  private static final String OWN_PAGE = "own-page";

  private static final String FAILURE = "first-failure";

  /** Nothing is loaded and nothing is run, whatever a cell may have written. */
  private static final String POLICY =
      "default-src 'none'; img-src data:; style-src 'unsafe-inline'";

  private final NotebookRun run;
  private final CodeView view;
  private final PageProse prose;
  private final PageOutputs outputs;

  NotebookPage(NotebookRun run, CodeView view) {
    this.run = run;
    this.view = view;
    this.prose = new PageProse(Path.of(run.notebook().name()).toAbsolutePath().getParent());
    this.outputs = new PageOutputs(prose);
  }

  String html() {
    var parts = new ArrayList<String>();
    for (var cell : run.cells()) {
      if (cell.content() == Content.MARKDOWN) {
        parts.add("<section class=\"prose\">\n" + prose.html(cell) + "</section>\n");
      } else if (cell.content() == Content.CODE) {
        parts.add(run.outcome(cell).map(this::step).orElseGet(() -> notRun(cell)));
      }
    }
    var titled = !parts.isEmpty() && parts.get(0).contains("<h1");
    if (titled) {
      splitBeforeSecondHeading(parts);
    }
    parts.add(titled ? 1 : 0, contents());
    parts.add(0, warning());
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

  /** The contents stand behind the introduction, also when a whole text is in the first cell. */
  private static void splitBeforeSecondHeading(List<String> parts) {
    var first = parts.get(0);
    var second = LATER_HEADING.matcher(first);
    if (second.find(first.indexOf("<h1") + 1)) {
      parts.set(0, first.substring(0, second.start()) + "</section>\n");
      parts.add(1, "<section class=\"prose\">\n" + first.substring(second.start()));
    }
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
        + ".ipynb</code> from its first cell "
        + (run.cells().stream().anyMatch(this::wasLeftOut) ? "on" : "to its last")
        + ".</p></footer>\n";
  }

  /** A page of a run that did not go well says so before anything else. */
  private String warning() {
    if (run.failed().isEmpty()) {
      return "";
    }
    var failed = FailedCell.of(run.failed().get());
    var rest = run.cells().stream().filter(this::wasLeftOut).count();
    return "<p class=\"warning\" role=\"alert\"><strong>This run "
        + (rest > 0 ? "ended at " : "went on after an error at ")
        + "<a href=\"#"
        + FAILURE
        + "\">"
        + HtmlText.escape(failed.place())
        + "</a></strong>: "
        + HtmlText.escape(failed.sentence().lines().findFirst().orElse(""))
        + notRun(rest)
        + "</p>\n";
  }

  private static String notRun(long cells) {
    return cells == 0
        ? "."
        : cells == 1
            ? ". One cell after it was not run."
            : ". " + cells + " cells after it were not run.";
  }

  private boolean wasLeftOut(NotebookCell cell) {
    return cell.content() == Content.CODE && run.outcome(cell).isEmpty();
  }

  private String notRun(NotebookCell cell) {
    return "<section class=\"step not-run\">\n"
        + folded("Java, not run", cell.source(), view == CodeView.SHOWN)
        + "</section>\n";
  }

  private String step(CellOutcome outcome) {
    var isFirstFailure =
        run.failed().filter(failed -> failed.number() == outcome.number()).isPresent();
    var html =
        new StringBuilder("<section class=\"")
            .append(outcome.cell().tags().contains(OWN_PAGE) ? "step own-page" : "step")
            .append('"')
            .append(isFirstFailure ? " id=\"" + FAILURE + "\"" : "")
            .append(">\n")
            .append(code(outcome));
    outcome.outputs().forEach(output -> html.append(outputs.html(output)));
    var value = outcome.result().value();
    if (value.present()) {
      html.append(outputs.html(value.shown()));
    }
    outcome.result().failure().ifPresent(failure -> html.append(PageOutputs.html(failure)));
    return html.append("</section>\n").toString();
  }

  private String code(CellOutcome outcome) {
    var given = outcome.cell().tags().contains(InjectedParameters.INJECTED);
    return folded(
        given ? "Values given for this page" : "Java, cell " + outcome.number(),
        outcome.cell().source(),
        given || view == CodeView.SHOWN || outcome.stopsRun());
  }

  private static String folded(String title, String code, boolean open) {
    return "<details class=\"code\""
        + (open ? " open" : "")
        + "><summary>"
        + title
        + "</summary>\n<pre><code>"
        + HtmlText.escape(code.strip())
        + "</code></pre>\n</details>\n";
  }
}
