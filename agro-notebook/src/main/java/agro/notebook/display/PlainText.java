package agro.notebook.display;

/** Values in plain text: what toString says, except where that would tell a reader nothing. */
final class PlainText {

  /** Characters of one value that are shown at most. */
  static final int LONGEST = 100_000;

  private PlainText() {}

  /**
   * A value in words.
   *
   * @param value any value, also null
   * @return the text; long arrays and collections are cut in the middle and say how many there are,
   *     and so are very long texts
   */
  static String of(Object value) {
    return new PlainWriter(LONGEST).whole(value);
  }

  /**
   * A collection, array or map in words, from a sample of its values or entries.
   *
   * @param value the collection, array or map
   * @param sample its values or entries
   * @return the text
   */
  static String of(Object value, Sample sample) {
    return new PlainWriter(LONGEST).sampled(value, sample);
  }

  /**
   * A value in a few words, for a cell of a table.
   *
   * @param value any value, also null
   * @param characters how many characters there is room for
   * @return the text, cut at its end; never throws
   */
  static String brief(Object value, int characters) {
    try {
      var text = new PlainWriter(2 * characters).whole(value);
      return text.length() <= characters ? text : head(text, characters) + "…";
    } catch (RuntimeException | Error trouble) {
      Interruption.passOn(trouble);
      return trouble(value, trouble);
    }
  }

  /**
   * Text of at most a given length with its middle left out.
   *
   * @param text any text
   * @param most characters to keep
   * @return the text, or its beginning and its end with a line between them that says so
   */
  static String cut(String text, int most) {
    if (text.length() <= most) {
      return text;
    }
    var end = most / 10;
    return head(text, most - end)
        + "\n... (of "
        + text.length()
        + " characters the first "
        + (most - end)
        + " and the last "
        + end
        + " are shown)\n"
        + tail(text, end);
  }

  /** The first characters, none of them cut in two. */
  static String head(String text, int length) {
    var end = Math.min(length, text.length());
    var split = end > 0 && end < text.length() && Character.isHighSurrogate(text.charAt(end - 1));
    return text.substring(0, split ? end - 1 : end);
  }

  private static String tail(String text, int length) {
    var start = text.length() - length;
    return text.substring(Character.isLowSurrogate(text.charAt(start)) ? start + 1 : start);
  }

  /**
   * The sentence that stands for a value that cannot be shown.
   *
   * @param value the value
   * @param trouble what its toString or its renderer threw
   * @return one sentence
   */
  static String trouble(Object value, Throwable trouble) {
    return "A value of type "
        + typeName(value.getClass())
        + " could not be shown: "
        + inWords(trouble);
  }

  /**
   * What was thrown, in words.
   *
   * @param trouble anything thrown
   * @return its class and its message, if it gives one
   */
  static String inWords(Throwable trouble) {
    String message;
    try {
      message = trouble.getMessage();
    } catch (Throwable worse) {
      message = null;
    }
    return typeName(trouble.getClass(), trouble.getClass().getName())
        + (message == null ? "" : ": " + head(message, 2_000));
  }

  private static String typeName(Class<?> type) {
    return typeName(type, type.getSimpleName());
  }

  /** The name of a type as the reader wrote it, without the classes that a shell puts around it. */
  static String typeName(Class<?> type, String otherwise) {
    var simple = type.getSimpleName();
    if (!type.getName().contains("$JShell$")) {
      return otherwise.isEmpty() ? type.getName() : otherwise;
    }
    return simple.isEmpty() ? "(anonymous)" : simple;
  }
}
