package agro.reading;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.util.LinkedHashMap;
import java.util.Locale;

/** Words of a fixed list as they are written in files. */
final class ChoiceText {

  private ChoiceText() {}

  /**
   * Reads the word for a constant of an enum.
   *
   * @param text cell without surrounding white space, not empty
   * @param type the enum
   * @param place where the cell stands
   * @param <E> the enum
   * @return the constant
   * @throws InputProblem for a word that stands for none
   */
  static <E extends Enum<E>> E choice(String text, Class<E> type, SourceLocation place) {
    for (var constant : type.getEnumConstants()) {
      if (constant.name().equalsIgnoreCase(text)) {
        return constant;
      }
    }
    var words = new LinkedHashMap<String, E>();
    for (var constant : type.getEnumConstants()) {
      words.put(word(constant.name()), constant);
    }
    var chosen = words.get(word(text));
    if (chosen == null) {
      var list = String.join(", ", words.keySet());
      throw CellText.reads(text, place)
          .expected("one of the words: " + list)
          .because("another word has no meaning here")
          .mend(
              NearestWord.to(word(text), words.keySet())
                  .map(near -> "write \"" + near + "\" if that is meant")
                  .orElse("write one of these words"));
    }
    return chosen;
  }

  /**
   * Reads yes or no.
   *
   * @param text cell without surrounding white space, not empty
   * @param place where the cell stands
   * @return true for yes
   * @throws InputProblem for another word
   */
  static boolean yesOrNo(String text, SourceLocation place) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "yes" -> true;
      case "no" -> false;
      default ->
          throw CellText.reads(text, place)
              .expected("yes or no")
              .because("another word has no meaning here")
              .mend("write yes or no");
    };
  }

  private static String word(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[-_\\s]+", " ");
  }
}
