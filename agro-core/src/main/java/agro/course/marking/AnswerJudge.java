package agro.course.marking;

import agro.course.AnswerValue;
import agro.course.ExpectedAnswer;
import agro.course.Mistake;
import agro.course.TypicalSlip;
import agro.course.marking.ReadAnswer.ReadValue;
import agro.course.marking.ReadAnswer.Values;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Compares what was read with the solutions from every way: right first, then the exercise's own
 * slips, then what was rounded too far, then mistakes that can happen anywhere.
 */
final class AnswerJudge {

  private final MarkingRules rules;
  private final List<EarlierWay.Solved> solved;

  AnswerJudge(MarkingRules rules, List<EarlierWay.Solved> solved) {
    this.rules = rules;
    this.solved = solved;
  }

  Judgement judge(ReadAnswer read) {
    if (read instanceof Values values) {
      var known = known(values.values());
      if (known.isPresent()) {
        return known.get();
      }
      if (values.otherwise().isPresent()) {
        return judge(values.otherwise().get());
      }
      return wrong(values.values().get(0));
    }
    if (read instanceof ReadAnswer.WrongKind other) {
      return refused(MarkVerdict.WRONG_KIND, rightNumber(other.number()));
    }
    return refused(
        read instanceof ReadAnswer.Blank ? MarkVerdict.NOT_ANSWERED : MarkVerdict.UNCLEAR,
        Optional.empty());
  }

  private Judgement refused(MarkVerdict verdict, Optional<Mistake> mistake) {
    return new Judgement(verdict, Optional.empty(), solved.get(0), mistake, List.of());
  }

  private Optional<Mistake> rightNumber(double number) {
    boolean right = AnswerNumbers.accepts(solved.get(0).part().answer(), number);
    return right ? Optional.of(GeneralMistake.WRONG_UNIT) : Optional.empty();
  }

  /**
   * Right from right answers before; else right from own ones, unless they are right but rounded
   * and a slip lies nearer; else a slip; else right in a reading that is only then likely.
   */
  private Optional<Judgement> known(List<ReadValue> values) {
    var right = right(values, false);
    if (right.isPresent()) {
      var way = right.get().from().way();
      boolean exact = way.equals(solved.get(0).way());
      if (exact || !way.isClean() || nearestRight(values) <= nearestSlip(values)) {
        return right;
      }
    }
    return slip(values).or(() -> right(values, true)).or(() -> rounded(values));
  }

  private double nearestRight(List<ReadValue> values) {
    double nearest = Double.POSITIVE_INFINITY;
    for (var one : solved) {
      for (var value : values) {
        if (!value.onlyIfRight() && one.way().isClean() && isRight(one, value)) {
          nearest = Math.min(nearest, distance(one.part().answer(), value));
        }
      }
    }
    return nearest;
  }

  private double nearestSlip(List<ReadValue> values) {
    double nearest = Double.POSITIVE_INFINITY;
    for (var one : solved) {
      for (var value : values) {
        var slip = value.onlyIfRight() ? null : nearest(one.part().slips(), value).orElse(null);
        if (slip != null) {
          nearest = Math.min(nearest, distance(slip.answer(), value));
        }
      }
    }
    return nearest;
  }

  private Optional<Judgement> right(List<ReadValue> values, boolean onlyIfRight) {
    for (var one : solved) {
      for (var value : values) {
        if (value.onlyIfRight() == onlyIfRight && isRight(one, value)) {
          var verdict = value.unitMissing() ? MarkVerdict.UNIT_MISSING : MarkVerdict.RIGHT;
          return Optional.of(judgement(verdict, value, one, Optional.empty(), value.value()));
        }
      }
    }
    return Optional.empty();
  }

  private boolean isRight(EarlierWay.Solved one, ReadValue value) {
    var answer = one.part().answer();
    return AnswerNumbers.accepts(answer, value)
        || (!rules.signMatters() && AnswerNumbers.accepts(answer, -value.number()));
  }

  private Optional<Judgement> slip(List<ReadValue> values) {
    for (var one : solved) {
      for (var value : values) {
        if (value.onlyIfRight()) {
          continue;
        }
        var slip = nearest(one.part().slips(), value);
        if (slip.isPresent()) {
          var verdict = value.unitMissing() ? MarkVerdict.UNIT_MISSING : MarkVerdict.MISTAKE;
          var exact = Optional.of(slip.get().answer().value());
          return Optional.of(
              judgement(verdict, value, one, Optional.of(slip.get().mistake()), exact));
        }
      }
    }
    return Optional.empty();
  }

  /** The slip that an answer is within the tolerance of; of two, the nearer one. */
  private static Optional<TypicalSlip> nearest(List<TypicalSlip> slips, ReadValue value) {
    TypicalSlip best = null;
    for (var slip : slips) {
      if (AnswerNumbers.accepts(slip.answer(), value)
          && (best == null || distance(slip.answer(), value) < distance(best.answer(), value))) {
        best = slip;
      }
    }
    return Optional.ofNullable(best);
  }

  private static double distance(ExpectedAnswer answer, ReadValue value) {
    return Math.abs(AnswerNumbers.number(answer).orElse(0) - value.number());
  }

  private Optional<Judgement> rounded(List<ReadValue> values) {
    for (var one : solved) {
      for (var value : values) {
        if (!value.onlyIfRight() && GeneralMistakes.isRounded(one.part().answer(), value)) {
          var verdict =
              value.unitMissing() ? MarkVerdict.UNIT_MISSING : MarkVerdict.ROUNDED_TOO_FAR;
          return Optional.of(
              judgement(
                  verdict, value, one, Optional.of(GeneralMistake.ROUNDED_TOO_FAR), value.value()));
        }
      }
    }
    return Optional.empty();
  }

  private Judgement wrong(ReadValue value) {
    for (var one : solved) {
      var mistake = GeneralMistakes.of(one.part().answer(), value);
      if (mistake.isPresent()) {
        var verdict = value.unitMissing() ? MarkVerdict.UNIT_MISSING : MarkVerdict.MISTAKE;
        return judgement(verdict, value, one, Optional.of(mistake.get()), value.value());
      }
    }
    var verdict = value.unitMissing() ? MarkVerdict.UNIT_MISSING : MarkVerdict.WRONG;
    return judgement(verdict, value, solved.get(0), Optional.empty(), value.value());
  }

  private static Judgement judgement(
      MarkVerdict verdict,
      ReadValue value,
      EarlierWay.Solved from,
      Optional<Mistake> mistake,
      Optional<AnswerValue> exact) {
    var own = new ArrayList<AnswerValue>();
    value.value().ifPresent(own::add);
    exact.filter(other -> !own.contains(other)).ifPresent(own::add);
    return new Judgement(verdict, Optional.of(value), from, mistake, own);
  }
}
