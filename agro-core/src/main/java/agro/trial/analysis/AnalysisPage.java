package agro.trial.analysis;

import agro.stats.linear.ContrastEstimate;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** The page of an analysed trial: checks before tests, tests before means. */
final class AnalysisPage {

  private AnalysisPage() {}

  static Presentation of(AnalysedTrial trial) {
    var page = builder(trial);
    return page.sources(trial.sources()).build();
  }

  /** Without the list of sources, for pages that hold several analyses. */
  static Presentation withoutSources(AnalysedTrial trial) {
    return builder(trial).build();
  }

  private static Presentation.Builder builder(AnalysedTrial trial) {
    var subject = trial.subject();
    var page = Presentation.titled(subject.title() + ": " + subject.route().words());
    page.fact("Trial", subject.trial());
    page.fact("Design", subject.design().words());
    page.fact("Scale", subject.transformation().words());
    trial.reasons().forEach(page::paragraph);
    if (!trial.checks().isEmpty()) {
      page.table(trial.checkTable());
    }
    trial.advice().forEach(page::paragraph);
    page.paragraph(sentenceOf(trial));
    trial.effectTable().ifPresent(page::table);
    scale(trial).forEach(page::paragraph);
    for (var means : trial.means()) {
      page.table(trial.meansTable(means));
      page.paragraph(caption(trial, means));
      trial.differenceTable(means).ifPresent(page::table);
    }
    if (!trial.contrasts().isEmpty()) {
      page.table(contrasts(trial.contrasts()));
    }
    page.paragraph(precision(trial));
    page.table(trial.blockTable());
    return page;
  }

  static String sentenceOf(AnalysedTrial trial) {
    var rows = trial.treatmentEffects();
    var words = new ArrayList<String>();
    for (var row : rows) {
      boolean named = row.test().isPresent() && !row.note().isEmpty();
      words.add(row.sentence() + (named ? " (" + row.note() + ")" : ""));
    }
    var sentence = String.join(". ", words);
    return MeanMaker.sentence(sentence);
  }

  private static List<String> scale(AnalysedTrial trial) {
    var subject = trial.subject();
    var notes = new ArrayList<String>();
    if (!subject.transformation().isNone()) {
      notes.add(
          "Tests, letters and differences belong to the scale "
              + subject.transformation().words()
              + ". Means and limits are carried back from it; they are no arithmetic means, and a"
              + " difference of them has no test of its own.");
    } else if (subject.route().isGeneralisedLinear()) {
      notes.add(
          "Tests, letters and limits belong to the scale of the model's link; means and limits are"
              + " carried back from it.");
    }
    return notes;
  }

  private static String caption(AnalysedTrial trial, TreatmentMeans means) {
    var words = new ArrayList<String>();
    if (!means.method().isEmpty()) {
      var level = Numbers.plain(trial.subject().level());
      boolean control =
          trial.subject().control().isPresent() && means.equals(trial.treatmentMeans());
      words.add(
          control
              ? "A star marks means that differ from the control "
                  + trial.subject().control().get()
                  + " ("
                  + means.method()
                  + ", level "
                  + level
                  + ")."
              : "Means that share a letter are not declared different ("
                  + means.method()
                  + ", level "
                  + level
                  + ").");
    }
    words.addAll(means.notes());
    return String.join(" ", words);
  }

  private static ResultTable contrasts(List<ContrastEstimate> contrasts) {
    var rows = new ArrayList<List<Cell>>();
    for (var each : contrasts) {
      int decimals = TableNumbers.decimals(DoubleStream.of(each.estimate(), each.standardError()));
      rows.add(
          List.of(
              Cell.text(each.name()),
              TableNumbers.cell(each.estimate(), decimals),
              TableNumbers.cell(each.standardError(), decimals),
              Cell.text(each.sentence())));
    }
    var columns =
        List.of(
            Column.of("Contrast"),
            Column.of("Estimate"),
            Column.of("Standard error"),
            Column.of("Test"));
    return ResultTable.of("Contrasts", columns, rows);
  }

  static String precision(AnalysedTrial trial) {
    var precision = trial.precision();
    var words = new ArrayList<String>();
    precision
        .coefficientOfVariationPercent()
        .ifPresent(
            percent -> words.add("Coefficient of variation " + Numbers.fixed(percent, 1) + " %."));
    double df = precision.residualDegreesOfFreedom();
    if (Double.isFinite(df) && df > 0) {
      words.add(
          "Residual degrees of freedom "
              + (df == Math.rint(df) ? Numbers.plain(df) : Numbers.fixed(df, 1))
              + (precision.hasFewDegreesOfFreedom()
                  ? ": fewer than the 12 that trials of efficacy should have (EPPO PP 1/152, value"
                      + " from memory), so that only large differences can be shown."
                  : "."));
    }
    precision
        .blocking()
        .forEach(
            (name, gain) ->
                words.add(
                    "Relative efficiency of "
                        + name
                        + "s "
                        + Numbers.fixed(gain.ratio(), 2)
                        + (gain.ratio() > 1
                            ? ": as many plots without them would have been less precise."
                            : ": they gained nothing here.")));
    return words.isEmpty() ? "No error was estimated." : String.join(" ", words);
  }
}
