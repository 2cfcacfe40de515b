package agro.trial;

import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The page that shows a trial: what it consists of, and what was done to its data. */
final class TrialPage {

  private TrialPage() {}

  static Presentation of(FieldTrial trial) {
    var page = Presentation.titled(trial.name());
    var review = trial.review();
    review
        .designs()
        .forEach(
            (environment, design) ->
                page.fact(
                    environment.isEmpty() ? "Design" : "Design at " + environment, design.words()));
    page.fact("Plots", Integer.toString(trial.plots().size()));
    page.fact("Treatment factors", String.join(", ", trial.factors()));
    if (!trial.controls().isEmpty()) {
      page.fact("Control", String.join("; ", trial.controls()));
    }
    page.fact(
        "Variables",
        trial.responses().stream()
            .map(response -> response.heading() + " (" + response.kind().words() + ")")
            .collect(Collectors.joining("; ")));
    if (!trial.dates().isEmpty()) {
      page.fact(
          "Days of assessment",
          trial.dates().stream().map(LocalDate::toString).collect(Collectors.joining(", ")));
    }
    page.table(treatments(trial));
    page.part(review.presentation());
    page.part(trial.corrections().presentation());
    return page.part(Presentation.of(trial.report())).build();
  }

  private static ResultTable treatments(FieldTrial trial) {
    var rows = new ArrayList<List<Cell>>();
    trial
        .replicates()
        .forEach(
            (treatment, plots) -> rows.add(List.of(Cell.text(treatment), Cell.number(plots, 0))));
    return ResultTable.of(
        "Treatments",
        List.of(ResultTable.Column.of("Treatment"), ResultTable.Column.of("Plots")),
        rows);
  }
}
