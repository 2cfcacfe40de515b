package agro.notebook.run;

import static agro.notebook.run.MathElement.leaf;
import static agro.notebook.run.MathElement.operator;
import static agro.notebook.run.MathElement.still;

import agro.working.HtmlText;
import java.util.ArrayList;
import java.util.Map;
import java.util.Optional;

/**
 * Turns the TeX of formulas into MathML. A command that is not known is shown as it was written;
 * whatever the text, the result is a whole element. The TeX stays with the formula as an
 * annotation.
 */
final class MathMarkup {

  /** Deeper than any formula that somebody could read. */
  private static final int MOST_LEVELS = 60;

  private static final String PRIMES = "′″‴⁗";
  private static final String BRACKETS = "()[]|/";

  private static final Map<String, String> SIGNS = Map.of("-", "−", "*", "∗", "~", "\u00a0");

  private final TexReader reader;
  private final boolean display;
  private final MathStructures structures;
  private int level;

  private MathMarkup(String tex, boolean display) {
    this.reader = new TexReader(tex);
    this.display = display;
    this.structures = new MathStructures(this, reader);
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

  /** The MathML of a part of a formula that was taken out as text. */
  String part(String tex) {
    if (level >= MOST_LEVELS) {
      return leaf("mtext", tex);
    }
    var inner = new MathMarkup(tex, display);
    inner.level = level + 1;
    return inner.whole();
  }

  private String whole() {
    var parts = new ArrayList<String>();
    while (!reader.atEnd()) {
      parts.add(lines());
      // What has no partner is shown, not lost.
      if (!reader.atEnd()) {
        parts.add(operator(reader.isNext("\\") ? "\\" + reader.command() : reader.sign()));
      }
    }
    return parts.size() == 1 ? parts.get(0) : MathElement.row(parts);
  }

  /** A row, or several when the formula is broken over lines without saying how. */
  private String lines() {
    var first = row();
    if (!reader.isNext("\\\\") && reader.peek() != '&') {
      return first;
    }
    return MathTables.plain(first, this, reader);
  }

  /** Everything up to a closing bracket, a cell border, a line break or the end. */
  String row() {
    var parts = new ArrayList<String>();
    while (!atEndOfRow()) {
      parts.add(scripted());
    }
    return MathElement.row(parts);
  }

  boolean atEndOfRow() {
    reader.skipSpaces();
    return reader.atEnd()
        || reader.peek() == '}'
        || reader.peek() == '&'
        || reader.isNext("\\\\")
        || reader.isCommandNext("cr")
        || reader.isCommandNext("right")
        || reader.isCommandNext("middle")
        || reader.isCommandNext("end");
  }

  private String scripted() {
    var isBrace = reader.isCommandNext("underbrace") || reader.isCommandNext("overbrace");
    var bounded = isBrace || (display && hasBounds());
    var isFunction = isFunctionNext();
    var base = atom();
    reader.skipSpaces();
    if (reader.skipCommand("limits")) {
      bounded = true;
    } else if (reader.skipCommand("nolimits")) {
      bounded = false;
    }
    var whole = withScripts(base, bounded);
    return isFunction && !isBracketNext() ? whole + MathElement.space("0.17em") : whole;
  }

  private boolean isFunctionNext() {
    return reader.peek() == '\\'
        && (reader.isCommandNext("operatorname")
            || MathSymbols.FUNCTIONS.stream().anyMatch(reader::isCommandNext));
  }

  /** Before a bracket, and before nothing, a function needs no space. */
  private boolean isBracketNext() {
    return atEndOfRow()
        || "([,;=+-".indexOf(reader.peek()) >= 0
        || reader.isCommandNext("left")
        || reader.isCommandNext("big");
  }

  private boolean hasBounds() {
    return MathSymbols.WITH_BOUNDS.stream().anyMatch(reader::isCommandNext)
        || reader.isNext("\\operatorname*");
  }

  private String withScripts(String base, boolean bounded) {
    Optional<String> below = Optional.empty();
    var above = new ArrayList<String>();
    for (reader.skipSpaces(); isScript(); reader.skipSpaces()) {
      if (reader.skip("_")) {
        below = Optional.of(argument());
      } else if (reader.peek() == '\'') {
        above.add(operator(primes()));
      } else {
        reader.skip("^");
        above.add(argument());
      }
    }
    if (above.isEmpty()) {
      return below
          .map(script -> MathElement.of(bounded ? "munder" : "msub", base, script))
          .orElse(base);
    }
    var over = above.size() == 1 ? above.get(0) : MathElement.row(above);
    return below
        .map(script -> MathElement.of(bounded ? "munderover" : "msubsup", base, script, over))
        .orElseGet(() -> MathElement.of(bounded ? "mover" : "msup", base, over));
  }

  private String primes() {
    var count = 0;
    while (reader.skip("'")) {
      count++;
    }
    return count <= PRIMES.length() ? PRIMES.substring(count - 1, count) : "′".repeat(count);
  }

  private boolean isScript() {
    return reader.peek() == '_' || reader.peek() == '^' || reader.peek() == '\'';
  }

  /** What a command or a script applies to: a group, a command, or one sign. */
  String argument() {
    reader.skipSpaces();
    if (reader.atEnd() || atEndOfRow()) {
      return "<mrow></mrow>";
    }
    return Character.isDigit(reader.peek()) ? leaf("mn", reader.sign()) : atom();
  }

  private String atom() {
    if (++level > MOST_LEVELS) {
      return leaf("mtext", reader.rest());
    }
    var atom = shallowAtom();
    level--;
    return atom;
  }

  private String shallowAtom() {
    if (reader.peek() == '\\') {
      return structures.command();
    }
    if (reader.skip("{")) {
      var inside = row();
      reader.skip("}");
      return inside;
    }
    if (Character.isDigit(reader.peek())) {
      return leaf("mn", reader.digits());
    }
    if (isScript()) {
      return "<mrow></mrow>";
    }
    return sign(reader.sign());
  }

  private static String sign(String sign) {
    if (sign.equals("°") || Character.isLetter(sign.codePointAt(0))) {
      return leaf("mi", sign);
    }
    return BRACKETS.contains(sign) ? still(sign) : operator(SIGNS.getOrDefault(sign, sign));
  }
}
