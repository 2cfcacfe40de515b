package agro.dose.tank;

import agro.report.InputProblem;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.List;
import java.util.Optional;

/**
 * What is taken to the sprayer: for each field one table with a line for each thing that goes into
 * the tank, in the order in which it goes in, and one table of what to buy for all fields. What has
 * to be looked up before stands between them. A mix that goes against a label is named, and its
 * amounts are withheld.
 *
 * @param title heading of the sheet
 * @param jobs the fields in the order of print, at least one
 */
public record FillingSheet(String title, List<FieldJob> jobs) implements Presentable {

  /** Refuses a sheet without a field or without a heading. */
  public FillingSheet {
    jobs = List.copyOf(jobs);
    if (title.isBlank() || jobs.isEmpty()) {
      throw InputProblem.of("a sheet \"" + title + "\" for " + jobs.size() + " fields")
          .expected("a heading and at least one field")
          .because("a sheet without them tells nobody what to do where")
          .mend("name the sheet, and give it the mix of a field");
    }
  }

  /**
   * A sheet for some fields.
   *
   * @param title heading of the sheet
   * @param jobs the fields in the order of print
   * @return the sheet
   */
  public static FillingSheet of(String title, FieldJob... jobs) {
    return new FillingSheet(title, List.of(jobs));
  }

  /**
   * What goes into the tank for one field, in order.
   *
   * @param job one of the jobs of the sheet
   * @return a row for each step, a column for each kind of load; empty where the mix goes against a
   *     label, because nothing is to be measured out then
   */
  public Optional<ResultTable> fieldTable(FieldJob job) {
    return TankTables.isRefused(job.mix())
        ? Optional.empty()
        : Optional.of(FillingTables.field(job));
  }

  /**
   * Packs for all fields together; of a rate with a range they cover the high end. A product counts
   * as one across fields if it has one name there; packs are those of the first field that has any.
   *
   * @return a row for each product and choice; empty where no product has packs
   */
  public Optional<ResultTable> shopping() {
    return FillingTables.shopping(fillable());
  }

  private List<FieldJob> fillable() {
    return jobs.stream().filter(job -> !TankTables.isRefused(job.mix())).toList();
  }

  private Optional<String> orderNote() {
    var sources =
        fillable().stream()
            .filter(job -> job.mix().plan().partners().size() > 1)
            .map(job -> job.mix().plan().order().source().citation())
            .distinct()
            .toList();
    return sources.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Order of mixing after "
                + String.join("; ", sources)
                + ". A label that gives another order or forbids the mix comes first; make a jar"
                + " test before the tank is filled.");
  }

  @Override
  public Presentation presentation() {
    var page = Presentation.titled(title);
    for (var job : jobs) {
      var table = fieldTable(job);
      if (table.isPresent()) {
        page.table(table.get());
      } else {
        page.paragraph(FillingTables.refusal(job));
      }
    }
    orderNote().ifPresent(page::paragraph);
    FillingTables.warnings(fillable()).forEach(page::paragraph);
    shopping().ifPresent(page::table);
    return page.cautions(Caution.all()).build();
  }
}
