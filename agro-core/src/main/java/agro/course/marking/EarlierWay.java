package agro.course.marking;

import agro.course.AnswerValue;
import agro.course.EarlierAnswers;
import agro.course.ExercisePart;
import agro.course.ExpectedAnswer;
import agro.course.SolvedPart;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One way in which a student may have come to a part: from right answers before it, from own ones,
 * or from some of each.
 *
 * @param earlier the answers before
 * @param ownParts earlier parts, from zero, whose own answer was wrong and is used
 */
record EarlierWay(EarlierAnswers earlier, List<Integer> ownParts) {

  /** More ways than these are not followed; four wrong answers in a row give sixteen. */
  private static final int MOST_WAYS = 64;

  /** Own answers that are further off than this factor are not worked on with. */
  private static final double ABSURD = 1e7;

  /**
   * A part solved from one of the ways.
   *
   * @param way the way
   * @param part the solution
   */
  record Solved(EarlierWay way, SolvedPart part) {}

  EarlierWay {
    ownParts = List.copyOf(ownParts);
  }

  static EarlierWay start() {
    return new EarlierWay(EarlierAnswers.none(), List.of());
  }

  boolean isClean() {
    return ownParts.isEmpty();
  }

  /** The part solved from each way. The first way is the right one; of others some may fail. */
  static List<Solved> solve(List<EarlierWay> ways, ExercisePart part) {
    var solved = new ArrayList<Solved>();
    for (var way : ways) {
      if (solved.isEmpty()) {
        solved.add(new Solved(way, part.solution().solve(way.earlier())));
      } else {
        solved(way, part).ifPresent(solved::add);
      }
    }
    return List.copyOf(solved);
  }

  /** What a student's own numbers lead to may be anything; then the right ones remain. */
  private static Optional<Solved> solved(EarlierWay way, ExercisePart part) {
    try {
      var one = part.solution().solve(way.earlier());
      // An answer that is no number shows itself only when its value is asked for.
      Objects.requireNonNull(one.answer().value(), "value");
      return Optional.of(new Solved(way, one));
    } catch (RuntimeException nothingComesOfIt) {
      return Optional.empty();
    }
  }

  /**
   * The ways to the next part.
   *
   * @param solved this part from each way
   * @param own what the student answered to it, in one or two readings
   * @param right whether that answer is right, so that it stands for the right one
   * @param part this part, from zero
   */
  static List<EarlierWay> next(
      List<Solved> solved, List<AnswerValue> own, boolean right, int part) {
    var ways = new LinkedHashMap<List<AnswerValue>, EarlierWay>();
    for (var one : solved) {
      add(ways, one.way(), one.part().answer().value(), one.way().ownParts());
    }
    for (var one : solved) {
      for (var value : own) {
        if (isSensible(value, solved.get(0).part().answer())) {
          add(ways, one.way(), value, right ? one.way().ownParts() : more(one.way(), part));
        }
      }
    }
    return ways.values().stream()
        .sorted(Comparator.comparingInt(way -> way.ownParts().size()))
        .limit(MOST_WAYS)
        .toList();
  }

  private static void add(
      LinkedHashMap<List<AnswerValue>, EarlierWay> ways,
      EarlierWay way,
      AnswerValue value,
      List<Integer> ownParts) {
    var earlier = way.earlier().and(value);
    var before = ways.get(earlier.values());
    if (before == null || before.ownParts().size() > ownParts.size()) {
      ways.put(earlier.values(), new EarlierWay(earlier, ownParts));
    }
  }

  private static List<Integer> more(EarlierWay way, int part) {
    var parts = new ArrayList<>(way.ownParts());
    parts.add(part);
    return List.copyOf(new HashSet<>(parts)).stream().sorted().toList();
  }

  private static boolean isSensible(AnswerValue value, ExpectedAnswer right) {
    var expected = AnswerNumbers.number(right);
    if (expected.isEmpty()) {
      return true;
    }
    double number = AnswerNumbers.number(right, value);
    double usual = Math.max(Math.abs(expected.getAsDouble()), 1e-3);
    return Math.abs(number) <= ABSURD * usual;
  }
}
