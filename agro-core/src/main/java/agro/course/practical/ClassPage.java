package agro.course.practical;

import agro.dose.sprayer.SprayUnits;
import agro.source.Reference;
import agro.units.VolumePerArea;
import agro.working.Presentation;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The page of a class's calibrations. */
final class ClassPage {

  private static final int DIGITS = 4;

  private final ClassCalibration result;
  private final PoolingRules rules;
  private final PracticalWords words;
  private final SprayUnits units;
  private final ClassTables tables;

  ClassPage(ClassCalibration result) {
    this.result = result;
    rules = result.rules();
    words = new PracticalWords(rules.language(), rules.style());
    units = PrintedUnits.of(rules.style());
    tables = new ClassTables(result);
  }

  Presentation presentation() {
    var page = Presentation.titled(words.say("title"));
    facts(page);
    remarks().forEach(page::paragraph);
    page.table(tables.groups());
    if (!result.arithmeticDiffers().isEmpty()) {
      page.table(tables.slips());
    }
    page.working(result.pooling());
    words.cautions(page);
    words.sources(page, sources());
    return page.build();
  }

  private void facts(Presentation.Builder page) {
    var all = result.all();
    page.fact(words.say("fact.groups"), Integer.toString(all.groups()));
    if (!result.emptyGroups().isEmpty()) {
      page.fact(words.say("fact.empty"), String.join(", ", result.emptyGroups()));
    }
    page.fact(words.say("fact.mean"), mean(all));
    if (all.standardDeviation().isPresent()) {
      page.fact(
          words.say("fact.spread"),
          volume(all.standardDeviation().get())
              + ", "
              + words.say(
                  "fact.variation",
                  "percent",
                  words.percent(all.coefficientOfVariation().orElseThrow(), 1)));
    }
    page.fact(
        words.say("fact.median"), volume(all.median()) + ", MAD " + volume(all.medianDeviation()));
    if (!result.outliers().isEmpty()) {
      page.fact(words.say("fact.mean.kept"), mean(result.withoutOutliers()));
    }
    page.fact(words.say("fact.compared"), compared());
    page.fact(
        words.say("fact.tolerance"),
        "\u00b1"
            + words.percent(rules.tolerance().share(), 0)
            + " ["
            + words.say("standing." + rules.tolerance().source().standing().name())
            + "]");
    rules.dose().ifPresent(dose -> page.fact(words.say("fact.dose"), words.dose(dose)));
    page.fact(words.say("fact.off"), names(result.offTolerance(), this::off));
    page.fact(words.say("fact.outliers"), names(result.outliers(), GroupFinding::group));
    var nozzles = result.findings().stream().filter(one -> !one.oddNozzles().isEmpty()).toList();
    if (!nozzles.isEmpty()) {
      page.fact(
          words.say("fact.nozzles"),
          names(nozzles, one -> one.group() + ": " + String.join(", ", one.oddNozzles())));
    }
    page.fact(words.say("fact.arithmetic"), names(result.arithmeticDiffers(), GroupFinding::group));
  }

  private String mean(ClassStatistics some) {
    return some.interval()
        .map(
            range ->
                words.say(
                    "mean.with.interval",
                    "mean",
                    volume(some.mean()),
                    "level",
                    words.percent(some.confidence(), 0),
                    "low",
                    volume(range.low()),
                    "high",
                    volume(range.high())))
        .orElse(volume(some.mean()));
  }

  private String compared() {
    var name = words.say("benchmark." + result.benchmark().name());
    return switch (result.benchmark()) {
      case MEAN -> name + ", " + volume(result.all().mean());
      case MEDIAN -> name + ", " + volume(result.all().median());
      case TARGET -> result.commonTarget().map(target -> name + ", " + volume(target)).orElse(name);
    };
  }

  private String off(GroupFinding one) {
    return one.group() + " (" + words.departure(one.departure()) + ")";
  }

  private String names(List<GroupFinding> some, Function<GroupFinding, String> name) {
    return some.isEmpty()
        ? words.say("nobody")
        : some.stream().map(name).collect(Collectors.joining(", "));
  }

  /** What the reader should know of these figures, one paragraph each. */
  List<String> remarks() {
    var remarks = new ArrayList<String>();
    var all = result.all();
    var kept = result.withoutOutliers();
    remarks.add(words.say("remark.dose." + result.benchmark().name()));
    double moved = all.mean().ratioTo(kept.mean()) - 1;
    if (Math.abs(moved) > 0.5 * rules.tolerance().share()) {
      remarks.add(words.say("remark.mean.moved", "percent", words.departure(moved)));
    }
    result.commonTarget().ifPresent(target -> wholeClass(target, kept, remarks));
    if (all.modifiedScore(all.median()).isEmpty()) {
      remarks.add(words.say("score.none"));
    }
    long once =
        result.findings().stream()
            .filter(one -> one.relativeHalfWidth(rules.confidence()).isEmpty())
            .count();
    if (once > 0) {
      remarks.add(words.say("remark.once", "groups", once));
    }
    long sprayers =
        result.findings().stream().map(one -> one.readings().sprayer()).distinct().count();
    if (sprayers > 1) {
      remarks.add(words.say("remark.sprayers", "sprayers", sprayers));
    }
    return remarks;
  }

  private void wholeClass(VolumePerArea target, ClassStatistics kept, List<String> remarks) {
    if (kept.interval().isPresent()
        && (kept.interval().get().low().compareTo(target) > 0
            || kept.interval().get().high().compareTo(target) < 0)) {
      remarks.add(
          words.say(
              "remark.whole.class", "percent", words.departure(kept.mean().ratioTo(target) - 1)));
    }
  }

  /** In English the steps of the pooling name the others. */
  private List<Reference> sources() {
    if (words.isEnglish()) {
      return List.of(
          PracticalSources.VOLUME_EQUATION, rules.tolerance().source(), PracticalSources.SLIPS);
    }
    return List.of(
        PracticalSources.VOLUME_EQUATION,
        PracticalSources.T_INTERVAL,
        PracticalSources.OUTLIERS,
        rules.tolerance().source(),
        PracticalSources.SLIPS);
  }

  private String volume(VolumePerArea volume) {
    return words.in(volume, units.volume(), DIGITS);
  }

  String summary() {
    return words.say(
        "summary",
        "groups",
        result.all().groups(),
        "mean",
        volume(result.all().mean()),
        "off",
        result.offTolerance().size());
  }
}
