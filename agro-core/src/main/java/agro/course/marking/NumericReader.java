package agro.course.marking;

import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.Exercise;
import agro.course.ExpectedAnswer;
import agro.course.MeasuredAnswer;
import agro.course.NumberAnswer;
import agro.course.PercentAnswer;
import agro.course.TemperatureAnswer;
import agro.course.ThermalTimeAnswer;
import agro.course.marking.ReadAnswer.ReadValue;
import agro.course.marking.ReadAnswer.Unclear;
import agro.course.marking.ReadAnswer.Values;
import agro.course.marking.ReadAnswer.WrongKind;
import agro.course.marking.WrittenNumber.NumberReading;
import agro.units.QuantityKind;
import agro.units.ThermalTime;
import agro.units.ThermalTimeUnit;
import agro.working.TextLanguage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads answers with a number in them: the number first, then what stands behind it. */
final class NumericReader {

  private static final Pattern SECOND_NUMBER =
      Pattern.compile(
          "^(?:-|to|bis|or|oder|and|und|\\.\\.+|…|±|\\+/-|\\+|[;,x×*·:])? ?[0-9].*",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
  private static final Pattern DIGIT = Pattern.compile("[0-9]");
  private static final Set<String> CURRENCIES =
      Set.of("€", "$", "£", "eur", "euro", "euros", "usd", "dollar", "dollars", "gbp", "chf");
  private static final double SMALL_SHARE = 2;

  private final Exercise exercise;
  private final CourseWords words;
  private final CourseUnits units;

  NumericReader(Exercise exercise, CourseWords words) {
    this.exercise = exercise;
    this.words = words;
    this.units = exercise.context().units();
  }

  /** What a text says where a number is asked for. */
  ReadAnswer read(String typed, ExpectedAnswer answer) {
    var text = answer instanceof NumberAnswer number ? withoutNameBefore(typed, number) : typed;
    var written = new NumberScan(text, words.language() == TextLanguage.GERMAN).read();
    if (written.isEmpty()) {
      return new Unclear(words.say("unclear.number"));
    }
    var rest = LeadIn.tail(text.substring(written.get().end()).strip());
    if (SECOND_NUMBER.matcher(rest).matches()) {
      return new Unclear(words.say("unclear.two"));
    }
    var read =
        answer instanceof MeasuredAnswer<?> measured
            ? new MeasureReader<>(exercise, words, measured).read(written.get(), rest)
            : plain(written.get(), rest, answer);
    return doubtful(read, written.get());
  }

  /** A comma that may group thousands or not: said, and asked about if neither reading is right. */
  private ReadAnswer doubtful(ReadAnswer read, WrittenNumber written) {
    if (written.readings().size() < 2 || !(read instanceof Values values)) {
      return read;
    }
    var both = written.readings();
    var told = new ArrayList<ReadValue>();
    for (var value : values.values()) {
      boolean second = value.typedNumber() == both.get(1).value();
      var remark =
          words.say("remark.number", "number", words.exact(value.typedNumber()))
              + (value.remark().isEmpty() ? "" : " " + value.remark());
      if (written.doubtful()) {
        told.add(value.withRemark(remark));
      } else {
        told.add(second ? value.onlyIfRight(remark) : value);
      }
    }
    var question =
        new Unclear(
            words.say(
                "unclear.which",
                "one",
                words.exact(both.get(0).value()),
                "other",
                words.exact(both.get(1).value())));
    boolean ask = written.doubtful() && values.otherwise().isEmpty();
    return new Values(told, ask ? Optional.of(question) : values.otherwise());
  }

  private ReadAnswer plain(WrittenNumber written, String rest, ExpectedAnswer answer) {
    if (answer instanceof NumberAnswer number) {
      return ofNumber(written, rest, number);
    }
    if (answer instanceof PercentAnswer percent) {
      return ofPercent(written, rest, percent);
    }
    return answer instanceof ThermalTimeAnswer sum
        ? ofThermalTime(written, rest, sum)
        : ofTemperature(written, rest, (TemperatureAnswer) answer);
  }

  private String withoutNameBefore(String text, NumberAnswer answer) {
    int digit = 0;
    while (digit < text.length() && !Character.isDigit(text.charAt(digit))) {
      digit++;
    }
    var before = text.substring(0, digit).strip();
    boolean known = !before.isEmpty() && (isCurrency(before) || isNamed(before, answer));
    return known ? text.substring(digit) : text;
  }

  private boolean isCurrency(String word) {
    var lower = word.toLowerCase(Locale.ROOT);
    return CURRENCIES.contains(lower)
        || lower.equals(exercise.context().setting().currency().toLowerCase(Locale.ROOT));
  }

  private static boolean isNamed(String rest, NumberAnswer answer) {
    var plain = ChoiceText.plain(rest);
    return answer.of().stream()
        .anyMatch(of -> rest.equals(of) || ChoiceText.plain(of).equals(plain));
  }

  private ReadAnswer ofNumber(WrittenNumber written, String rest, NumberAnswer answer) {
    var values = values(written, answer, 1, "");
    if (rest.isEmpty() || isCurrency(rest) || isNamed(rest, answer)) {
      return new Values(values, Optional.empty());
    }
    var found = kind(rest);
    if (found.equals(AnswerKind.PERCENT)) {
      var reason = KindReason.of(words, found, AnswerKind.NUMBER);
      var first = written.readings().get(0).value();
      return new Values(
          values(written, answer, 0.01, "").stream().map(one -> one.onlyIfRight("")).toList(),
          Optional.of(new WrongKind(words.exact(first) + " %", first, reason)));
    }
    boolean measured =
        !found.equals(AnswerKind.NUMBER)
            && !found.equals(AnswerKind.PER_THING)
            && !found.is(QuantityKind.COUNT);
    if (measured) {
      return wrong(written, rest, found, AnswerKind.NUMBER);
    }
    return DIGIT.matcher(rest).find() && !isNamed(rest, answer)
        ? new Unclear(words.say("unclear.two"))
        : new Values(values, Optional.empty());
  }

  private ReadAnswer ofPercent(WrittenNumber written, String rest, PercentAnswer answer) {
    if (UnitWords.isPercent(rest)) {
      return new Values(values(written, answer, 1, ""), Optional.empty());
    }
    if (rest.isEmpty()) {
      var all = new ArrayList<>(values(written, answer, 1, ""));
      if (Math.abs(written.readings().get(0).value()) <= SMALL_SHARE) {
        var share = words.say("remark.share");
        values(written, answer, 100, share).forEach(one -> all.add(one.onlyIfRight(share)));
      }
      return new Values(all, Optional.empty());
    }
    var found = kind(rest);
    if (!found.equals(AnswerKind.NUMBER)) {
      return wrong(written, rest, found, AnswerKind.PERCENT);
    }
    return DIGIT.matcher(rest).find()
        ? new Unclear(words.say("unclear.two"))
        : new Unclear(words.say("unclear.word", "word", rest));
  }

  private ReadAnswer ofThermalTime(WrittenNumber written, String rest, ThermalTimeAnswer answer) {
    if (rest.isEmpty()) {
      return missing(written, answer);
    }
    boolean days = answer.unit() != ThermalTimeUnit.CELSIUS_HOUR;
    var unit = UnitWords.thermalTime(rest, days ? answer.unit() : units.thermalTime());
    if (unit.isEmpty()) {
      return unreadUnit(written, rest, AnswerKind.THERMAL_TIME);
    }
    double factor = ThermalTime.of(1, unit.get()).in(answer.unit());
    return new Values(
        written.readings().stream()
            .map(one -> value(one, answer, one.times(factor), unit.get().symbol()))
            .toList(),
        Optional.empty());
  }

  private ReadAnswer ofTemperature(WrittenNumber written, String rest, TemperatureAnswer answer) {
    if (rest.isEmpty()) {
      return missing(written, answer);
    }
    var unit = UnitWords.temperature(rest, answer.unit());
    if (unit.isEmpty()) {
      return unreadUnit(written, rest, AnswerKind.TEMPERATURE);
    }
    double degree =
        unit.get().degreeInCelsius().convert(1) / answer.unit().degreeInCelsius().convert(1);
    return new Values(
        written.readings().stream()
            .map(
                one ->
                    value(
                        one,
                        answer,
                        new NumberReading(
                            answer.unit().fromCelsius(unit.get().toCelsius(one.value())),
                            one.halfDigit() * degree),
                        unit.get().symbol()))
            .toList(),
        Optional.empty());
  }

  private ReadAnswer unreadUnit(WrittenNumber written, String rest, AnswerKind wanted) {
    var found = kind(rest);
    if (!found.equals(AnswerKind.NUMBER)) {
      return wrong(written, rest, found, wanted);
    }
    return new Unclear(
        DIGIT.matcher(rest).find()
            ? words.say("unclear.two")
            : words.say("unclear.word", "word", rest));
  }

  private ReadAnswer wrong(
      WrittenNumber written, String rest, AnswerKind found, AnswerKind wanted) {
    double number = written.readings().get(0).value();
    return new WrongKind(
        words.exact(number) + " " + rest, number, KindReason.of(words, found, wanted));
  }

  /** The kind of what a unit measures; a number where the words are no unit. */
  AnswerKind kind(String unit) {
    var rest = unit.strip();
    if (rest.isEmpty()) {
      return AnswerKind.NUMBER;
    }
    if (UnitWords.isPercent(rest)) {
      return AnswerKind.PERCENT;
    }
    if (UnitWords.thermalTime(rest, units.thermalTime()).isPresent()) {
      return AnswerKind.THERMAL_TIME;
    }
    if (UnitWords.temperature(rest, units.temperature()).isPresent()) {
      return AnswerKind.TEMPERATURE;
    }
    var candidates = UnitCandidates.of(rest);
    return candidates.isEmpty() ? AnswerKind.NUMBER : UnitCandidates.kind(candidates.get(0));
  }

  private ReadAnswer missing(WrittenNumber written, ExpectedAnswer answer) {
    return new Values(
        values(written, answer, 1, "").stream().map(ReadValue::withoutUnit).toList(),
        Optional.empty());
  }

  private List<ReadValue> values(
      WrittenNumber written, ExpectedAnswer answer, double factor, String remark) {
    return written.readings().stream()
        .map(
            one -> {
              var symbol = answer instanceof PercentAnswer ? "%" : "";
              return value(one, answer, one.times(factor), symbol).withRemark(remark);
            })
        .toList();
  }

  private ReadValue value(
      NumberReading typed, ExpectedAnswer answer, NumberReading number, String symbol) {
    double printed = answer instanceof PercentAnswer ? number.value() : typed.value();
    return new ReadValue(
        AnswerNumbers.value(answer, number.value()),
        number.value(),
        number.halfDigit(),
        typed.value(),
        (words.exact(printed) + " " + symbol).strip(),
        false,
        false,
        "");
  }
}
