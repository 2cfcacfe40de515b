package agro.notebook.display;

import agro.working.Presentable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;

/** Several figures, pictures or results one below the other. */
final class RichItems {

  private static final int MOST = 20;

  private RichItems() {}

  /**
   * Values one below the other when each of them has a form of its own beside plain text.
   *
   * @param sample any values
   * @param text their plain text, for values that have none of their own
   * @return HTML and plain text, or plain text alone
   */
  static MimeBundle of(Sample sample, String text) {
    var forms = new ArrayList<String>();
    var words = new ArrayList<String>();
    for (var value : sample.first().subList(0, Math.min(MOST, sample.first().size()))) {
      if (holdsOthers(value) || !Renderers.standard().know(value)) {
        return MimeBundle.text(text);
      }
      var bundle = Renderers.standard().render(value);
      var html = bundle.get(MimeBundle.HTML);
      if (html.isEmpty()) {
        return MimeBundle.text(text);
      }
      forms.add("<li>\n" + html.get() + "\n</li>\n");
      words.add(bundle.plainText());
    }
    if (forms.isEmpty()) {
      return MimeBundle.text(text);
    }
    var note =
        forms.size() == sample.all().size() && sample.complete()
            ? ""
            : "<p class=\"agro-note\">The first "
                + forms.size()
                + " of "
                + sample.size()
                + " values</p>\n";
    return MimeBundle.of(
            MimeBundle.HTML,
            "<ol class=\"agro-items\">\n" + String.join("", forms) + "</ol>\n" + note)
        .with(MimeBundle.TEXT, String.join("\n", words));
  }

  /** Values that may hold themselves would never be shown to their end. */
  private static boolean holdsOthers(Object value) {
    return value instanceof Collection<?>
        || value instanceof Map<?, ?>
        || value instanceof Object[]
        || value instanceof Optional<?>
        || (value instanceof Record && !(value instanceof Presentable));
  }
}
