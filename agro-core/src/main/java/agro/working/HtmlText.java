package agro.working;

/** Text made safe for HTML. */
public final class HtmlText {

  private HtmlText() {}

  /**
   * Escapes text for use between tags and inside quoted attribute values. Control characters that
   * HTML does not allow become the replacement character U+FFFD.
   *
   * @param text any text
   * @return the text with {@code & < > " '} as character references
   */
  public static String escape(String text) {
    var escaped = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> escaped.append("&amp;");
        case '<' -> escaped.append("&lt;");
        case '>' -> escaped.append("&gt;");
        case '"' -> escaped.append("&quot;");
        case '\'' -> escaped.append("&#39;");
        case '\t', '\n', '\r' -> escaped.append(c);
        default -> escaped.append(Character.isISOControl(c) ? '\uFFFD' : c);
      }
    }
    return escaped.toString();
  }

  /**
   * An element that holds text alone.
   *
   * @param tag name of the element
   * @param text text that is escaped
   * @return the element
   */
  static String element(String tag, String text) {
    return "<" + tag + ">" + escape(text) + "</" + tag + ">";
  }

  /**
   * An element with a class that holds text alone.
   *
   * @param tag name of the element
   * @param cssClass class name
   * @param text text that is escaped
   * @return the element
   */
  static String element(String tag, String cssClass, String text) {
    return "<" + tag + " class=\"" + cssClass + "\">" + escape(text) + "</" + tag + ">";
  }
}
