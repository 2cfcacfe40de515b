package agro.course.practical;

import agro.units.QuantityStyle;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.List;

/** The page and table of common slips. */
final class SlipPage {

  private final DoseSlips slips;
  private final PracticalWords words;

  SlipPage(DoseSlips slips) {
    this.slips = slips;
    words = new PracticalWords(slips.language(), QuantityStyle.METRIC);
  }

  ResultTable table() {
    var columns =
        List.of(
            Column.of(words.say("slips.column.family")),
            Column.of(words.say("slips.column.slip")),
            Column.of(words.say("slips.column.ratio")),
            Column.of(words.say("slips.column.departure")),
            Column.of(words.say("slips.column.basis")));
    return ResultTable.of(
        words.say("slips.table"), columns, slips.byFamily().stream().map(this::row).toList());
  }

  private List<Cell> row(DoseSlip slip) {
    return List.of(
        Cell.text(words.say("slips.family." + slip.kind().family().name())),
        Cell.text(slip.name()),
        Cell.text(words.times(slip.ratio())),
        Cell.text(words.departure(slip.ratio() - 1)),
        Cell.text(words.say("slips.basis." + slip.kind().basis().name())));
  }

  Presentation presentation() {
    var page = Presentation.titled(words.say("slips.title"));
    page.paragraph(words.say("slips.about"));
    page.table(table());
    words.cautions(page);
    words.sources(page, List.of(PracticalSources.SLIPS, PracticalSources.EXACT_UNITS));
    return page.build();
  }
}
