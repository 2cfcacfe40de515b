package agro.notebook.run;

import agro.working.HtmlText;
import java.util.ArrayList;
import java.util.List;

/**
 * Turns the TeX of simple formulas into MathML: letters, numbers, fractions, roots, indices, sums,
 * functions, words, accents, brackets that grow, and cases. A name that is not known is shown as a
 * word. The TeX stays with the formula as an annotation.
 */
final class MathMarkup {

  private static final String CELL = "<mtd style=\"text-align:left\">";

  private final String tex;
  private final boolean display;
  private int at;

  private MathMarkup(String tex, boolean display) {
    this.tex = tex;
    this.display = display;
  }

  /**
   * A formula.
   *
   * @param tex its TeX without the dollars
   * @param display whether it stands on a line of its own
   * @return a math element
   */
  static String of(String tex, boolean display) {
    return "<math"
        + (display ? " display=\"block\"" : "")
        + "><semantics>"
        + new MathMarkup(tex, display).whole()
        + "<annotation encoding=\"application/x-tex\">"
        + HtmlText.escape(tex)
        + "</annotation></semantics></math>";
  }

  private String whole() {
    var parts = new ArrayList<String>();
    while (at < tex.length()) {
      parts.add(row());
      // A bracket without a partner is shown, not lost.
      if (at < tex.length()) {
        parts.add(operator(tex.substring(at, ++at)));
      }
    }
    return row(parts);
  }

  /** Everything up to a closing bracket, a cell border, a line break or the end. */
  private String row() {
    var parts = new ArrayList<String>();
    while (!atEndOfRow()) {
      parts.add(scripted());
    }
    return row(parts);
  }

  private static String row(List<String> parts) {
    return "<mrow>" + String.join("", parts) + "</mrow>";
  }

  private boolean atEndOfRow() {
    skipSpaces();
    return at >= tex.length()
        || tex.charAt(at) == '}'
        || tex.charAt(at) == '&'
        || tex.startsWith("\\\\", at)
        || (tex.startsWith("\\right", at) && !tex.startsWith("\\rightarrow", at))
        || tex.startsWith("\\end", at);
  }

  private void skipSpaces() {
    while (at < tex.length() && Character.isWhitespace(tex.charAt(at))) {
      at++;
    }
  }

  private String scripted() {
    var start = at;
    var base = atom();
    var bounds = display && MathSymbols.WITH_BOUNDS.contains(name(tex.substring(start, at)));
    String below = null;
    String above = null;
    skipSpaces();
    while (at < tex.length() && (tex.charAt(at) == '_' || tex.charAt(at) == '^')) {
      var isBelow = tex.charAt(at++) == '_';
      var script = argument();
      below = isBelow ? script : below;
      above = isBelow ? above : script;
      skipSpaces();
    }
    if (below != null && above != null) {
      return element(bounds ? "munderover" : "msubsup", base, below, above);
    }
    if (below != null) {
      return element(bounds ? "munder" : "msub", base, below);
    }
    return above == null ? base : element(bounds ? "mover" : "msup", base, above);
  }

  private static String name(String command) {
    return command.startsWith("\\") ? command.substring(1).strip() : "";
  }

  private static String element(String tag, String... parts) {
    return "<" + tag + ">" + String.join("", parts) + "</" + tag + ">";
  }

  private static String leaf(String tag, String text) {
    return "<" + tag + ">" + HtmlText.escape(text) + "</" + tag + ">";
  }

  private static String operator(String sign) {
    return leaf("mo", sign);
  }

  private String argument() {
    skipSpaces();
    return at < tex.length() ? atom() : "<mrow></mrow>";
  }

  private String atom() {
    var first = tex.codePointAt(at);
    if (first == '\\') {
      return command();
    }
    if (first == '{') {
      at++;
      var inside = row();
      closeBrace();
      return inside;
    }
    if (Character.isDigit(first)) {
      return number();
    }
    at += Character.charCount(first);
    var sign = Character.toString(first);
    if (Character.isLetter(first) || first == '°') {
      return leaf("mi", sign);
    }
    return operator(first == '-' ? "−" : first == '*' ? "∗" : first == '\'' ? "′" : sign);
  }

  private void closeBrace() {
    if (at < tex.length() && tex.charAt(at) == '}') {
      at++;
    }
  }

  private String number() {
    var start = at;
    while (at < tex.length()
        && (Character.isDigit(tex.charAt(at))
            || (tex.charAt(at) == '.'
                && at + 1 < tex.length()
                && Character.isDigit(tex.charAt(at + 1))))) {
      at++;
    }
    return leaf("mn", tex.substring(start, at));
  }

  private String command() {
    var name = commandName();
    if (MathSymbols.LETTERS.containsKey(name)) {
      return leaf("mi", MathSymbols.LETTERS.get(name));
    }
    if (MathSymbols.OPERATORS.containsKey(name)) {
      return operator(MathSymbols.OPERATORS.get(name));
    }
    if (MathSymbols.SPACES.containsKey(name)) {
      return "<mspace width=\"" + MathSymbols.SPACES.get(name) + "\"></mspace>";
    }
    if (MathSymbols.ACCENTS.containsKey(name)) {
      return element("mover", argument(), operator(MathSymbols.ACCENTS.get(name)));
    }
    if (MathSymbols.FUNCTIONS.contains(name)) {
      return leaf("mi", name) + "<mspace width=\"0.17em\"></mspace>";
    }
    return structure(name);
  }

  private String commandName() {
    at++;
    var start = at;
    while (at < tex.length() && Character.isLetter(tex.charAt(at))) {
      at++;
    }
    if (at == start && at < tex.length()) {
      at++;
    }
    return tex.substring(start, at);
  }

  private String structure(String name) {
    return switch (name) {
      case "frac", "dfrac", "tfrac" -> element("mfrac", argument(), argument());
      case "sqrt" -> element("msqrt", argument());
      case "text", "mathrm", "textrm", "operatorname" -> leaf("mtext", words());
      case "left" -> grown();
      case "begin" -> cases();
      default -> leaf("mtext", name);
    };
  }

  private String words() {
    skipSpaces();
    if (at >= tex.length() || tex.charAt(at) != '{') {
      return "";
    }
    var end = tex.indexOf('}', at);
    var text = tex.substring(at + 1, end < 0 ? tex.length() : end);
    at = end < 0 ? tex.length() : end + 1;
    return text.replace(' ', '\u00a0');
  }

  private String grown() {
    var open = bracket();
    var inside = row();
    var close = "";
    if (tex.startsWith("\\right", at)) {
      at += "\\right".length();
      close = bracket();
    }
    return element("mrow", operator(open), inside, operator(close));
  }

  private String bracket() {
    skipSpaces();
    if (at >= tex.length()) {
      return "";
    }
    if (tex.charAt(at) == '\\') {
      var name = commandName();
      return MathSymbols.OPERATORS.getOrDefault(name, name);
    }
    var sign = tex.substring(at, ++at);
    return sign.equals(".") ? "" : sign;
  }

  private String cases() {
    var kind = words();
    var rows = new StringBuilder();
    do {
      rows.append("<mtr>").append(CELL).append(row()).append("</mtd>");
      while (at < tex.length() && tex.charAt(at) == '&') {
        at++;
        rows.append(CELL).append(row()).append("</mtd>");
      }
      rows.append("</mtr>");
    } while (nextLine());
    if (tex.startsWith("\\end", at)) {
      at += "\\end".length();
      words();
    }
    var table = "<mtable>" + rows + "</mtable>";
    return element("mrow", kind.equals("cases") ? operator("{") : "", table);
  }

  private boolean nextLine() {
    skipSpaces();
    if (!tex.startsWith("\\\\", at)) {
      return false;
    }
    at += 2;
    return !atEndOfRow();
  }
}
