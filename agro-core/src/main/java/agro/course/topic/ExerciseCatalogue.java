package agro.course.topic;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.Exercise;
import agro.course.ExerciseDraw;
import agro.course.ExerciseKey;
import agro.course.ExerciseType;
import agro.course.GeneratorVersion;
import agro.course.Mistake;
import agro.course.topic.calibration.CalibrationExercises;
import agro.course.topic.degreeday.DegreeDayExercises;
import agro.course.topic.development.DevelopmentExercises;
import agro.course.topic.dose.DoseExercises;
import agro.course.topic.efficacy.EfficacyExercises;
import agro.course.topic.injury.InjuryExercises;
import agro.course.topic.probit.ProbitExercises;
import agro.course.topic.rotation.RotationExercises;
import agro.course.topic.sampling.SamplingExercises;
import agro.course.topic.units.UnitExercises;
import agro.report.InputProblem;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import agro.working.TextLanguage;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All types of exercises of one version of the generator.
 *
 * @param version the version
 * @param types the types in the order of their topics
 */
public record ExerciseCatalogue(GeneratorVersion version, List<ExerciseType> types) {

  private static final int ATTEMPTS = 1_000;

  /** Copies the list. */
  public ExerciseCatalogue {
    Objects.requireNonNull(version, "version");
    types = List.copyOf(types);
  }

  /**
   * The catalogue of a version.
   *
   * @param version the version
   * @return its types
   */
  public static ExerciseCatalogue of(GeneratorVersion version) {
    return new ExerciseCatalogue(
        version,
        Stream.of(
                UnitExercises.first(),
                DoseExercises.first(),
                CalibrationExercises.first(),
                SamplingExercises.first(),
                InjuryExercises.first(),
                DegreeDayExercises.first(),
                DevelopmentExercises.first(),
                EfficacyExercises.first(),
                ProbitExercises.first(),
                RotationExercises.first())
            .flatMap(Collection::stream)
            .toList());
  }

  /**
   * The catalogue that new papers are set from.
   *
   * @return the newest types
   */
  public static ExerciseCatalogue latest() {
    return of(GeneratorVersion.latest());
  }

  /**
   * The types of a topic that can ask for so much.
   *
   * @param topic the topic
   * @param difficulty how much they ask for
   * @return the types, possibly none
   */
  public List<ExerciseType> types(CourseTopic topic, Difficulty difficulty) {
    return types.stream()
        .filter(type -> type.topic() == topic && type.difficulties().contains(difficulty))
        .toList();
  }

  /**
   * The type with a code.
   *
   * @param code its code, as printed below an exercise
   * @return the type
   * @throws InputProblem if there is none
   */
  public ExerciseType type(String code) {
    return types.stream()
        .filter(type -> type.code().equals(code))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("the exercise \"" + code + "\"")
                    .expected(
                        "one of "
                            + types.stream()
                                .map(ExerciseType::code)
                                .collect(Collectors.joining(", ")))
                    .because("generator " + version.number() + " has no other types")
                    .mend("copy the name from the line below an exercise"));
  }

  /**
   * How many types there are of each topic and difficulty. A type that sets several difficulties
   * counts for each.
   *
   * @param language language of the table
   * @return one row for each topic
   */
  public ResultTable overview(TextLanguage language) {
    var words = CourseWords.of(language);
    var columns = new ArrayList<Column>();
    columns.add(Column.of(words.say("catalogue.topic")));
    var rows = new ArrayList<List<Cell>>();
    for (var difficulty : Difficulty.values()) {
      columns.add(Column.of(words.say("difficulty." + difficulty.code())));
    }
    for (var topic : CourseTopic.values()) {
      var row = new ArrayList<Cell>();
      row.add(Cell.text(words.say("topic." + topic.code())));
      for (var difficulty : Difficulty.values()) {
        row.add(Cell.number(types(topic, difficulty).size(), 0));
      }
      rows.add(row);
    }
    return ResultTable.of(words.say("catalogue.table"), columns, rows);
  }

  /**
   * The mistakes whose answers are known.
   *
   * @return the mistakes of all types
   */
  public Set<Mistake> mistakes() {
    var all = new HashSet<Mistake>();
    types.forEach(type -> all.addAll(type.mistakes()));
    return Set.copyOf(all);
  }

  /**
   * One exercise.
   *
   * @param code code of its type
   * @param difficulty one that the type sets
   * @param seed seed of its numbers
   * @param context for whom
   * @return the exercise
   * @throws InputProblem if there is no such type
   * @throws IllegalArgumentException if the type has no exercise of that difficulty
   */
  public Exercise exercise(String code, Difficulty difficulty, long seed, CourseContext context) {
    return Exercise.set(type(code), new ExerciseKey(code, difficulty, version, seed), context);
  }

  /**
   * An exercise set again from the line that stands below it, by the generator that set it.
   *
   * @param line the line, in whatever language it was printed
   * @param context for whom; in another place, language or units the seed gives other stories
   * @return the exercise
   * @throws InputProblem if it is no such line, or there is no such type
   * @see ExerciseKey#parse(String)
   */
  public static Exercise again(String line, CourseContext context) {
    var key = ExerciseKey.parse(line);
    return Exercise.set(of(key.version()).type(key.type()), key, context);
  }

  /**
   * Several exercises of a topic, no two alike. Types take turns in random order.
   *
   * @param topic the topic
   * @param difficulty how much they ask for
   * @param count how many, 1 or more
   * @param seed seed of the series
   * @param context for whom
   * @return as many as wanted
   * @throws InputProblem if the topic has no type of that difficulty
   */
  public List<Exercise> series(
      CourseTopic topic, Difficulty difficulty, int count, long seed, CourseContext context) {
    var fitting = types(topic, difficulty);
    if (fitting.isEmpty()) {
      throw InputProblem.of(difficulty.code() + " exercises on " + topic.code())
          .expected("a topic with exercises of that difficulty")
          .because("generator " + version.number() + " has none")
          .mend("ask for another difficulty of this topic");
    }
    var chosen = new ArrayList<Exercise>();
    var order = ExerciseDraw.of(ExerciseDraw.seedFor(seed, topic.code()));
    var turn = List.<ExerciseType>of();
    for (int i = 0; i < count; i++) {
      if (turn.isEmpty()) {
        turn = order.some(fitting, fitting.size());
      }
      chosen.add(another(turn.get(0), difficulty, seed, context, chosen));
      turn = turn.subList(1, turn.size());
    }
    return List.copyOf(chosen);
  }

  /**
   * Several exercises like one, no two alike and none like it.
   *
   * @param model the exercise
   * @param count how many, 0 or more
   * @param seed seed of the series
   * @return as many as wanted
   */
  public List<Exercise> like(Exercise model, int count, long seed) {
    var chosen = new ArrayList<Exercise>();
    chosen.add(model);
    for (int i = 0; i < count; i++) {
      chosen.add(
          another(
              type(model.key().type()), model.key().difficulty(), seed, model.context(), chosen));
    }
    return List.copyOf(chosen.subList(1, chosen.size()));
  }

  private Exercise another(
      ExerciseType type,
      Difficulty difficulty,
      long seed,
      CourseContext context,
      List<Exercise> taken) {
    var prints =
        taken.stream()
            .filter(one -> one.key().type().equals(type.code()))
            .map(one -> one.givens().fingerprint())
            .collect(Collectors.toSet());
    for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
      long own = ExerciseDraw.seedFor(seed, type.code() + " " + taken.size() + " " + attempt);
      // Seeds are typed by hand where an exercise is set again, so they are kept short.
      var key =
          new ExerciseKey(type.code(), difficulty, version, Math.floorMod(own, 1_000_000_000L));
      var exercise = Exercise.set(type, key, context);
      if (!prints.contains(exercise.givens().fingerprint())) {
        return exercise;
      }
    }
    throw InputProblem.of(taken.size() + " exercises of the type " + type.code())
        .expected("fewer exercises of one type")
        .because("it has no more different numbers")
        .mend("take more topics, or fewer exercises");
  }
}
