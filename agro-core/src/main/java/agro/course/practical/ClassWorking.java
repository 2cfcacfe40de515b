package agro.course.practical;

import agro.course.practical.GroupReadings.NozzleCatches;
import agro.course.practical.GroupReadings.Refilled;
import agro.course.practical.GroupReadings.TimedRuns;
import agro.course.practical.GroupReadings.UntimedCourse;
import agro.course.practical.GroupReadings.WholeOutput;
import agro.dose.sprayer.SprayUnits;
import agro.source.Reference;
import agro.units.Area;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Quantity;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.WorkTimeUnit;
import agro.working.Caution;
import agro.working.Working;
import java.util.List;
import java.util.stream.Collectors;

/** The steps of one group and of the pooling, in the language and units of print. */
final class ClassWorking {

  private static final int DIGITS = 5;

  private final ClassCalibration result;
  private final PoolingRules rules;
  private final PracticalWords words;
  private final SprayUnits units;

  ClassWorking(ClassCalibration result) {
    this.result = result;
    rules = result.rules();
    words = new PracticalWords(rules.language(), rules.style());
    units = PrintedUnits.of(rules.style());
  }

  Working group(GroupFinding one) {
    var steps = Working.of(words.say("working.group", "group", one.group()));
    var readings = one.readings();
    if (readings.pace() instanceof TimedRuns runs) {
      steps = speed(steps, runs);
    }
    steps =
        readings.output() instanceof Refilled refilled
            ? refill(steps, one, refilled)
            : flowAndVolume(steps, one);
    steps = interval(steps, one);
    steps =
        step(
            steps,
            "step.departure",
            "(V \u2212 V\u2080) / V\u2080",
            "("
                + volume(one.volume())
                + " \u2212 "
                + volume(one.compared())
                + ") / "
                + volume(one.compared()),
            words.departure(one.departure()));
    if (rules.dose().isPresent() && one.plotDose().isPresent()) {
      steps =
          step(
              steps,
              "step.dose",
              "D \u00d7 V / V\u2080",
              words.dose(rules.dose().get())
                  + " \u00d7 "
                  + words.significant(one.timesIntended(), 4),
              words.dose(one.plotDose().get()));
    }
    if (one.ownArithmetic().isPresent()) {
      steps = own(steps, one, one.ownArithmetic().get());
    }
    return words.isEnglish() ? steps.withCautions(Caution.all()) : steps;
  }

  private Working speed(Working steps, TimedRuns runs) {
    var mean = runs.times().mean();
    var named = steps;
    if (runs.times().count() > 1) {
      named =
          step(
              named,
              "step.mean.time",
              "t = \u03a3t / n",
              sum(runs.times().readings(), WorkTimeUnit.SECOND),
              words.in(mean, WorkTimeUnit.SECOND, DIGITS));
    }
    return step(
        named,
        "step.speed",
        "v = " + words.say("symbol.course") + " / t",
        words.in(runs.course(), course(), DIGITS)
            + " / "
            + words.in(mean, WorkTimeUnit.SECOND, DIGITS),
        words.in(runs.meanSpeed().orElseThrow(), units.speed(), DIGITS));
  }

  private Working flowAndVolume(Working start, GroupFinding one) {
    var readings = one.readings();
    var flow = readings.wholeFlow().orElseThrow();
    var speed = readings.pace().meanSpeed().orElseThrow();
    var width = readings.layout().treatedWidth();
    var steps = start;
    if (readings.output() instanceof NozzleCatches nozzles) {
      var single = flow.dividedBy(readings.layout().nozzles());
      steps =
          step(
              steps,
              "step.nozzle.flow",
              "q = \u03a3V / (n \u00d7 t)",
              catches(nozzles),
              words.in(single, units.flow(), DIGITS));
      if (readings.layout().nozzles() > 1) {
        steps =
            step(
                steps,
                "step.flow",
                "Q = n \u00d7 q",
                readings.layout().nozzles() + " \u00d7 " + words.in(single, units.flow(), DIGITS),
                words.in(flow, units.flow(), DIGITS));
      }
    } else if (readings.output() instanceof WholeOutput whole) {
      steps =
          step(
              steps,
              "step.flow",
              "Q = V / t",
              words.in(whole.volumes().mean(), units.caught(), DIGITS)
                  + " / "
                  + words.in(whole.time(), WorkTimeUnit.SECOND, DIGITS),
              words.in(flow, units.flow(), DIGITS));
    }
    var constant = words.significant(units.constant().convert(1), 10);
    return step(
        steps,
        "step.volume",
        "V = " + constant + " \u00d7 Q / (v \u00d7 " + words.say("symbol.width") + ")",
        constant
            + " \u00d7 "
            + words.in(flow, units.flow(), DIGITS)
            + " / ("
            + words.in(speed, units.speed(), DIGITS)
            + " \u00d7 "
            + words.in(width, units.width(), DIGITS)
            + ")",
        volume(one.volume()),
        PracticalSources.VOLUME_EQUATION);
  }

  /** Catches by nozzle; a blocked nozzle gives nothing and is left out of the mean. */
  private String catches(NozzleCatches nozzles) {
    var all =
        nozzles.catches().stream()
            .flatMap(one -> one.volumes().stream())
            .filter(volume -> volume.litres() > 0)
            .toList();
    return sum(all, units.caught()).replaceAll(" / [0-9]+$", "")
        + " / ("
        + all.size()
        + " \u00d7 "
        + words.in(nozzles.time(), WorkTimeUnit.SECOND, DIGITS)
        + ")";
  }

  private Working refill(Working steps, GroupFinding one, Refilled refilled) {
    var pace = one.readings().pace();
    Length course =
        pace instanceof TimedRuns runs ? runs.course() : ((UntimedCourse) pace).course();
    var width = one.readings().layout().treatedWidth();
    Volume used = refilled.volumes().mean();
    Area area = course.times(width);
    return step(
        steps,
        "step.refill",
        "V = "
            + words.say("symbol.refill")
            + " / ("
            + words.say("symbol.course")
            + " \u00d7 "
            + words.say("symbol.width")
            + ")",
        words.in(used, units.caught(), DIGITS)
            + " / "
            + words.in(area, rules.style().unitFor(area), DIGITS),
        volume(one.volume()));
  }

  private Working interval(Working steps, GroupFinding one) {
    var known = one.calibration().uncertainty();
    var half = one.relativeHalfWidth(rules.confidence());
    if (known.isEmpty() || half.isEmpty()) {
      return step(steps, "step.own.interval", "", "", words.say("not.repeated"));
    }
    return step(
        steps,
        "step.own.interval",
        "V \u00d7 (1 \u00b1 t \u00d7 u)",
        volume(one.volume())
            + " \u00d7 (1 \u00b1 "
            + words.significant(known.get().factor(rules.confidence()), 4)
            + " \u00d7 "
            + words.significant(known.get().standard(), 3)
            + ")",
        volume(one.volume()) + " \u00b1 " + words.percent(half.getAsDouble(), 1),
        PracticalSources.T_INTERVAL);
  }

  private Working own(Working steps, GroupFinding one, OwnArithmetic own) {
    return step(
        steps,
        "step.own",
        words.say("symbol.own") + " / V",
        volume(own.own()) + " / " + volume(one.volume()),
        words.significant(own.timesOurs(), 4)
            + ": "
            + (own.agrees() ? words.say("own.agrees") : new ClassTables(result).slips(own)));
  }

  Working pooling() {
    var all = result.all();
    var n = all.groups();
    var steps = Working.of(words.say("working.pooling", "groups", n));
    steps = step(steps, "step.mean", "x\u0304 = \u03a3x / n", "", volume(all.mean()));
    if (all.standardDeviation().isPresent() && all.interval().isPresent()) {
      var spread = all.standardDeviation().get();
      steps =
          step(
              steps,
              "step.deviation",
              "s = \u221a(\u03a3(x \u2212 x\u0304)\u00b2 / (n \u2212 1))",
              "",
              volume(spread));
      steps =
          step(
              steps,
              "step.variation",
              "CV = s / x\u0304",
              volume(spread) + " / " + volume(all.mean()),
              words.percent(all.coefficientOfVariation().orElseThrow(), 1));
      steps =
          step(
              steps,
              "step.interval",
              "x\u0304 \u00b1 t \u00d7 s / \u221an",
              volume(all.mean())
                  + " \u00b1 "
                  + words.significant(ClassStatistics.factor(n, all.confidence()), 4)
                  + " \u00d7 "
                  + volume(spread)
                  + " / \u221a"
                  + n,
              volume(all.interval().get().low()) + " \u2013 " + volume(all.interval().get().high()),
              PracticalSources.T_INTERVAL);
    }
    return outliers(steps);
  }

  private Working outliers(Working start) {
    var all = result.all();
    var steps = step(start, "step.median", "x\u0303", "", volume(all.median()));
    steps =
        step(
            steps,
            "step.median.deviation",
            "MAD = " + words.say("symbol.median") + " |x \u2212 x\u0303|",
            "",
            volume(all.medianDeviation()));
    if (all.modifiedScore(all.median()).isEmpty()) {
      return step(steps, "step.score", "", "", words.say("score.none"));
    }
    return step(
        steps,
        "step.score",
        "|M| = "
            + words.significant(0.6745, 4)
            + " \u00d7 |x \u2212 x\u0303| / MAD > "
            + words.significant(rules.outlierLimit(), 3),
        "",
        result.outliers().isEmpty()
            ? words.say("nobody")
            : result.outliers().stream()
                .map(
                    one ->
                        one.group()
                            + " ("
                            + words
                                .significant(one.modifiedScore().orElseThrow(), 2)
                                .replace('-', '\u2212')
                            + ")")
                .collect(Collectors.joining(", ")),
        PracticalSources.OUTLIERS);
  }

  private Unit<Length> course() {
    return units.width() == LengthUnit.INCH ? LengthUnit.FOOT : units.width();
  }

  private <Q extends Quantity<Q>> String sum(List<Q> readings, Unit<Q> unit) {
    return readings.stream()
            .map(one -> words.significant(one.in(unit), DIGITS))
            .collect(Collectors.joining(" + ", "(", ") " + unit.symbol()))
        + " / "
        + readings.size();
  }

  private String volume(VolumePerArea volume) {
    return words.in(volume, units.volume(), DIGITS);
  }

  private Working step(
      Working steps, String key, String formula, String put, String found, Reference... sources) {
    return words.isEnglish()
        ? steps.step(words.say(key), formula, put, found, sources)
        : steps.step(words.say(key), formula, put, found);
  }
}
