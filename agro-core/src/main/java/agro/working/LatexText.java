package agro.working;

import java.util.Map;

/** Text made safe for LaTeX, free of packages beyond {@code textcomp}. */
final class LatexText {

  private static final Map<Character, String> REPLACEMENTS =
      Map.ofEntries(
          Map.entry('\\', "\\textbackslash{}"),
          Map.entry('{', "\\{"),
          Map.entry('}', "\\}"),
          Map.entry('#', "\\#"),
          Map.entry('$', "\\$"),
          Map.entry('%', "\\%"),
          Map.entry('&', "\\&"),
          Map.entry('_', "\\_"),
          Map.entry('^', "\\textasciicircum{}"),
          Map.entry('~', "\\textasciitilde{}"),
          Map.entry('<', "\\textless{}"),
          Map.entry('>', "\\textgreater{}"),
          Map.entry('|', "\\textbar{}"),
          // The command for this sign needs another font encoding than LaTeX starts with.
          Map.entry('"', "\\char34{}"),
          Map.entry('\uFFFD', "?"),
          Map.entry('°', "\\textdegree{}"),
          Map.entry('·', "\\textperiodcentered{}"),
          Map.entry('×', "\\texttimes{}"),
          Map.entry('÷', "\\textdiv{}"),
          Map.entry('±', "\\textpm{}"),
          Map.entry('µ', "\\textmu{}"),
          Map.entry('½', "\\textonehalf{}"),
          Map.entry('²', "\\texttwosuperior{}"),
          Map.entry('³', "\\textthreesuperior{}"),
          Map.entry('−', "\\ensuremath{-}"),
          Map.entry('≤', "\\ensuremath{\\leq}"),
          Map.entry('≥', "\\ensuremath{\\geq}"),
          Map.entry('≈', "\\ensuremath{\\approx}"),
          Map.entry('≠', "\\ensuremath{\\neq}"),
          Map.entry('√', "\\ensuremath{\\surd}"),
          Map.entry('∑', "\\ensuremath{\\sum}"),
          Map.entry('∫', "\\ensuremath{\\int}"),
          Map.entry('∞', "\\ensuremath{\\infty}"),
          Map.entry('→', "\\ensuremath{\\rightarrow}"),
          Map.entry('Δ', "\\ensuremath{\\Delta}"),
          Map.entry('Σ', "\\ensuremath{\\Sigma}"),
          Map.entry('Φ', "\\ensuremath{\\Phi}"),
          Map.entry('α', "\\ensuremath{\\alpha}"),
          Map.entry('β', "\\ensuremath{\\beta}"),
          Map.entry('θ', "\\ensuremath{\\theta}"),
          Map.entry('λ', "\\ensuremath{\\lambda}"),
          Map.entry('μ', "\\ensuremath{\\mu}"),
          Map.entry('π', "\\ensuremath{\\pi}"),
          Map.entry('σ', "\\ensuremath{\\sigma}"),
          Map.entry('φ', "\\ensuremath{\\varphi}"),
          Map.entry('ω', "\\ensuremath{\\omega}"));

  private LatexText() {}

  /**
   * Escapes text so that LaTeX prints it as it is, on one line.
   *
   * @param text any text
   * @return the escaped text
   */
  static String escape(String text) {
    var escaped = new StringBuilder(text.length() + 16);
    for (char c : PlainText.oneLine(text).toCharArray()) {
      var replacement = REPLACEMENTS.get(c);
      if (replacement == null) {
        escaped.append(c);
      } else {
        escaped.append(replacement);
      }
    }
    return escaped.toString();
  }
}
