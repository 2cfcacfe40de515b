package agro.programme.bulletin;

import java.text.Normalizer;

/**
 * Text in the basic alphabet of short messages (3GPP TS 23.038, 7 bits), in which 160 characters
 * fit into one message. Characters outside of it would halve the room.
 */
final class GsmText {

  /** Letters and signs of the basic alphabet that this page may need; one place each. */
  private static final String OTHERS = "@£$¥èéùìòÇØøÅå_ÆæßÉ !\"#%&'()*+,-./:;<=>?¡ÄÖÑÜ§¿äöñüà";

  private GsmText() {}

  /** The text with other characters replaced by the nearest ones of the alphabet. */
  static String of(String text) {
    var safe = new StringBuilder();
    text.codePoints().forEach(point -> append(safe, point));
    return safe.toString().replaceAll(" {2,}", " ").strip();
  }

  private static void append(StringBuilder safe, int point) {
    if (isBasic(point)) {
      safe.appendCodePoint(point);
      return;
    }
    switch (point) {
      case '\u2013', '\u2014', '\u2212', '\u2010', '\u2011' -> safe.append('-');
      case '\u2018', '\u2019', '`' -> safe.append('\'');
      case '\u201c', '\u201d', '\u201e' -> safe.append('"');
      case '[', '{' -> safe.append('(');
      case ']', '}' -> safe.append(')');
      case '\\', '|' -> safe.append('/');
      default -> fallback(safe, point);
    }
  }

  private static void fallback(StringBuilder safe, int point) {
    if (Character.isWhitespace(point) || Character.isSpaceChar(point)) {
      safe.append(' ');
      return;
    }
    if (Character.isISOControl(point)) {
      return;
    }
    var plain = Normalizer.normalize(Character.toString(point), Normalizer.Form.NFKD);
    int before = safe.length();
    plain.codePoints().filter(GsmText::isBasic).forEach(safe::appendCodePoint);
    if (safe.length() == before) {
      safe.append('?');
    }
  }

  /** Whether a character takes one place of a message. */
  static boolean isBasic(int point) {
    return (point >= 'a' && point <= 'z')
        || (point >= 'A' && point <= 'Z')
        || (point >= '0' && point <= '9')
        || OTHERS.indexOf(point) >= 0;
  }
}
