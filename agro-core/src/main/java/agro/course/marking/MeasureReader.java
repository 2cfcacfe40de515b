package agro.course.marking;

import agro.course.CourseWords;
import agro.course.Exercise;
import agro.course.MeasuredAnswer;
import agro.course.marking.ReadAnswer.ReadValue;
import agro.course.marking.ReadAnswer.Unclear;
import agro.course.marking.ReadAnswer.Values;
import agro.course.marking.ReadAnswer.WrongKind;
import agro.course.marking.WrittenNumber.NumberReading;
import agro.units.Density;
import agro.units.ParsedQuantity;
import agro.units.Quantity;
import agro.units.QuantityKind;
import agro.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads amounts with a unit where one kind of amount is asked for.
 *
 * @param <Q> the kind
 */
final class MeasureReader<Q extends Quantity<Q>> {

  private static final Pattern DIGIT = Pattern.compile("[0-9]");

  private final Exercise exercise;
  private final CourseWords words;
  private final MeasuredAnswer<Q> answer;
  private final QuantityKind wanted;

  MeasureReader(Exercise exercise, CourseWords words, MeasuredAnswer<Q> answer) {
    this.exercise = exercise;
    this.words = words;
    this.answer = answer;
    this.wanted = answer.unit().kind();
  }

  ReadAnswer read(WrittenNumber written, String rest) {
    if (rest.isEmpty()) {
      return withoutUnit(written);
    }
    var land = LandWord.of(exercise.context().units().land());
    boolean ofLand = land.isIn(rest);
    var plain = ofLand ? land.inHectares(rest) : rest;
    var candidates = UnitCandidates.of(plain);
    var fitting = candidates.stream().filter(one -> UnitCandidates.isOf(one, wanted)).toList();
    if (fitting.isEmpty()) {
      return ofOtherKind(written, rest, plain, candidates);
    }
    var unit = settled(fitting);
    if (unit.isEmpty()) {
      return new Unclear(
          words.say(
              "unclear.which",
              "one",
              UnitCandidates.print(fitting.get(0)),
              "other",
              UnitCandidates.print(fitting.get(1))));
    }
    var one = BaseNumbers.of(unit.get(), wanted);
    if (!one.baseUnit().equals(answer.quantity().baseUnit())) {
      return wrong(written, rest, AnswerKind.of(wanted));
    }
    var read = UnitCandidates.print(unit.get());
    var symbol = ofLand ? land.print(read) : read;
    var remark =
        candidates.size() > 1 || !UnitCandidates.isClear(plain)
            ? words.say("remark.unit", "unit", symbol)
            : "";
    double factor = ofLand ? land.factor(unit.get()) : 1;
    return values(written, factor * one.inBaseUnit(), symbol, remark);
  }

  private ReadAnswer values(WrittenNumber written, double base, String symbol, String remark) {
    return new Values(
        written.readings().stream()
            .map(number -> value(number, base, symbol).withRemark(remark))
            .toList(),
        Optional.empty());
  }

  private ReadValue value(NumberReading number, double base, String symbol) {
    double inUnit = answer.unit().fromBase(number.value() * base);
    double half = answer.unit().fromBase(number.halfDigit() * base);
    return new ReadValue(
        AnswerNumbers.value(answer, inUnit),
        inUnit,
        half,
        number.value(),
        words.exact(number.value()) + " " + symbol,
        false,
        false,
        "");
  }

  /** The one unit that was meant, if the exercise's own units tell it. */
  private Optional<ParsedQuantity> settled(List<ParsedQuantity> fitting) {
    if (fitting.size() == 1) {
      return Optional.of(fitting.get(0));
    }
    var own = OwnUnits.of(exercise.context().units(), answer.unit());
    var exact = fitting.stream().filter(own::holdsAll).toList();
    if (exact.size() == 1) {
      return Optional.of(exact.get(0));
    }
    var alike = fitting.stream().filter(own::suits).toList();
    return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
  }

  private ReadAnswer ofOtherKind(
      WrittenNumber written, String rest, String plain, List<ParsedQuantity> candidates) {
    var liquidOrSolid =
        candidates.stream()
            .filter(one -> one.kind().isPresent())
            .filter(one -> KindReason.differByDensity(one.kind().get(), wanted))
            .toList();
    var densities = densities();
    if (!liquidOrSolid.isEmpty() && !densities.isEmpty()) {
      return converted(written, settled(liquidOrSolid).orElse(liquidOrSolid.get(0)), densities);
    }
    var found =
        liquidOrSolid.isEmpty()
            ? new NumericReader(exercise, words).kind(plain)
            : UnitCandidates.kind(liquidOrSolid.get(0));
    if (!found.equals(AnswerKind.NUMBER)) {
      return wrong(written, rest, found);
    }
    return new Unclear(
        DIGIT.matcher(rest).find()
            ? words.say("unclear.two")
            : words.say("unclear.word", "word", rest));
  }

  private ReadAnswer wrong(WrittenNumber written, String rest, AnswerKind found) {
    double number = written.readings().get(0).value();
    return new WrongKind(
        words.exact(number) + " " + rest,
        number,
        KindReason.of(words, found, AnswerKind.of(wanted)));
  }

  private List<Density> densities() {
    return exercise.givens().values().values().stream()
        .filter(Density.class::isInstance)
        .map(Density.class::cast)
        .distinct()
        .toList();
  }

  /** A mass for a volume or the other way round, with the densities that the exercise gives. */
  private ReadAnswer converted(
      WrittenNumber written, ParsedQuantity unit, List<Density> densities) {
    double base = BaseNumbers.of(unit, unit.kind().orElseThrow()).inBaseUnit();
    boolean mass =
        unit.kind().orElseThrow().numerator().orElse(unit.kind().orElseThrow())
            == QuantityKind.MASS;
    var all = new ArrayList<ReadValue>();
    for (var density : densities) {
      double factor = mass ? 1 / density.kilogramsPerLitre() : density.kilogramsPerLitre();
      var remark =
          words.say(
              "remark.density", "density", words.number(density.kilogramsPerLitre()) + " kg/L");
      for (var number : written.readings()) {
        all.add(value(number, base * factor, UnitCandidates.print(unit)).withRemark(remark));
      }
    }
    return new Values(all, Optional.empty());
  }

  /** A bare number: in the unit asked for, or in another one if it is right there. */
  private ReadAnswer withoutUnit(WrittenNumber written) {
    var all = new ArrayList<ReadValue>();
    for (var number : written.readings()) {
      all.add(bare(number, answer.unit()));
    }
    for (var other : OwnUnits.usual(wanted, exercise.context().units())) {
      for (var number : written.readings()) {
        all.add(
            bare(number, other).onlyIfRight(words.say("remark.right.in", "unit", other.symbol())));
      }
    }
    return new Values(all, Optional.empty());
  }

  private ReadValue bare(NumberReading number, Unit<?> unit) {
    var read = value(number, unit.toBase(1), "");
    return new ReadValue(
        read.value(),
        read.number(),
        read.halfDigit(),
        read.typedNumber(),
        words.exact(number.value()),
        true,
        false,
        "");
  }
}
