package agro.notebook.page;

import agro.working.HtmlText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The page of a trial as a document, and as a part of another page. */
final class TrialDocument {

  /** Nothing is loaded and nothing is run, whatever stands in the data. */
  private static final String POLICY =
      "default-src 'none'; img-src data:; style-src 'unsafe-inline'";

  private TrialDocument() {}

  static String of(TrialParts parts) {
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\""
        + POLICY
        + "\">\n<title>"
        + HtmlText.escape(parts.title())
        + "</title>\n"
        + style()
        + "</head>\n<body>\n"
        + body(parts)
        + "</body>\n</html>\n";
  }

  static String fragment(TrialParts parts) {
    return style() + body(parts);
  }

  private static String body(TrialParts parts) {
    return "<article class=\"trial-page\">\n"
        + new FrontSheet(parts).html()
        + new TrialAnnex(parts).html()
        + "</article>\n";
  }

  private static String style() {
    try (var css = TrialDocument.class.getResourceAsStream("trial.css")) {
      return "<style>\n" + new String(css.readAllBytes(), StandardCharsets.UTF_8) + "</style>\n";
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the style of pages could not be read", unreadable);
    }
  }
}
