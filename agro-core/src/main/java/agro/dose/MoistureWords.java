package agro.dose;

import agro.report.InputProblem;
import java.util.Locale;

/**
 * The words that say on what moisture basis a substrate is weighed, cut from the end of a rate.
 *
 * @param without the rate without these words
 * @param words the words in lower case, empty where there are none
 * @param substance what stands below the line, without wet or dry
 */
record MoistureWords(String without, String words, String substance) {

  private static final String[] ENDINGS = {
    "wet basis",
    "dry basis",
    "fresh weight",
    "dry weight",
    "dry matter",
    "as is",
    "fresh",
    "wet",
    "dry"
  };

  /** Looks at the end of a rate. */
  static MoistureWords of(String text) {
    var lower = text.toLowerCase(Locale.ROOT);
    int end = lower.stripTrailing().length();
    boolean bracket = end > 0 && lower.charAt(end - 1) == ')';
    int last = bracket ? lower.substring(0, end - 1).stripTrailing().length() : end;
    for (var ending : ENDINGS) {
      int start = last - ending.length();
      if (start > 0 && lower.startsWith(ending, start) && lower.length() == text.length()) {
        char before = lower.charAt(start - 1);
        if (bracket ? before == '(' : " ,".indexOf(before) >= 0) {
          return new MoistureWords(withoutMark(text.substring(0, start)), ending, "");
        }
      }
    }
    return new MoistureWords(text, "", "");
  }

  private static String withoutMark(String text) {
    var before = text.stripTrailing();
    boolean mark = before.endsWith(",") || before.endsWith("(");
    return (mark ? before.substring(0, before.length() - 1) : before).stripTrailing();
  }

  /** These words together with those that stand before the substance, as in "wet manure". */
  MoistureWords with(String below) {
    for (var first : new String[] {"wet ", "dry "}) {
      if (below.startsWith(first)) {
        var both = words.isEmpty() ? first.strip() : words + " " + first.strip();
        return new MoistureWords(without, both, below.substring(first.length()));
      }
    }
    return new MoistureWords(without, words, below);
  }

  /** Whether the substrate is weighed with its water; refused where nothing says so. */
  boolean wet(String text) {
    boolean dry = words.contains("dry");
    boolean wet = words.contains("wet") || words.contains("fresh") || words.contains("as is");
    if (dry && wet) {
      throw InputProblem.of("\"" + text + "\" is both wet and dry")
          .expected("one moisture basis")
          .because("a tonne with its water holds less dry matter than a tonne of dry matter")
          .mend("write \"(wet)\" or \"(dry)\" once");
    }
    if (!dry && !wet) {
      throw InputProblem.of(
              "\"" + text + "\" does not say whether the " + substance + " is wet or dry")
          .expected("the moisture basis of the tonne")
          .because(
              "at 30 % moisture a tonne as it lies holds 700 kg dry matter, so that the two differ"
                  + " by 1.43 times")
          .mend(
              "write \""
                  + text
                  + " (wet)\" if it is weighed as it lies, else \""
                  + text
                  + " (dry)\"");
    }
    return wet;
  }

  /** Refuses moisture words where nothing has a moisture basis. */
  void requireNone(String text) {
    if (!words.isEmpty()) {
      throw InputProblem.of(
              "\"" + text + "\" has \"" + words + "\" behind a rate that is not per mass")
          .expected("a moisture basis only behind manure, compost, substrate or soil")
          .because("nothing else is weighed wet or dry here")
          .mend("leave out \"" + words + "\", or write the mass of substrate that it belongs to");
    }
  }
}
