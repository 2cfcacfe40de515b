package agro.notebook.display;

import java.util.List;

/** Values in the formats that a reader asks for. */
final class ChosenFormats {

  private ChosenFormats() {}

  static MimeBundle of(Object value, String... types) {
    try {
      var wanted = List.of(types).stream().filter(type -> !type.equals(MimeBundle.TEXT)).toList();
      if (value instanceof byte[] file && !wanted.isEmpty()) {
        return withText(MimeBundle.EMPTY.withBytes(wanted.get(0), file), "(" + wanted.get(0) + ")");
      }
      if (value instanceof CharSequence content) {
        return raw(content.toString(), wanted);
      }
      return Renderers.standard().render(value).only(types);
    } catch (Throwable trouble) {
      return MimeBundle.text(PlainText.trouble(value == null ? "null" : value, trouble));
    }
  }

  private static MimeBundle raw(String content, List<String> types) {
    var bundle = MimeBundle.EMPTY;
    for (var type : types) {
      bundle = type.endsWith("/*") ? bundle : bundle.with(type, content);
    }
    return withText(
        bundle, bundle.get(MimeBundle.HTML).isPresent() ? Markup.words(content) : content);
  }

  private static MimeBundle withText(MimeBundle bundle, String text) {
    return bundle.with(MimeBundle.TEXT, text);
  }
}
