package agro.stats.linear;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The order in which a reader expects labels: numbers in them by their value, so that plot 2 comes
 * before plot 10 and 0.25 L before 0.5 L, and the rest character by character. The order never
 * depends on a locale.
 */
enum LabelOrder implements Comparator<String> {
  NATURAL;

  /** A number, or a character that belongs to none. */
  private record Token(BigDecimal number, char letter) implements Comparable<Token> {
    @Override
    public int compareTo(Token other) {
      if (number == null || other.number == null) {
        int numbersFirst = Boolean.compare(number == null, other.number == null);
        return numbersFirst != 0 ? numbersFirst : Character.compare(letter, other.letter);
      }
      return number.compareTo(other.number);
    }
  }

  @Override
  public int compare(String one, String other) {
    var these = tokens(one);
    var those = tokens(other);
    for (int k = 0; k < Math.min(these.size(), those.size()); k++) {
      int byToken = these.get(k).compareTo(those.get(k));
      if (byToken != 0) {
        return byToken;
      }
    }
    int byLength = Integer.compare(these.size(), those.size());
    return byLength != 0 ? byLength : one.compareTo(other);
  }

  private static List<Token> tokens(String label) {
    var tokens = new ArrayList<Token>();
    int at = 0;
    while (at < label.length()) {
      char letter = label.charAt(at);
      boolean negative = at == 0 && letter == '-' && label.length() > 1 && isDigit(label, 1);
      if (negative || isDigit(label, at)) {
        int end = endOfNumber(label, negative ? 1 : at);
        tokens.add(new Token(new BigDecimal(label.substring(at, end).replace(',', '.')), '0'));
        at = end;
      } else {
        tokens.add(new Token(null, letter));
        at++;
      }
    }
    return tokens;
  }

  /** Digits, with a decimal part unless a third number follows as in 1.2.3. */
  private static int endOfNumber(String label, int from) {
    int whole = endOfDigits(label, from);
    if (!isPoint(label, whole) || isPoint(label, from - 1)) {
      return whole;
    }
    int decimals = endOfDigits(label, whole + 1);
    boolean isDecimal = decimals > whole + 1;
    boolean goesOn = isPoint(label, decimals) && isDigit(label, decimals + 1);
    return isDecimal && !goesOn ? decimals : whole;
  }

  private static int endOfDigits(String label, int from) {
    int end = from;
    while (isDigit(label, end)) {
      end++;
    }
    return end;
  }

  private static boolean isDigit(String label, int at) {
    return at < label.length() && label.charAt(at) >= '0' && label.charAt(at) <= '9';
  }

  private static boolean isPoint(String label, int at) {
    return at >= 0 && at < label.length() && (label.charAt(at) == '.' || label.charAt(at) == ',');
  }
}
