package agro.weather.quality;

import agro.source.Reference;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Collectors;

/** Flags as a person reads them. */
final class QualityPages {

  /** Flags of one rule that the table lists; the rest are counted. */
  private static final int MOST_OF_A_RULE = 10;

  private QualityPages() {}

  static Presentation page(QualityFlags flags) {
    int flagged = flags.valuesFlagged(EnumSet.allOf(QualityRule.class));
    var page =
        Presentation.titled("Quality of a temperature log")
            .fact("Series", flags.series())
            .fact("Values checked", Integer.toString(flags.valuesChecked()))
            .fact(
                "Values flagged",
                flagged
                    + (flags.valuesChecked() == 0
                        ? ""
                        : " ("
                            + Numbers.significant(100.0 * flagged / flags.valuesChecked(), 2)
                            + " %)"))
            .paragraph(
                "A flag is a question to whoever knows the place, and no verdict: a front makes a"
                    + " step, and a frost may be a record. Nothing was changed.")
            .table(summary(flags));
    if (!flags.all().isEmpty()) {
      page.table(list(flags));
    }
    if (!flags.notChecked().isEmpty()) {
      page.paragraph("Not checked: " + String.join("; ", flags.notChecked()) + ".");
    }
    return page.sources(sources(flags)).build();
  }

  private static List<Reference> sources(QualityFlags flags) {
    var sources = new LinkedHashSet<Reference>();
    flags.applied().forEach(check -> sources.addAll(check.rule().sources()));
    return List.copyOf(sources);
  }

  /** One line for each rule that was applied. */
  static ResultTable summary(QualityFlags flags) {
    var rows = new ArrayList<List<Cell>>();
    for (var check : flags.applied()) {
      var rule = EnumSet.of(check.rule());
      rows.add(
          List.of(
              Cell.text(check.rule().words()),
              Cell.text(check.limits()),
              Cell.number(flags.of(check.rule()).size(), 0),
              Cell.number(flags.valuesFlagged(rule), 0),
              Cell.text(
                  check.rule().sources().stream()
                      .map(Reference::shortCitation)
                      .collect(Collectors.joining("; ")))));
    }
    return ResultTable.of(
        "Rules",
        List.of(
            Column.of("Rule"),
            Column.of("Limit"),
            Column.of("Flags"),
            Column.of("Values"),
            Column.of("Source of rule and usual limit")),
        rows);
  }

  /** The flags, at most some of each rule. */
  static ResultTable list(QualityFlags flags) {
    var rows = new ArrayList<List<Cell>>();
    var notes = new ArrayList<String>();
    for (var rule : flags.rulesBroken()) {
      var ofRule = flags.of(rule);
      ofRule.stream().limit(MOST_OF_A_RULE).forEach(flag -> rows.add(row(flag)));
      if (ofRule.size() > MOST_OF_A_RULE) {
        notes.add(
            "Rule \""
                + rule.words()
                + "\": the first "
                + MOST_OF_A_RULE
                + " of "
                + ofRule.size()
                + " flags.");
      }
    }
    return new ResultTable(
        "Flags",
        List.of(
            Column.of("When"),
            Column.of("Value flagged"),
            Column.of("Rule"),
            Column.of("Found"),
            Column.of("Limit"),
            Column.of("Unit"),
            Column.of("Why")),
        rows,
        notes);
  }

  private static List<Cell> row(QualityFlag flag) {
    var what =
        flag.element() == FlaggedValue.READING && flag.places() > 1
            ? flag.places() + " readings"
            : flag.element().words();
    return List.of(
        Cell.text(flag.when()),
        Cell.text(what),
        Cell.text(flag.rule().words()),
        Cell.number(flag.value(), 1),
        Cell.number(flag.limit(), 1),
        Cell.text(flag.unit()),
        Cell.text(flag.why()));
  }
}
