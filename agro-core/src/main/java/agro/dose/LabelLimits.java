package agro.dose;

import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The limits of one label for one use, as they were recorded. What is not in the list counts as not
 * recorded, and never as unlimited.
 *
 * @param use product, crop and pest, for print, for example {@code "Product A on leeks"}
 * @param limits the limits in any order; several of one kind differ in scope or condition
 */
public record LabelLimits(String use, List<LabelLimit> limits) implements Presentable {

  /** Copies the list. */
  public LabelLimits {
    Objects.requireNonNull(use, "use");
    limits = List.copyOf(limits);
  }

  /**
   * A record in which nothing has been entered.
   *
   * @param use product, crop and pest
   * @return the record
   */
  public static LabelLimits of(String use) {
    return new LabelLimits(use, List.of());
  }

  /**
   * This record with one more limit.
   *
   * @param limit the limit
   * @return a new record
   */
  public LabelLimits with(LabelLimit limit) {
    var more = new ArrayList<>(limits);
    more.add(Objects.requireNonNull(limit, "limit"));
    return new LabelLimits(use, more);
  }

  /**
   * The limits of one kind.
   *
   * @param kind type of the limit
   * @param <L> the type
   * @return the limits in the order in which they were entered; empty if none was
   */
  public <L extends LabelLimit> List<L> of(Class<L> kind) {
    return limits.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /**
   * What is known of a bound of the dose in one scope, where no condition is attached.
   *
   * @param bound highest or lowest
   * @param scope over what it is counted
   * @return the entry; not recorded if nobody entered one
   */
  public LabelEntry<DosePerArea> dose(DoseBound bound, LimitScope scope) {
    return of(DoseLimit.class).stream()
        .filter(limit -> limit.bound() == bound && limit.scope() == scope)
        .filter(limit -> limit.condition().isEmpty())
        .map(DoseLimit::entry)
        .findFirst()
        .orElse(LabelEntry.notRecorded());
  }

  /** The record as a table with its cautions; what nobody entered stands in no line of it. */
  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var limit : limits) {
      rows.add(
          List.of(
              Cell.text(limit.words()),
              Cell.text(limit.value()),
              Cell.text(limit.condition().map(UseCondition::words).orElse("always"))));
    }
    var table =
        ResultTable.of(
            "Limits of the label as recorded",
            List.of(
                ResultTable.Column.of("Limit"),
                ResultTable.Column.of("Value"),
                ResultTable.Column.of("Holds for")),
            rows);
    return Presentation.titled(use)
        .table(table.withNote("A limit that is not in this table is not recorded, not absent."))
        .cautions(Caution.all())
        .build();
  }
}
