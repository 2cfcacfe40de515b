package agro.notebook.insight;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Text that is written once and read twice: as HTML of a few harmless tags, all of them closed, and
 * as plain text with the same paragraphs and lists.
 */
final class DocMarkup {

  private static final Set<String> TAGS =
      Set.of(
          "b",
          "blockquote",
          "br",
          "caption",
          "code",
          "dd",
          "dl",
          "dt",
          "em",
          "h4",
          "hr",
          "i",
          "li",
          "ol",
          "p",
          "pre",
          "small",
          "strong",
          "sub",
          "sup",
          "table",
          "tbody",
          "td",
          "th",
          "thead",
          "tr",
          "ul",
          "var");
  private static final Set<String> WITHOUT_END = Set.of("br", "hr");
  private static final Set<String> APART = Set.of("p", "h4", "table", "blockquote", "hr", "pre");
  private static final Set<String> LISTS = Set.of("ul", "ol", "dl");
  private static final Map<String, String> ALIKE =
      Map.of(
          "tt", "code", "kbd", "code", "samp", "code", "h1", "h4", "h2", "h4", "h3", "h4", "h5",
          "h4", "h6", "h4", "cite", "em");
  private static final Map<String, String> ENTITIES =
      Map.ofEntries(
          Map.entry("lt", "<"),
          Map.entry("gt", ">"),
          Map.entry("amp", "&"),
          Map.entry("quot", "\""),
          Map.entry("apos", "'"),
          Map.entry("nbsp", " "),
          Map.entry("le", "\u2264"),
          Map.entry("ge", "\u2265"),
          Map.entry("ne", "\u2260"),
          Map.entry("times", "\u00d7"),
          Map.entry("deg", "\u00b0"),
          Map.entry("plusmn", "\u00b1"),
          Map.entry("middot", "\u00b7"),
          Map.entry("minus", "\u2212"),
          Map.entry("ndash", "\u2013"),
          Map.entry("mdash", "\u2014"),
          Map.entry("hellip", "\u2026"),
          Map.entry("pi", "\u03c0"),
          Map.entry("micro", "\u00b5"),
          Map.entry("infin", "\u221e"),
          Map.entry("radic", "\u221a"),
          Map.entry("rsquo", "\u2019"),
          Map.entry("lsquo", "\u2018"),
          Map.entry("ldquo", "\u201c"),
          Map.entry("rdquo", "\u201d"),
          Map.entry("copy", "\u00a9"),
          Map.entry("sup2", "\u00b2"));

  private final StringBuilder html = new StringBuilder();
  private final StringBuilder plain = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Adds running text; line breaks in it mean nothing unless it stands in a {@code pre}.
   *
   * @param text plain text
   */
  void text(String text) {
    html.append(escaped(text));
    if (open.contains("pre")) {
      plain.append(text);
      return;
    }
    var words = text.replaceAll("\\s+", " ");
    plain.append(endsBlank() ? words.stripLeading() : words);
  }

  private boolean endsBlank() {
    return plain.length() == 0 || Character.isWhitespace(plain.charAt(plain.length() - 1));
  }

  /**
   * Adds code.
   *
   * @param code plain text
   */
  void code(String code) {
    html.append("<code>").append(escaped(code)).append("</code>");
    plain.append(open.contains("pre") ? code : code.replaceAll("\\s+", " "));
  }

  /**
   * Adds a character by the name that HTML has for it.
   *
   * @param name the name without ampersand and semicolon
   */
  void entity(String name) {
    var known = ENTITIES.get(name);
    if (known == null && name.matches("#(\\d{1,6}|[xX][0-9a-fA-F]{1,5})")) {
      var hexadecimal = Character.toLowerCase(name.charAt(1)) == 'x';
      var number = Integer.parseInt(name.substring(hexadecimal ? 2 : 1), hexadecimal ? 16 : 10);
      known = Character.isValidCodePoint(number) ? Character.toString(number) : null;
    }
    var text = known == null ? "&" + name + ";" : known;
    html.append(escaped(text));
    plain.append(text);
  }

  /**
   * Opens a tag; one that is not known to be harmless is left out, its content stays.
   *
   * @param written the name of the tag
   */
  void open(String written) {
    var tag = nameOf(written);
    if (!TAGS.contains(tag)) {
      return;
    }
    closeWhatEndsBefore(tag);
    html.append('<').append(tag).append('>');
    if (!WITHOUT_END.contains(tag)) {
      open.push(tag);
    }
    if (APART.contains(tag)) {
      paragraph();
    } else if (Set.of("br", "tr", "dt", "dd").contains(tag)) {
      line("");
    } else if (tag.equals("li")) {
      line("- ");
    } else if (tag.equals("td") || tag.equals("th")) {
      plain.append(endsBlank() ? "" : "  ");
    }
  }

  private void closeWhatEndsBefore(String tag) {
    var inItem = tag.equals("li") || tag.equals("dt") || tag.equals("dd");
    if (inItem) {
      for (var outer : open) {
        if (LISTS.contains(outer)) {
          break;
        }
        if (outer.equals("li") || outer.equals("dt") || outer.equals("dd")) {
          close(outer);
          break;
        }
      }
    } else if (Set.of("p", "ul", "ol", "dl", "pre", "table", "h4", "blockquote").contains(tag)
        && "p".equals(open.peek())) {
      close("p");
    }
  }

  /**
   * Closes a tag and what was opened in it; does nothing when it is not open.
   *
   * @param written the name of the tag
   */
  void close(String written) {
    var tag = nameOf(written);
    if (!open.contains(tag)) {
      return;
    }
    String last;
    do {
      last = open.pop();
      html.append("</").append(last).append('>');
    } while (!last.equals(tag));
    if (Set.of("ul", "ol", "dl", "pre", "table", "p", "h4", "blockquote").contains(tag)) {
      paragraph();
    }
  }

  private static String nameOf(String written) {
    var name = written.toLowerCase(Locale.ROOT);
    return ALIKE.getOrDefault(name, name);
  }

  /** Begins a paragraph of the plain text. */
  private void paragraph() {
    strip();
    if (plain.length() > 0) {
      plain.append("\n\n");
    }
  }

  private void line(String mark) {
    strip();
    plain.append(plain.length() > 0 ? "\n" : "").append(mark);
  }

  private void strip() {
    while (plain.length() > 0 && Character.isWhitespace(plain.charAt(plain.length() - 1))) {
      plain.setLength(plain.length() - 1);
    }
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** Closes everything that is open. */
  void finish() {
    while (!open.isEmpty()) {
      close(open.peek());
    }
    strip();
  }

  String html() {
    return html.toString();
  }

  String plain() {
    return plain.toString();
  }
}
