package agro.development.rate;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads rearings from delimited text. */
final class RearingReader {

  private static final String CABINET = "cabinet";
  private static final String SET = "set_celsius";
  private static final String MEASURED = "measured_celsius";
  private static final String DAYS = "days";
  private static final String NUMBER = "n";
  private static final String DEVIATION = "sd_days";
  private static final String FROM = "from_days";
  private static final String TO = "to_days";
  private static final String FATE = "fate";
  private static final String NONE = "none";

  private RearingReader() {}

  static RearingData means(String subject, Path file, DelimitedFormat format) {
    var text = DelimitedText.read(file, format, List.of(SET, DAYS)).requireRows();
    var report = new ReadReport.Collector(text.name());
    var means = new ArrayList<RearingMean>();
    for (var line : text.lines()) {
      report.countRow();
      means.add(mean(line));
    }
    noteTemperatures(text, report);
    return new RearingData(subject, means, List.of(), report.report());
  }

  private static RearingMean mean(DelimitedLine line) {
    var days =
        line.text(DAYS).equalsIgnoreCase(NONE)
            ? OptionalDouble.empty()
            : OptionalDouble.of(RearingChecks.days(line.number(DAYS), line.location(DAYS)));
    return new RearingMean(
        line.optionalText(CABINET).orElse(""),
        RearingChecks.celsius(line.number(SET), line.location(SET)),
        measured(line),
        days,
        number(line),
        deviation(line));
  }

  private static OptionalDouble measured(DelimitedLine line) {
    var measured = line.optionalNumber(MEASURED);
    measured.ifPresent(value -> RearingChecks.celsius(value, line.location(MEASURED)));
    return measured;
  }

  private static OptionalInt number(DelimitedLine line) {
    var number = line.optionalWholeNumber(NUMBER);
    number.ifPresent(value -> RearingChecks.count(value, line.location(NUMBER)));
    return number;
  }

  private static OptionalDouble deviation(DelimitedLine line) {
    var deviation = line.optionalNumber(DEVIATION);
    deviation.ifPresent(value -> RearingChecks.deviation(value, line.location(DEVIATION)));
    return deviation;
  }

  static RearingData animals(String subject, Path file, DelimitedFormat format) {
    var text = DelimitedText.read(file, format, List.of(SET, FROM, TO, FATE)).requireRows();
    var report = new ReadReport.Collector(text.name());
    var animals = new ArrayList<RearedAnimals>();
    for (var line : text.lines()) {
      report.countRow();
      animals.add(animals(line));
    }
    noteTemperatures(text, report);
    long dead = animals.stream().filter(one -> one.fate() == RearingFate.DIED).count();
    if (dead > 0) {
      report.add(
          Deed.ASSUMED,
          text.location(),
          "animals of "
              + dead
              + (dead == 1 ? " line" : " lines")
              + " that died count as not yet developed until their last look; so death is taken to"
              + " strike slow and fast ones alike");
    }
    return new RearingData(subject, RearingData.meansOf(animals), animals, report.report());
  }

  private static RearedAnimals animals(DelimitedLine line) {
    var fate = line.choice(FATE, RearingFate.class);
    double from = line.number(FROM);
    var to = line.optionalNumber(TO);
    if (to.isPresent() != (fate == RearingFate.DEVELOPED)) {
      throw InputProblem.at(
              line.location(TO),
              to.isPresent()
                  ? "animals that did not develop have a day on which they were seen developed"
                  : "developed animals have no day on which that was seen")
          .expected("a day for the fate developed, an empty cell for alive and died")
          .because("only a development that was seen has an end")
          .mend("correct the fate or the day");
    }
    double end = to.orElse(Double.POSITIVE_INFINITY);
    RearingChecks.interval(from, end, line.location(to.isPresent() ? TO : FROM));
    return new RearedAnimals(
        line.optionalText(CABINET).orElse(""),
        RearingChecks.celsius(line.number(SET), line.location(SET)),
        measured(line),
        from,
        end,
        fate,
        number(line).orElse(1));
  }

  private static void noteTemperatures(DelimitedText text, ReadReport.Collector report) {
    long without =
        text.lines().stream().filter(line -> line.optionalNumber(MEASURED).isEmpty()).count();
    if (without > 0) {
      report.add(
          Deed.ASSUMED,
          SourceLocation.file(text.name()),
          "the set temperature stands for the measured one in "
              + without
              + " of "
              + text.lines().size()
              + " lines");
    }
  }
}
