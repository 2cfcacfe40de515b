package agro.programme.interval;

import agro.dose.ApplicationLimit;
import agro.dose.DoseBound;
import agro.dose.DoseLimit;
import agro.dose.DosePerArea;
import agro.dose.LabelEntry;
import agro.programme.Spraying;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the maxima of a product leave on a day.
 *
 * @param spraying the application that is asked for
 * @param lines what each maximum leaves; empty if none is recorded
 * @param notRecorded what is not recorded or cannot be counted, as sentences
 */
public record LeftToUse(Spraying spraying, List<Line> lines, List<String> notRecorded)
    implements Presentable {

  /**
   * One maximum.
   *
   * @param record the label record or local rule
   * @param limit the maximum as recorded
   * @param left what is left in words, rounded down
   * @param number what is left: applications, or the amount per hectare in the unit of the
   *     maximum's base, which is kilogram, cubic metre or number
   * @param known whether all that was used is known; if not, less may be left
   */
  public record Line(String record, String limit, String left, double number, boolean known) {}

  /** Copies the lists. */
  public LeftToUse {
    lines = List.copyOf(lines);
    notRecorded = List.copyOf(notRecorded);
  }

  static LeftToUse of(SeasonRules rules, Spraying spraying) {
    var field = rules.programme().field(spraying.field());
    var planting = rules.programme().plantingFor(field.name(), spraying.day(field.zone()));
    var lines = new ArrayList<Line>();
    var unknown = new ArrayList<RuleFinding>();
    for (var product : spraying.products()) {
      var label =
          planting.flatMap(each -> rules.programme().labels().find(product.product(), each.crop()));
      if (label.isEmpty()) {
        unknown.add(
            RuleFinding.notRecorded(
                LimitRule.LABELLED_USE, product.product(), "label record of the use"));
      } else {
        var planned =
            PlannedProduct.of(rules, spraying, product, label.get(), planting.orElseThrow());
        numbers(planned, lines, unknown);
        amounts(planned, lines, unknown);
      }
    }
    return new LeftToUse(
        spraying,
        lines,
        unknown.stream()
            .filter(each -> each.permission() == Permission.NOT_RECORDED)
            .map(each -> each.record() + ", " + each.limit())
            .toList());
  }

  private static void numbers(PlannedProduct planned, List<Line> lines, List<RuleFinding> unknown) {
    for (var limit :
        planned.applicable(ApplicationLimit.class, each -> true, LimitRule.NUMBER, unknown)) {
      int most = ((LabelEntry.Stated<Integer>) limit.limit().entry()).value();
      var counted = UseBaskets.of(planned, limit.limit().scope());
      int used = counted.baskets().stream().mapToInt(List::size).max().orElse(0);
      int left = Math.max(0, most - used);
      lines.add(
          new Line(
              limit.record(),
              limit.words(),
              left + (left == 1 ? " application" : " applications"),
              left,
              counted.unknown().isEmpty()));
    }
  }

  private static void amounts(PlannedProduct planned, List<Line> lines, List<RuleFinding> unknown) {
    var sums = new ArrayList<AmountRule.AmountSum>();
    var silent = planned.label().caps().isEmpty() ? unknown : new ArrayList<RuleFinding>();
    planned
        .applicable(
            DoseLimit.class, each -> each.bound() == DoseBound.MAXIMUM, LimitRule.AMOUNT, silent)
        .forEach(limit -> sums.add(AmountRule.AmountSum.of(planned, limit)));
    for (var cap : AmountRule.caps(planned)) {
      var limit = new ApplicableLimit<>(cap.record(), cap.cap().limit(), true);
      sums.add(AmountRule.AmountSum.ofActive(planned, limit, cap.cap().active()));
    }
    for (var sum : sums) {
      var most = ((LabelEntry.Stated<DosePerArea>) sum.applicable().limit().entry()).value();
      lines.add(
          new Line(
              sum.applicable().record(),
              sum.applicable().words(),
              AmountPrints.down(sum.left(), most) + " of " + sum.what(),
              sum.left(),
              sum.unknown().isEmpty()));
    }
  }

  /**
   * Applications that are left, by the tightest maximum.
   *
   * @return the number; nothing if no maximum of applications is recorded
   */
  public OptionalDouble applications() {
    return lines.stream()
        .filter(line -> line.left().contains("application"))
        .mapToDouble(Line::number)
        .min();
  }

  @Override
  public Presentation presentation() {
    var title = "Left of " + spraying.mixture() + " on " + spraying.field();
    var page = Presentation.titled(title).fact("Day", spraying.start().toLocalDate().toString());
    if (!lines.isEmpty()) {
      page.table(
          ResultTable.of(
              "What each maximum leaves",
              List.of(
                  ResultTable.Column.of("Record"),
                  ResultTable.Column.of("Maximum"),
                  ResultTable.Column.of("Left"),
                  ResultTable.Column.of("Everything used is known")),
              lines.stream()
                  .map(
                      line ->
                          List.of(
                              Cell.text(line.record()),
                              Cell.text(line.limit()),
                              Cell.text(line.left()),
                              Cell.text(line.known() ? "yes" : "no, less may be left")))
                  .toList()));
    }
    for (var each : notRecorded) {
      page.paragraph(each + ": look at the label.");
    }
    return page.cautions(Caution.all()).build();
  }
}
