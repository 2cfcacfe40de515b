package agro.notebook.display;

import agro.working.HtmlText;
import java.util.Locale;

/**
 * How far a work has come.
 *
 * @param what the part of the work
 * @param done steps done
 * @param total steps in all; 0 when nobody knows
 * @param seconds how long this part has taken so far
 */
record ProgressState(String what, long done, long total, double seconds) {

  private static final double MINUTE = 60;
  private static final double HOUR = 3_600;

  /** One line: steps, share, rate and time left, as far as they can be told. */
  String line() {
    return what + ": " + numbers();
  }

  private String numbers() {
    var line = new StringBuilder();
    if (total > 0) {
      line.append(done).append(" of ").append(total).append(", ").append(percent()).append(" %");
    } else {
      line.append(done).append(" so far");
    }
    if (done > 0 && seconds > 0) {
      line.append(", ").append(rate());
      if (total > done) {
        line.append(", ").append(time((total - done) * seconds / done)).append(" left");
      }
    }
    return line.toString();
  }

  private long percent() {
    return (long) Math.floor(100.0 * done / total);
  }

  /** What remains to be said at the end. */
  String summary() {
    return what
        + ": "
        + (total > 0 && done < total ? done + " of " + total : String.valueOf(done))
        + " in "
        + time(seconds);
  }

  /** What remains to be said when the work was stopped. */
  String stopped() {
    return what
        + ": stopped at "
        + (total > 0 ? done + " of " + total : String.valueOf(done))
        + " after "
        + time(seconds);
  }

  private String rate() {
    var perSecond = done / seconds;
    if (perSecond >= 1) {
      return rounded(perSecond) + " per second";
    }
    return perSecond * MINUTE >= 1
        ? rounded(perSecond * MINUTE) + " per minute"
        : rounded(perSecond * HOUR) + " per hour";
  }

  private static String rounded(double number) {
    return String.format(Locale.ROOT, number < 10 ? "%.1f" : "%.0f", number);
  }

  static String time(double seconds) {
    if (seconds < MINUTE) {
      return rounded(seconds) + " s";
    }
    var whole = Math.round(seconds);
    return whole < HOUR
        ? whole / 60 + " min " + whole % 60 + " s"
        : whole / 3_600 + " h " + whole % 3_600 / 60 + " min";
  }

  /** The bar with its line beside it; a page without bars shows the line alone. */
  MimeBundle bundle() {
    var value = total > 0 ? " max=\"" + total + "\" value=\"" + Math.min(done, total) + "\"" : "";
    var html =
        "<div class=\"agro-progress\"><label>"
            + HtmlText.escape(what)
            + " <progress"
            + value
            + ">"
            + (total > 0 ? percent() + " %" : "")
            + "</progress></label> <span>"
            + HtmlText.escape(numbers())
            + "</span></div>";
    return MimeBundle.of(MimeBundle.HTML, html).with(MimeBundle.TEXT, line());
  }
}
