package agro.course.marking;

import agro.course.ChoiceAnswer.AnswerChoice;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/** Which of several statements a text means: by its words, its letter in print or its code. */
final class ChoiceText {

  private static final Pattern LETTER = Pattern.compile("\\(?([A-Za-z])\\)?[.:)]?");
  private static final Pattern LETTER_FIRST = Pattern.compile("\\(?([A-Za-z])[).:]\\)? ?(.+)");
  private static final int SHORTEST_PART = 3;

  private ChoiceText() {}

  /** The code of the statement; nothing if none or more than one is meant. */
  static Optional<String> code(String clean, List<AnswerChoice> choices) {
    for (UnaryOperator<String> form :
        List.<UnaryOperator<String>>of(ChoiceText::lower, ChoiceText::plain, ChoiceText::spelled)) {
      var found = only(choices, choice -> form.apply(choice.text()).equals(form.apply(clean)));
      if (found.isPresent() && !form.apply(clean).isEmpty()) {
        return found;
      }
    }
    var letter = letter(clean, choices);
    if (letter.isPresent()) {
      return letter;
    }
    var code = only(choices, choice -> plain(choice.code()).equals(plain(clean)));
    if (code.isPresent() && !plain(clean).isEmpty()) {
      return code;
    }
    var both = LETTER_FIRST.matcher(clean);
    return both.matches()
        ? letterAndText(both.group(1), both.group(2), choices)
        : part(clean, choices);
  }

  /** The code of the statement with a letter, counted in the order of print. */
  static Optional<String> letter(String clean, List<AnswerChoice> choices) {
    var letter = LETTER.matcher(clean);
    int index = letter.matches() ? lower(letter.group(1)).charAt(0) - 'a' : choices.size();
    return index < choices.size() ? Optional.of(choices.get(index).code()) : Optional.empty();
  }

  /** A letter with the statement behind it, which has to be the same. */
  private static Optional<String> letterAndText(
      String letter, String text, List<AnswerChoice> choices) {
    int index = lower(letter).charAt(0) - 'a';
    var said = code(text, choices);
    var meant =
        index < choices.size() ? Optional.of(choices.get(index).code()) : Optional.<String>empty();
    return said.isEmpty() || said.equals(meant) ? meant : Optional.empty();
  }

  private static Optional<String> part(String clean, List<AnswerChoice> choices) {
    var typed = plain(LeadIn.strip(clean));
    if (typed.length() < SHORTEST_PART || typed.chars().noneMatch(Character::isLetter)) {
      return Optional.empty();
    }
    var whole = only(choices, choice -> plain(choice.text()).equals(typed));
    return whole.isPresent()
        ? whole
        : only(choices, choice -> plain(choice.text()).contains(typed));
  }

  private static Optional<String> only(
      List<AnswerChoice> choices, java.util.function.Predicate<AnswerChoice> fits) {
    var fitting = choices.stream().filter(fits).map(AnswerChoice::code).distinct().toList();
    return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
  }

  private static String lower(String text) {
    return CleanText.of(text).toLowerCase(Locale.ROOT);
  }

  /** Letters, digits and decimal signs alone, without accents. */
  static String plain(String text) {
    var apart = Normalizer.normalize(lower(text).replace("ß", "ss"), Normalizer.Form.NFD);
    return apart
        .replaceAll("(?<![0-9])[.,]|[.,](?![0-9])", "")
        .replaceAll("[^\\p{L}\\p{N}.,<>≤≥]", "");
  }

  private static String spelled(String text) {
    return plain(lower(text).replace("ä", "ae").replace("ö", "oe").replace("ü", "ue"));
  }
}
