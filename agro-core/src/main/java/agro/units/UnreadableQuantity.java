package agro.units;

import java.util.List;

/**
 * A text that is not clearly a quantity. The message shows the text with a caret under the
 * character where reading stopped, then says what was expected, why it matters and what to write
 * instead.
 */
public final class UnreadableQuantity extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final String text;
  private final int position;
  private final String expected;
  private final String why;
  private final String cure;
  private final transient List<String> readings;

  UnreadableQuantity(
      String text, int position, String what, String expected, String why, List<String> readings) {
    this(text, position, what, expected, why, readings, "write " + joined(readings));
  }

  UnreadableQuantity(
      String text, int position, String what, String expected, String why, String cure) {
    this(text, position, what, expected, why, List.of(), cure);
  }

  private UnreadableQuantity(
      String text,
      int position,
      String what,
      String expected,
      String why,
      List<String> readings,
      String cure) {
    super(compose(text, position, what, expected, why, cure));
    this.text = text;
    this.position = position;
    this.expected = expected;
    this.why = why;
    this.cure = cure;
    this.readings = List.copyOf(readings);
  }

  private static String compose(
      String text, int position, String what, String expected, String why, String cure) {
    var message = new StringBuilder(what).append(".\n  ");
    for (int i = 0; i < text.length(); i++) {
      char next = text.charAt(i);
      message.append(Character.isISOControl(next) ? ' ' : next);
    }
    message.append("\n  ");
    message.append(" ".repeat(text.codePointCount(0, Math.min(position, text.length()))));
    return message
        .append("^\n  Expected: ")
        .append(expected)
        .append(".\n  Why: ")
        .append(why)
        .append(".\n  Mend: ")
        .append(cure)
        .append('.')
        .toString();
  }

  private static String joined(List<String> readings) {
    var line = new StringBuilder();
    for (int i = 0; i < readings.size(); i++) {
      line.append(i == 0 ? "" : i == readings.size() - 1 ? " or " : ", ");
      line.append('"').append(readings.get(i)).append('"');
    }
    return line.toString();
  }

  /**
   * The text that was read.
   *
   * @return the whole text
   */
  public String text() {
    return text;
  }

  /**
   * Where reading stopped.
   *
   * @return index of the first character that is in the way, counted from 0 in UTF-16 units
   */
  public int position() {
    return position;
  }

  /**
   * What was expected there.
   *
   * @return a sentence without a full stop
   */
  public String expected() {
    return expected;
  }

  /**
   * Why the text cannot be used.
   *
   * @return a sentence without a full stop
   */
  public String why() {
    return why;
  }

  /**
   * How to mend the text.
   *
   * @return a sentence without a full stop
   */
  public String cure() {
    return cure;
  }

  /**
   * Whole texts that can be written instead, the nearest first.
   *
   * @return the readings; empty if none is near
   */
  public List<String> readings() {
    return readings == null ? List.of() : readings;
  }
}
