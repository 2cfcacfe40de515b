package agro.trial;

import java.util.Comparator;

/** The order in which a person sorts names of plots and blocks: plot 2 before plot 10. */
public final class NaturalOrder {

  private NaturalOrder() {}

  /**
   * Compares texts with their runs of digits taken as numbers.
   *
   * @return a total order that agrees with equals
   */
  public static Comparator<String> ofNames() {
    return NaturalOrder::compare;
  }

  private static int compare(String a, String b) {
    int i = 0;
    int j = 0;
    while (i < a.length() && j < b.length()) {
      int endA = endOfPart(a, i);
      int endB = endOfPart(b, j);
      int order = compareParts(a.substring(i, endA), b.substring(j, endB));
      if (order != 0) {
        return order;
      }
      i = endA;
      j = endB;
    }
    int rest = Integer.compare(a.length() - i, b.length() - j);
    return rest != 0 ? rest : a.compareTo(b);
  }

  private static int compareParts(String a, String b) {
    if (!digit(a.charAt(0)) || !digit(b.charAt(0))) {
      return a.compareTo(b);
    }
    var one = a.replaceFirst("^0+(?=.)", "");
    var other = b.replaceFirst("^0+(?=.)", "");
    int length = Integer.compare(one.length(), other.length());
    return length != 0 ? length : one.compareTo(other);
  }

  private static int endOfPart(String text, int start) {
    int end = start + 1;
    while (end < text.length() && digit(text.charAt(start)) && digit(text.charAt(end))) {
      end++;
    }
    return end;
  }

  private static boolean digit(char c) {
    return c >= '0' && c <= '9';
  }
}
