package agro.trial.efficacy;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;

/**
 * Efficacy of all treatments of a trial on one date.
 *
 * @param control name of the control
 * @param formula the formula
 * @param advice which formula fits, and why
 * @param level level of the limits
 * @param treatments the treatments in natural order of their names
 */
public record TrialEfficacy(
    String control,
    EfficacyFormula formula,
    EfficacyAdvice advice,
    double level,
    List<TreatmentEfficacy> treatments)
    implements Presentable {

  /** Copies the list. */
  public TrialEfficacy {
    Objects.requireNonNull(control, "control");
    Objects.requireNonNull(formula, "formula");
    Objects.requireNonNull(advice, "advice");
    treatments = List.copyOf(treatments);
  }

  /**
   * One treatment.
   *
   * @param name its name
   * @return its efficacy
   * @throws InputProblem when there is no such treatment
   */
  public TreatmentEfficacy treatment(String name) {
    return treatments.stream()
        .filter(one -> one.treatment().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("the treatment \"" + name + '"')
                    .expected(
                        "one of " + treatments.stream().map(TreatmentEfficacy::treatment).toList())
                    .because("no other was held against the control")
                    .mend("write the name as it stands in the trial"));
  }

  /**
   * The table for print: one line for each treatment, pooled and mean of blocks side by side.
   *
   * @return the table
   */
  public ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    for (var one : treatments) {
      var printed = one.estimate().limitsToPrint().flatMap(EfficacyLimits::limits);
      rows.add(
          List.of(
              Cell.text(one.treatment()),
              cell(one.pooled()),
              cell(one.meanOfBlocks()),
              Cell.text(one.toPrint().words()),
              printed.<Cell>map(limits -> Cell.number(limits.low(), 1)).orElse(Cell.notKnown()),
              printed.<Cell>map(limits -> Cell.number(limits.high(), 1)).orElse(Cell.notKnown()),
              Cell.text(
                  one.estimate().limitsToPrint().map(l -> l.method().words()).orElse("none"))));
    }
    var table =
        ResultTable.of(
            "Efficacy against " + control + " after " + formula.title(),
            List.of(
                Column.of("Treatment"),
                Column.of("Pooled", "%"),
                Column.of("Mean of blocks", "%"),
                Column.of("To print"),
                Column.of("Lower limit", "%"),
                Column.of("Upper limit", "%"),
                Column.of("Limits by")),
            rows);
    for (var note : notes()) {
      table = table.withNote(note);
    }
    return table;
  }

  private static Cell cell(EfficacyEstimate estimate) {
    return estimate.percent().isPresent()
        ? Cell.number(estimate.percent().getAsDouble(), 1)
        : Cell.notKnown();
  }

  private List<String> notes() {
    var notes = new LinkedHashSet<String>();
    notes.add("Limits of " + Numbers.plain(100 * level) + " % belong to the value to print.");
    for (var one : treatments) {
      notes.addAll(one.notes());
      for (var estimate : List.of(one.pooled(), one.meanOfBlocks())) {
        if (estimate.percent().isEmpty()) {
          notes.add(
              one.treatment()
                  + ", "
                  + estimate.summary().words()
                  + ": no value, "
                  + estimate.undefined());
        }
      }
      one.estimate()
          .limitsToPrint()
          .filter(limits -> !limits.reason().isEmpty())
          .ifPresent(limits -> notes.add(one.treatment() + ": limits " + limits.reason()));
    }
    return List.copyOf(notes);
  }

  /**
   * Efficacy block by block.
   *
   * @return one line for each treatment and block
   */
  public ResultTable blockTable() {
    return detail("Efficacy by block", false);
  }

  /**
   * Efficacy plot by plot.
   *
   * @return one line for each treated plot
   */
  public ResultTable plotTable() {
    return detail("Efficacy by plot", true);
  }

  private ResultTable detail(String title, boolean plots) {
    var rows = new ArrayList<List<Cell>>();
    for (var one : treatments) {
      for (var part : plots ? one.plots() : one.blocks()) {
        rows.add(
            List.of(
                Cell.text(one.treatment()),
                Cell.text(part.block()),
                Cell.text(part.plot()),
                part.percent().isPresent()
                    ? Cell.number(part.percent().getAsDouble(), 1)
                    : Cell.notKnown(),
                Cell.text(part.undefined())));
      }
    }
    return ResultTable.of(
        title,
        List.of(
            Column.of("Treatment"),
            Column.of("Block"),
            Column.of("Plot"),
            Column.of("Efficacy", "%"),
            Column.of("Remark")),
        rows);
  }

  /**
   * All limits of all treatments, method by method.
   *
   * @return one line for each treatment, summary and method
   */
  public ResultTable limitsTable() {
    var rows = new ArrayList<List<Cell>>();
    for (var one : treatments) {
      for (var estimate : List.of(one.pooled(), one.meanOfBlocks())) {
        for (var limits : estimate.limits()) {
          rows.add(
              List.of(
                  Cell.text(one.treatment()),
                  Cell.text(estimate.summary().words()),
                  Cell.text(limits.method().words()),
                  Cell.text(limits.printed()),
                  Cell.text(limits.limits().isPresent() ? limits.reason() : "")));
        }
      }
    }
    return ResultTable.of(
        "Limits by method",
        List.of(
            Column.of("Treatment"),
            Column.of("Efficacy"),
            Column.of("Method"),
            Column.of("Limits"),
            Column.of("Remark")),
        rows);
  }

  @Override
  public Presentation presentation() {
    var builder =
        Presentation.titled("Efficacy")
            .fact("Control", control)
            .fact("Formula", formula.title() + ": " + formula.form());
    if (formula != advice.formula()) {
      builder.fact("Advice", "the data speak for " + advice.formula().title());
    }
    builder.paragraph(advice.reason()).table(table());
    var choices = new LinkedHashMap<String, List<String>>();
    for (var one : treatments) {
      choices
          .computeIfAbsent(
              "print " + one.toPrint().words() + ", because " + one.reason() + ".",
              choice -> new ArrayList<>())
          .add(one.treatment());
    }
    choices.forEach(
        (choice, names) ->
            builder.paragraph(
                (choices.size() == 1 ? "Every treatment" : String.join(", ", names))
                    + ": "
                    + choice));
    var sources = new LinkedHashSet<Reference>();
    sources.add(formula.source());
    treatments.forEach(
        one -> one.estimate().limitsToPrint().ifPresent(l -> sources.addAll(l.method().sources())));
    return builder.table(blockTable()).table(limitsTable()).sources(List.copyOf(sources)).build();
  }
}
