package agro.units;

import java.util.List;
import java.util.Locale;

/** A text and the place up to which it has been read. */
final class TextCursor {

  private final String text;
  private int at;

  TextCursor(String text) {
    this.text = text;
  }

  String text() {
    return text;
  }

  int at() {
    return at;
  }

  void moveTo(int position) {
    at = position;
  }

  boolean atEnd() {
    return at >= text.length();
  }

  /** The character at a distance from here, or 0 outside the text. */
  char peek(int distance) {
    int index = at + distance;
    return index >= 0 && index < text.length() ? text.charAt(index) : 0;
  }

  char peek() {
    return peek(0);
  }

  void skip(int count) {
    at += count;
  }

  void skipSpaces() {
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
  }

  /** Steps over a word and the spaces behind it if it stands here as a whole word. */
  boolean skipWord(String word) {
    if (!standsHere(word)) {
      return false;
    }
    at += word.length();
    skipSpaces();
    return true;
  }

  /** Whether a lower-case word stands here as a whole word, in any case. */
  boolean standsHere(String word) {
    return text.regionMatches(true, at, word, 0, word.length())
        && !isLetterOrDigit(peek(word.length()));
  }

  /** End of the word or sign that begins here. */
  int wordEnd() {
    int end = at;
    while (end < text.length()
        && !isSpace(text.charAt(end))
        && "/(),;".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    return Math.max(end, Math.min(at + 1, text.length()));
  }

  /** The whole text with a part of it replaced. */
  String replaced(int from, int to, String by) {
    return text.substring(0, from) + by + text.substring(to);
  }

  String rest() {
    return text.substring(Math.min(at, text.length()));
  }

  UnreadableQuantity problem(
      int position, String what, String expected, String why, List<String> readings) {
    return new UnreadableQuantity(text, position, what, expected, why, readings);
  }

  UnreadableQuantity problem(int position, String what, String expected, String why, String cure) {
    return new UnreadableQuantity(text, position, what, expected, why, cure);
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  static boolean isLetterOrDigit(char c) {
    return isDigit(c) || Character.isLetter(c);
  }

  /** Blank, tab, and the blanks of typesetters that do not break or are narrow. */
  static boolean isSpace(char c) {
    return c == ' '
        || c == '\t'
        || c == '\u00a0'
        || c == '\u2009'
        || c == '\u202f'
        || c == '\u2007';
  }

  static boolean isDash(char c) {
    return c == '-'
        || c == '\u2010'
        || c == '\u2011'
        || c == '\u2012'
        || c == '\u2013'
        || c == '\u2014'
        || c == '\u2212';
  }

  static String lower(String word) {
    return word.toLowerCase(Locale.ROOT);
  }
}
