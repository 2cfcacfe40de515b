package agro.weather.log;

import java.util.Locale;
import java.util.OptionalLong;

/** The end of a written time: an offset from UTC, the name of a zone, or nothing. */
final class ZoneText {

  private final String text;
  private int at;
  private OptionalLong offset = OptionalLong.empty();
  private String name = "";

  ZoneText(String text, int from) {
    this.text = text;
    this.at = from;
  }

  OptionalLong offset() {
    return offset;
  }

  String name() {
    return name;
  }

  String shape() {
    return !name.isEmpty() ? " zone" : offset.isPresent() ? " offset" : "";
  }

  /** Reads to the end of the text; false when something else stands there. */
  boolean read() {
    skipBlanks();
    if (at == text.length()) {
      return true;
    }
    int start = at;
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    var word = text.substring(start, at).toUpperCase(Locale.ROOT);
    boolean universal = word.equals("Z") || word.equals("UTC") || word.equals("GMT");
    if (!word.isEmpty() && !universal && (word.length() < 2 || word.length() > 5)) {
      return false;
    }
    boolean signed = at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-');
    if (signed && (word.isEmpty() || universal)) {
      return readOffset() && readRegion();
    }
    if (universal) {
      offset = OptionalLong.of(0);
    } else {
      name = word;
    }
    return !word.isEmpty() && readRegion();
  }

  private boolean readOffset() {
    int sign = text.charAt(at) == '-' ? -1 : 1;
    at++;
    int start = at;
    while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == ':')) {
      at++;
    }
    var digits = text.substring(start, at).replace(":", "");
    if (digits.length() < 1 || digits.length() > 4 || digits.length() == 3) {
      return false;
    }
    int number = Integer.parseInt(digits);
    int minutes = digits.length() <= 2 ? number * 60 : number / 100 * 60 + number % 100;
    if (minutes > 18 * 60 || (digits.length() == 4 && number % 100 > 59)) {
      return false;
    }
    offset = OptionalLong.of(sign * 60L * minutes);
    return true;
  }

  /** The region in brackets behind an offset says nothing more about the moment. */
  private boolean readRegion() {
    skipBlanks();
    boolean bracketed = at < text.length() && text.charAt(at) == '[' && text.endsWith("]");
    return bracketed ? offset.isPresent() : at == text.length();
  }

  private void skipBlanks() {
    while (at < text.length() && BlankCells.isBlank(text.charAt(at))) {
      at++;
    }
  }
}
