package agro.course.paper;

import agro.course.CourseContext;
import agro.course.Exercise;
import agro.course.ExerciseDraw;
import agro.course.ExerciseKey;
import agro.course.ExerciseType;
import agro.report.InputProblem;
import agro.report.Progress;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Draws the papers of a class, sitting by sitting and student by student. First drafts, which do
 * not depend on one another, are drawn side by side; clashes are then settled in order, so that the
 * result does not depend on the number of processors.
 */
final class PaperSetter {

  private static final int ATTEMPTS = 1_000;
  private static final long SHORT_SEEDS = 1_000_000_000L;
  private static final int CHUNK = 16;

  /** One place of a paper: a line of the blueprint and the number of the question. */
  private record Slot(int number, BlueprintLine line) {}

  private final PaperPlan plan;
  private final CourseContext context;
  private final List<Slot> slots = new ArrayList<>();

  /** What has been given to anybody, by code of the type. */
  private final Map<String, Set<String>> given = new HashMap<>();

  /** How often a type was asked in the sittings before, by student; one for all with one mix. */
  private final Map<String, Map<String, Integer>> asked = new HashMap<>();

  PaperSetter(PaperPlan plan) {
    this.plan = plan;
    this.context = plan.context();
    for (var line : plan.blueprint().lines()) {
      for (int i = 0; i < line.questions(); i++) {
        slots.add(new Slot(slots.size() + 1, line));
      }
    }
  }

  /**
   * The papers of the planned sitting; those before it are drawn in order to keep clear of them.
   */
  List<StudentPaper> set(Progress progress) {
    plan.blueprint().check(plan.catalogue());
    List<StudentPaper> papers = List.of();
    for (int sitting = 1; sitting <= plan.sitting(); sitting++) {
      papers = sitting(sitting, progress);
    }
    return papers;
  }

  private List<StudentPaper> sitting(int sitting, Progress progress) {
    var students = plan.classList().students();
    var papers = new ArrayList<StudentPaper>();
    var common = plan.sameTypes() ? types(sitting, "") : List.<ExerciseType>of();
    for (int from = 0; from < students.size(); from += CHUNK) {
      var some = students.subList(from, Math.min(students.size(), from + CHUNK));
      var mixes = new ArrayList<List<ExerciseType>>();
      some.forEach(one -> mixes.add(plan.sameTypes() ? common : types(sitting, key(one))));
      var drafts =
          IntStream.range(0, some.size() * slots.size())
              .parallel()
              .mapToObj(
                  at -> {
                    int one = at / slots.size();
                    int slot = at % slots.size();
                    return draw(
                        some.get(one), sitting, slots.get(slot), mixes.get(one).get(slot), 0);
                  })
              .toList();
      for (int one = 0; one < some.size(); one++) {
        var own = drafts.subList(one * slots.size(), (one + 1) * slots.size());
        papers.add(settled(some.get(one), sitting, mixes.get(one), own));
        progress.step(phase(sitting), from + one + 1L, students.size());
      }
    }
    return papers;
  }

  private String phase(int sitting) {
    return plan.sitting() == 1 ? "setting papers" : "setting papers, sitting " + sitting;
  }

  private static String key(CourseStudent student) {
    return ClassList.key(student.id());
  }

  /**
   * The types of a paper. Those that stand on it least often come first, then those that were asked
   * least often in the sittings before, then chance.
   */
  private List<ExerciseType> types(int sitting, String student) {
    var before = asked.computeIfAbsent(student, missing -> new HashMap<>());
    var onPaper = new HashMap<String, Integer>();
    var types = new ArrayList<ExerciseType>();
    var text = "types " + sitting + ' ' + student;
    var draw = ExerciseDraw.of(ExerciseDraw.seedFor(plan.seed(), text));
    for (var slot : slots) {
      var fitting = slot.line().types(plan.catalogue());
      ExerciseType best = null;
      for (var type : draw.some(fitting, fitting.size())) {
        if (best == null || rank(type, onPaper, before) < rank(best, onPaper, before)) {
          best = type;
        }
      }
      types.add(best);
      onPaper.merge(best.code(), 1, Integer::sum);
    }
    onPaper.forEach((code, count) -> before.merge(code, count, Integer::sum));
    return types;
  }

  private static long rank(
      ExerciseType type, Map<String, Integer> onPaper, Map<String, Integer> before) {
    return 10_000L * onPaper.getOrDefault(type.code(), 0) + before.getOrDefault(type.code(), 0);
  }

  private PaperQuestion draw(
      CourseStudent student, int sitting, Slot slot, ExerciseType type, int attempt) {
    var text = "paper " + sitting + ' ' + slot.number() + ' ' + attempt + ' ' + key(student);
    // Seeds are typed by hand where an exercise is set again, so they are kept short.
    long seed = Math.floorMod(ExerciseDraw.seedFor(plan.seed(), text), SHORT_SEEDS);
    var key =
        new ExerciseKey(type.code(), slot.line().difficulty(), plan.catalogue().version(), seed);
    var exercise = Exercise.set(type, key, context);
    return new PaperQuestion(
        slot.number(), exercise, exercise.solution(), slot.line().marks(), slot.line().form());
  }

  private StudentPaper settled(
      CourseStudent student, int sitting, List<ExerciseType> mix, List<PaperQuestion> drafts) {
    var questions = new ArrayList<PaperQuestion>();
    for (int i = 0; i < drafts.size(); i++) {
      var question = drafts.get(i);
      for (int attempt = 1; !isNew(question.exercise()); attempt++) {
        if (attempt == ATTEMPTS) {
          throw exhausted(mix.get(i));
        }
        question = draw(student, sitting, slots.get(i), mix.get(i), attempt);
      }
      questions.add(question);
    }
    return new StudentPaper(student, questions, plan);
  }

  private boolean isNew(Exercise exercise) {
    return given
        .computeIfAbsent(exercise.key().type(), missing -> new HashSet<>())
        .add(exercise.givens().fingerprint());
  }

  private InputProblem exhausted(ExerciseType type) {
    return InputProblem.of(
            "the class with "
                + plan.classList().students().size()
                + " students, sitting "
                + plan.sitting())
        .expected("fewer questions of the type " + type.code())
        .because("it has no more numbers that nobody else has or had")
        .mend("ask for other topics or difficulties, or take another seed for a new course");
  }
}
