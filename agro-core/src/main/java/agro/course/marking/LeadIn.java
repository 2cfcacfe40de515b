package agro.course.marking;

import java.util.regex.Pattern;

/** What students write before and behind the answer itself. */
final class LeadIn {

  private static final int FLAGS = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
  private static final Pattern LABEL =
      Pattern.compile("^(?:\\([a-h]\\)|[a-h]\\)|[a-h][.:](?= ))\\s*", FLAGS);
  private static final Pattern ANSWER =
      Pattern.compile(
          "^(?:the )?(?:final )?(?:answer|antwort|ans|result|ergebnis|solution|lösung)"
              + "(?![\\p{L}])\\.?\\s*(?:is|ist|lautet)?\\s*[:=]?\\s*",
          FLAGS);
  private static final Pattern ABOUT =
      Pattern.compile(
          "^(?:about|approximately|approx\\.?|around|roughly|nearly|circa|ca\\.?|c\\.|etwa|"
              + "ungefähr|rund|zirka|knapp|gut)\\s*(?=[0-9.,+-])",
          FLAGS);
  private static final Pattern SIGN = Pattern.compile("^[≈~≅≃=:→⇒]+\\s*");
  private static final Pattern NAME = Pattern.compile("^[\\p{L}_ ]{1,30}[:≈]\\s*(?=\\S)");
  private static final Pattern TAIL =
      Pattern.compile("(?:\\s*(?:[!?;,\"']|,-|\\.-|(?<!\\.)\\.))+$");
  private static final Pattern LIMIT =
      Pattern.compile(
          "^(?:[<>≤≥]|(?:at least|at most|more than|less than|fewer than|up to|max|min|"
              + "mindestens|höchstens|mehr als|weniger als|bis zu|über|unter|over|under)"
              + "(?![\\p{L}]))",
          FLAGS);

  private LeadIn() {}

  /** The answer alone; of a chain of equal signs the last side. */
  static String strip(String clean) {
    var text = clean;
    int equal = Math.max(text.lastIndexOf('='), text.lastIndexOf('≈'));
    if (equal >= 0 && !text.substring(equal + 1).isBlank()) {
      text = text.substring(equal + 1).strip();
    }
    for (int round = 0; round < 6; round++) {
      var before = text;
      text = LABEL.matcher(text).replaceFirst("");
      text = ANSWER.matcher(text).replaceFirst("");
      text = SIGN.matcher(text).replaceFirst("");
      text = ABOUT.matcher(text).replaceFirst("");
      text = NAME.matcher(text).replaceFirst("");
      text = unquoted(text).strip();
      if (text.equals(before)) {
        break;
      }
    }
    return tail(text);
  }

  /** Without the full stop and the like at the end. */
  static String tail(String text) {
    return TAIL.matcher(text).replaceFirst("").strip();
  }

  private static String unquoted(String text) {
    boolean quoted = text.length() > 1 && "\"'„“«".indexOf(text.charAt(0)) >= 0;
    return quoted ? text.substring(1, text.length() - 1) : text;
  }

  /** Whether it says "at least" or the like. */
  static boolean isLimit(String text) {
    return LIMIT.matcher(text).find();
  }
}
