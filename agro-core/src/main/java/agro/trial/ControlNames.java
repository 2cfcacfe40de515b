package agro.trial;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Names by which untreated plots go. */
final class ControlNames {

  private static final Set<String> WHOLE_WORDS =
      Set.of(
          "control",
          "untreated",
          "check",
          "unsprayed",
          "uninfested",
          "nil",
          "none",
          "water",
          "utc",
          "blank",
          "kontrolle",
          "unbehandelt",
          "temoin",
          "testigo",
          "testemunha",
          "testimone",
          "kontrol",
          "kontrola");

  private ControlNames() {}

  static boolean soundsLikeControl(String treatment) {
    return words(treatment).stream().anyMatch(WHOLE_WORDS::contains);
  }

  private static List<String> words(String text) {
    return List.of(plainLetters(text).split("[^\\p{L}\\p{N}]+"));
  }

  /** Small letters without accents, so that spellings can be compared. */
  static String plainLetters(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}+", "")
        .toLowerCase(Locale.ROOT)
        .replace('\u0131', 'i');
  }
}
