package agro.course.marking;

import agro.course.AnswerValue;
import agro.course.ChoiceAnswer;
import agro.course.CodesAnswer;
import agro.course.CourseWords;
import agro.course.DayAnswer;
import agro.course.Exercise;
import agro.course.ExpectedAnswer;
import agro.course.NumberAnswer;
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.course.marking.ReadAnswer.ReadValue;
import agro.course.marking.ReadAnswer.Unclear;
import agro.course.marking.ReadAnswer.Values;
import agro.course.marking.ReadAnswer.WrongKind;
import agro.working.TextLanguage;
import java.time.LocalDate;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Reads typed answers. It never throws for any text. */
final class AnswerReader {

  /** No answer is longer; a text beyond it is not looked at. */
  static final int LONGEST = 300;

  /** Sides of an equation may be rounded so far. */
  private static final double SAME = 0.06;

  private static final Pattern EQUAL = Pattern.compile("[=≈]");

  private final Exercise exercise;
  private final CourseWords words;

  AnswerReader(Exercise exercise, CourseWords words) {
    this.exercise = exercise;
    this.words = words;
  }

  /** What was typed for a part. */
  ReadAnswer read(String typed, SolvedPart part) {
    if (typed.length() > LONGEST && !typed.isBlank()) {
      return new Unclear(words.say("unclear.long"));
    }
    var clean = CleanText.of(typed);
    if (clean.isEmpty() || isDashAlone(clean, part.answer())) {
      return new ReadAnswer.Blank();
    }
    var answer = part.answer();
    if (answer instanceof ChoiceAnswer choice) {
      return ofChoice(clean, choice);
    }
    if (answer instanceof CodesAnswer codes) {
      return ofCodes(clean, codes, part);
    }
    if (LeadIn.isLimit(LeadIn.strip(clean))) {
      return new Unclear(words.say("unclear.limit"));
    }
    return answer instanceof DayAnswer day
        ? ofDay(LeadIn.strip(clean), day)
        : ofNumber(clean, answer);
  }

  private static boolean isDashAlone(String clean, ExpectedAnswer answer) {
    return !(answer instanceof CodesAnswer) && (clean.equals("-") || clean.equals("--"));
  }

  private ReadAnswer ofChoice(String clean, ChoiceAnswer choice) {
    return ChoiceText.code(clean, choice.choices())
        .map(
            code ->
                (ReadAnswer)
                    Values.of(
                        ReadValue.of(
                            new AnswerValue.OfChoice(code), choice.withCode(code).print(words))))
        .orElseGet(
            () ->
                new Unclear(
                    words.say(
                        "unclear.choice",
                        "last",
                        Exercise.letter(choice.choices().size() - 1)
                            .toUpperCase(java.util.Locale.ROOT))));
  }

  private ReadAnswer ofCodes(String clean, CodesAnswer codes, SolvedPart part) {
    var known = new TreeSet<>(codes.codes());
    for (var slip : part.slips()) {
      if (slip.answer() instanceof CodesAnswer other) {
        known.addAll(other.codes());
      }
    }
    return CodesText.codes(clean, known)
        .map(
            found ->
                (ReadAnswer)
                    Values.of(
                        ReadValue.of(
                            new AnswerValue.OfCodes(found), new CodesAnswer(found).print(words))))
        .orElseGet(() -> new Unclear(words.say("unclear.codes")));
  }

  private ReadAnswer ofDay(String text, DayAnswer right) {
    var days = DayText.read(text, right.day());
    if (days.isEmpty()) {
      var number = new NumberScan(text, commaLanguage()).read();
      if (number.isPresent() && !DayText.looksLikeDay(text)) {
        var found = new NumericReader(exercise, words).kind(text.substring(number.get().end()));
        var reading = number.get().readings().get(0);
        return new WrongKind(text, reading.value(), KindReason.of(words, found, AnswerKind.DAY));
      }
      return new Unclear(words.say("unclear.day"));
    }
    var values = days.stream().map(this::value).toList();
    if (DayText.isDoubtful(text)) {
      return new Unclear(
          words.say("unclear.which", "one", values.get(0).print(), "other", values.get(1).print()));
    }
    return new Values(values, Optional.empty());
  }

  private ReadValue value(LocalDate day) {
    return ReadValue.of(new AnswerValue.OfDay(day), words.day(day));
  }

  private ReadAnswer ofNumber(String clean, ExpectedAnswer answer) {
    var text = LeadIn.strip(clean);
    if (DayText.isWithMonth(text)) {
      return new WrongKind(
          text, Double.NaN, KindReason.of(words, AnswerKind.DAY, AnswerKind.of(answer)));
    }
    var reader = new NumericReader(exercise, words);
    return clean.matches(".*[=≈].*") && disagree(reader, clean, answer)
        ? new Unclear(words.say("unclear.two"))
        : reader.read(text, answer);
  }

  /** Whether the sides of an equation are amounts with their units that differ. */
  private static boolean disagree(NumericReader reader, String clean, ExpectedAnswer answer) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    if (answer instanceof NumberAnswer || answer instanceof PercentAnswer) {
      return false;
    }
    for (var side : EQUAL.split(clean, -1)) {
      if (reader.read(LeadIn.strip(side), answer) instanceof Values values
          && !values.values().get(0).unitMissing()
          && values.values().size() == 1) {
        low = Math.min(low, values.values().get(0).number());
        high = Math.max(high, values.values().get(0).number());
      }
    }
    return high - low > SAME * Math.max(Math.abs(high), Math.abs(low));
  }

  private boolean commaLanguage() {
    return words.language() == TextLanguage.GERMAN;
  }
}
