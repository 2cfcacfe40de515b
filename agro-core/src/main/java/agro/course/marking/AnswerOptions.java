package agro.course.marking;

import agro.course.ChoiceAnswer;
import agro.course.CourseWords;
import agro.course.Exercise;
import agro.course.ExerciseDraw;
import agro.course.ExpectedAnswer;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A part of an exercise with answers to choose from: the right one and what comes of typical
 * mistakes, in random order. The parts before it are taken as answered rightly.
 *
 * @param exercise the exercise
 * @param part the part, from zero
 * @param options the answers in print, all different
 */
public record AnswerOptions(Exercise exercise, int part, List<Option> options)
    implements Presentable {

  /**
   * One answer to choose.
   *
   * @param letter A, B, C, ...
   * @param text the answer in print
   * @param answer the answer
   * @param mistake what leads to it; nothing for the right one, and for statements to choose from
   *     that no known mistake leads to
   */
  public record Option(
      String letter, String text, ExpectedAnswer answer, Optional<Mistake> mistake) {
    /** Refuses what is missing. */
    public Option {
      Objects.requireNonNull(letter, "letter");
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(answer, "answer");
      Objects.requireNonNull(mistake, "mistake");
    }
  }

  /** Copies the list. */
  public AnswerOptions {
    Objects.requireNonNull(exercise, "exercise");
    options = List.copyOf(options);
  }

  /**
   * The options of a part.
   *
   * @param exercise the exercise
   * @param part the part, from zero
   * @param seed seed of the order
   * @return the right answer among typical wrong ones
   * @throws IndexOutOfBoundsException if the exercise has no such part
   */
  public static AnswerOptions of(Exercise exercise, int part, long seed) {
    var solved = exercise.solution().get(part);
    var words = exercise.context().words();
    var all = new ArrayList<Option>();
    all.add(option(solved.answer(), words, Optional.empty()));
    for (var slip : solved.slips()) {
      all.add(option(slip.answer(), words, Optional.of(slip.mistake())));
    }
    if (solved.answer() instanceof ChoiceAnswer choice) {
      choice
          .choices()
          .forEach(one -> all.add(option(choice.withCode(one.code()), words, Optional.empty())));
    }
    var printed = new HashSet<String>();
    all.removeIf(option -> !printed.add(option.text()));
    var order =
        ExerciseDraw.of(ExerciseDraw.seedFor(seed, exercise.key().type() + " " + part))
            .some(all, all.size());
    var lettered = new ArrayList<Option>();
    for (int i = 0; i < order.size(); i++) {
      var one = order.get(i);
      lettered.add(new Option(letter(i), one.text(), one.answer(), one.mistake()));
    }
    return new AnswerOptions(exercise, part, lettered);
  }

  private static Option option(
      ExpectedAnswer answer, CourseWords words, Optional<Mistake> mistake) {
    return new Option("", answer.print(words), answer, mistake);
  }

  private static String letter(int index) {
    return String.valueOf((char) ('A' + index));
  }

  /**
   * The right one.
   *
   * @return its option
   */
  public Option right() {
    var right = solved().answer();
    return options.stream().filter(one -> one.answer().equals(right)).findFirst().orElseThrow();
  }

  private SolvedPart solved() {
    return exercise.solution().get(part);
  }

  /**
   * Marks what was typed, out of one mark: a letter, or an answer that is among the options.
   *
   * @param typed a letter or an answer; blank for not answered
   * @return the mark
   */
  public PartMark mark(String typed) {
    return mark(typed, 1, Marker.withDefaults());
  }

  /**
   * Marks what was typed: a letter, or an answer that is among the options.
   *
   * @param typed a letter or an answer; blank for not answered
   * @param of marks that the part is worth
   * @param marker rules
   * @return the mark
   */
  public PartMark mark(String typed, double of, Marker marker) {
    var words = Marker.words(exercise);
    var solved = solved();
    var first = new EarlierWay.Solved(EarlierWay.start(), solved);
    var chosen = chosen(typed, new AnswerReader(exercise, words), solved);
    ReadAnswer read;
    if (typed.isBlank()) {
      read = new ReadAnswer.Blank();
    } else if (chosen.isEmpty()) {
      read =
          new ReadAnswer.Unclear(words.say("unclear.choice", "last", letter(options.size() - 1)));
    } else {
      var print = chosen.get().letter() + ": " + chosen.get().text();
      read = ReadAnswer.Values.of(ReadAnswer.ReadValue.of(chosen.get().answer().value(), print));
    }
    return marker.partMark(part, typed, read, judge(read, chosen, first, marker), of, words);
  }

  private static Judgement judge(
      ReadAnswer read, Optional<Option> chosen, EarlierWay.Solved solved, Marker marker) {
    if (read instanceof ReadAnswer.Values values && chosen.isPresent()) {
      var mistake = chosen.get().mistake();
      boolean right = chosen.get().answer().equals(solved.part().answer());
      var verdict =
          right ? MarkVerdict.RIGHT : mistake.isPresent() ? MarkVerdict.MISTAKE : MarkVerdict.WRONG;
      return new Judgement(
          verdict, Optional.of(values.values().get(0)), solved, mistake, List.of());
    }
    return new AnswerJudge(marker.rules(), List.of(solved)).judge(read);
  }

  private Optional<Option> chosen(String typed, AnswerReader reader, SolvedPart solved) {
    var choices =
        options.stream()
            .map(one -> new ChoiceAnswer.AnswerChoice(one.letter(), one.text()))
            .toList();
    var clean = typed.length() > AnswerReader.LONGEST ? "" : CleanText.of(typed);
    var letter =
        solved.answer() instanceof ChoiceAnswer
            ? ChoiceText.code(clean, choices)
            : ChoiceText.letter(clean, choices);
    if (letter.isPresent()) {
      return options.stream().filter(one -> one.letter().equals(letter.get())).findFirst();
    }
    if (reader.read(typed, solved) instanceof ReadAnswer.Values values) {
      return options.stream()
          .filter(one -> values.values().stream().anyMatch(value -> fits(one, value)))
          .findFirst();
    }
    return Optional.empty();
  }

  private static boolean fits(Option option, ReadAnswer.ReadValue value) {
    return !value.unitMissing() && AnswerNumbers.accepts(option.answer(), value);
  }

  /** The story and the question with its options. */
  @Override
  public Presentation presentation() {
    var page = Presentation.titled(exercise.title());
    exercise.body().story().forEach(page::paragraph);
    exercise.body().exhibits().forEach(page::block);
    page.paragraph(Exercise.letter(part) + ") " + exercise.parts().get(part).question());
    for (var option : options) {
      page.fact(option.letter(), option.text());
    }
    var words = exercise.context().words();
    if (!exercise.body().cautions().isEmpty()) {
      page.paragraph(String.join(" ", words.cautions(exercise.body().cautions())));
    }
    return page.paragraph(exercise.key().print(words)).build();
  }

  /**
   * What each option tells about whoever chooses it, for the teacher.
   *
   * @return one row for each option: letter, answer and the mistake that leads to it
   */
  public ResultTable meanings() {
    var words = Marker.words(exercise);
    var right = right();
    var rows =
        options.stream()
            .map(
                one ->
                    Stream.of(
                            one.letter(),
                            one.text(),
                            one.equals(right)
                                ? words.say("verdict.RIGHT")
                                : one.mistake()
                                    .map(mistake -> mistake.phrase(words))
                                    .orElse(words.say("verdict.WRONG")))
                        .map(Cell::text)
                        .toList())
            .toList();
    return ResultTable.of(
        exercise.title(),
        Stream.of("option", "typed", "meaning")
            .map(key -> Column.of(words.say("mark.column." + key)))
            .toList(),
        rows);
  }
}
