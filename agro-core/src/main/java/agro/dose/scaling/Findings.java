package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.dose.Severity;

/** Findings written as sentences. */
final class Findings {

  private Findings() {}

  static DoseFinding note(String rule, String words) {
    return new DoseFinding(Severity.NOTE, rule, sentence(words));
  }

  static DoseFinding warning(String rule, String words) {
    return new DoseFinding(Severity.WARNING, rule, sentence(words));
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }
}
