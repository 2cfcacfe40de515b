package agro.course.marking;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Several codes in any order, with any sign between them. */
final class CodesText {

  private static final Pattern BETWEEN = Pattern.compile("[,;&+/|\\s]+");
  private static final Pattern CODE = Pattern.compile("[\\p{L}0-9]{1,8}(?:[.-][\\p{L}0-9]{1,4})?");
  private static final Set<String> FILLERS =
      Set.of(
          "and",
          "und",
          "sowie",
          "or",
          "oder",
          "group",
          "groups",
          "gruppe",
          "gruppen",
          "the",
          "die",
          "moa",
          "irac",
          "code",
          "codes",
          "nur",
          "only",
          "number",
          "numbers",
          "nr",
          "no.",
          "nr.",
          "group:",
          "groups:",
          "gruppe:",
          "gruppen:",
          "class",
          "classes",
          "klasse",
          "klassen");
  private static final Set<String> NONE =
      Set.of(
          "none",
          "keine",
          "keiner",
          "keines",
          "no",
          "nichts",
          "nothing",
          "nil",
          "-",
          "--",
          "∅",
          "{}",
          "no group",
          "keine gruppe",
          "none of them");

  private CodesText() {}

  /** The codes, known ones in their known spelling; nothing if the text is no list of codes. */
  static Optional<Set<String>> codes(String clean, Set<String> known) {
    var text = clean.replaceAll("[.!?]+$", "").strip();
    for (var code : known) {
      if (code.equalsIgnoreCase(text)) {
        return Optional.of(Set.of(code));
      }
    }
    if (NONE.contains(text.toLowerCase(Locale.ROOT))) {
      return Optional.of(Set.of());
    }
    text = LeadIn.strip(text).replaceAll("[(){}\\[\\]\"']", " ").strip();
    if (NONE.contains(text.toLowerCase(Locale.ROOT))) {
      return Optional.of(Set.of());
    }
    var found = new TreeSet<String>();
    for (var token : BETWEEN.split(text, -1)) {
      if (token.isEmpty() || FILLERS.contains(token.toLowerCase(Locale.ROOT))) {
        continue;
      }
      if (!CODE.matcher(token).matches()) {
        return Optional.empty();
      }
      found.add(spelling(token, known));
    }
    boolean words = found.stream().anyMatch(code -> !known.contains(code) && isWord(code));
    return found.isEmpty() || words ? Optional.empty() : Optional.of(found);
  }

  private static boolean isWord(String code) {
    return code.length() > 4 && code.chars().allMatch(Character::isLetter);
  }

  private static String spelling(String token, Set<String> known) {
    var same =
        known.stream()
            .filter(code -> code.equalsIgnoreCase(token) || bare(code).equals(bare(token)))
            .findFirst();
    return same.orElse(token.toUpperCase(Locale.ROOT));
  }

  private static String bare(String code) {
    return code.toLowerCase(Locale.ROOT).replace(".", "").replace("-", "");
  }
}
