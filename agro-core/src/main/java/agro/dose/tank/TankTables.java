package agro.dose.tank;

import agro.dose.DoseFinding;
import agro.dose.Severity;
import agro.source.Reference;
import agro.units.Area;
import agro.units.Numbers;
import agro.units.QuantityRange;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.working.Block;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/** The page of a tank mix: facts, the table for the sprayer, measuring, mixing, buying, steps. */
final class TankTables {

  private TankTables() {}

  static QuantityStyle style(TankMix mix) {
    var plan = mix.plan();
    return plan.style().per(plan.field().land());
  }

  static Presentation page(TankMix mix) {
    var plan = mix.plan();
    var page = Presentation.titled("Tank mix for " + plan.field().name());
    facts(mix, page);
    new TreatedGround(plan).table().ifPresent(page::table);
    return isRefused(mix) ? refused(mix, page) : full(mix, page);
  }

  /** Over a label there is nothing on the page that could be measured out. */
  private static Presentation refused(TankMix mix, Presentation.Builder page) {
    return page.paragraph(
            "Do not fill the sprayer. This mix goes against a label; amounts, steps and packs are"
                + " not printed until that is mended.")
        .table(findingTable(mix.findings()))
        .cautions(Caution.all())
        .build();
  }

  private static Presentation full(TankMix mix, Presentation.Builder page) {
    MixingSequence.reminders().forEach(page::paragraph);
    page.table(loads(mix)).table(measuring(mix));
    page.table(mix.sequence().table(mix.loads().get(0).made(), mix.plan().style()));
    leftover(mix, page);
    if (!mix.purchases().isEmpty()) {
      page.table(purchases(mix));
    }
    return page.table(findingTable(mix.findings()))
        .block(steps(mix))
        .cautions(Caution.all())
        .sources(sources(mix))
        .build();
  }

  /** A range whose ends print alike is printed as one amount. */
  /** Thirty steps and more for three partners: there for whoever wants to follow them. */
  private static Block steps(TankMix mix) {
    var working = new Block.WorkingBlock(mix.working().withCautions(List.of()));
    return new Block.Folded("The steps, to follow on paper", List.of(working));
  }

  static String range(QuantityRange<Volume> range, QuantityStyle style) {
    var unit = style.unitFor(range.high());
    var low = Numbers.significant(range.low().in(unit), style.digits());
    var high = Numbers.significant(range.high().in(unit), style.digits());
    return low.equals(high) ? high + " " + unit.symbol() : style.printRange(range);
  }

  private static String inLand(Area area, QuantityStyle style) {
    return Numbers.significant(area.in(style.land()), style.digits());
  }

  static boolean isRefused(TankMix mix) {
    return mix.findings().stream().anyMatch(f -> f.severity() == Severity.ERROR);
  }

  private static void facts(TankMix mix, Presentation.Builder page) {
    var plan = mix.plan();
    var style = style(mix);
    page.fact("Field", plan.field().name() + ", " + plan.field().printArea(plan.style()))
        .fact("Spray volume", both(plan.spray().print(style), plan.spray().print(plan.style())))
        .fact("Tank", plan.tank().kind().words() + " of " + style.print(plan.tank().capacity()));
    plan.tank().deadVolume().ifPresent(d -> page.fact("Dead volume", style.print(d)));
    for (var partner : plan.partners()) {
      var counted = plan.overField(partner);
      var dose = counted.dose(plan.spray());
      page.fact(
          partner.product(),
          partner.rate()
              + "; in the field "
              + both(dose.print(style), dose.print(plan.style()))
              + ", strength "
              + counted.strength(plan.spray()).print(plan.style()));
    }
  }

  private static String both(String local, String general) {
    return local.equals(general) ? local : local + " (" + general + ")";
  }

  static ResultTable loads(TankMix mix) {
    var plan = mix.plan();
    var style = style(mix);
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Number"));
    columns.add(Column.of("How full"));
    columns.add(Column.of("Finished spray"));
    var land = plan.field().land().symbol();
    var ground = new TreatedGround(plan);
    boolean told = plan.field().treated().isPresent();
    columns.add(Column.of(told ? "Field area" : "Area", land));
    if (told) {
      columns.add(Column.of("Treated area", land));
    }
    plan.partners().forEach(partner -> columns.add(Column.of(partner.product())));
    columns.add(Column.of("Water"));
    var rows = new ArrayList<List<Cell>>();
    for (var load : mix.loads()) {
      var row = new ArrayList<Cell>();
      row.add(Cell.text(load.numbers()));
      row.add(Cell.text(load.kind().words()));
      row.add(Cell.text(style.print(load.made())));
      row.add(Cell.text(inLand(load.area(), style)));
      if (told) {
        row.add(Cell.text(inLand(ground.of(load.area()), style)));
      }
      load.amounts().forEach(a -> row.add(Cell.text(a.amount().print(style))));
      row.add(Cell.text(range(load.water(), style)));
      rows.add(row);
    }
    var total = new ArrayList<Cell>();
    total.add(Cell.text("all " + mix.numberOfLoads()));
    total.add(Cell.text(""));
    total.add(Cell.text(style.print(mix.made())));
    total.add(Cell.text(inLand(plan.field().area(), style)));
    if (told) {
      total.add(Cell.text(inLand(plan.field().treatedArea(), style)));
    }
    mix.totals().forEach(a -> total.add(Cell.text(a.amount().print(style))));
    total.add(Cell.text(range(mix.water(), style)));
    rows.add(total);
    var title = "What goes into each " + plan.tank().kind().load();
    return ResultTable.of(title, columns, rows)
        .withNote(
            "Fill up with water to the finished spray; solids take room that is not counted.");
  }

  static ResultTable measuring(TankMix mix) {
    var plan = mix.plan();
    var rows = new ArrayList<List<Cell>>();
    for (var load : mix.loads()) {
      for (int i = 0; i < plan.partners().size(); i++) {
        var amount = load.amounts().get(i);
        var suggestion = plan.kit().suggest(amount.amount(), plan.partners().get(i).bulkDensity());
        var row = new ArrayList<Cell>();
        row.add(Cell.text(load.numbers()));
        row.add(Cell.text(amount.product()));
        row.add(Cell.text(amount.amount().print(plan.style())));
        vessel(suggestion, row, plan.style());
        rows.add(row);
      }
    }
    var columns =
        List.of(
            Column.of("Number"),
            Column.of("Product"),
            Column.of("Amount"),
            Column.of("Measure with"),
            Column.of("Read off"),
            Column.of("Filled"),
            Column.of("Error up to"));
    return ResultTable.of("How to measure it", columns, rows)
        .withNote(
            "Liquids by volume, solids by mass. Larger errors than "
                + VesselRefusals.percent(plan.kit().largestError())
                + " are refused.");
  }

  private static void vessel(VesselSuggestion suggestion, List<Cell> row, QuantityStyle style) {
    if (suggestion instanceof VesselSuggestion.Suits suits) {
      var reading = suits.reading();
      row.add(Cell.text(reading.vessel().print(style)));
      row.add(Cell.text(reading.printMeasured(style)));
      row.add(Cell.text(reading.fillings() == 1 ? "once" : reading.fillings() + " times"));
      row.add(Cell.text(VesselRefusals.percent(reading.error())));
      return;
    }
    row.add(Cell.text("no vessel at hand is fine enough"));
    row.add(Cell.text("–"));
    row.add(Cell.text("–"));
    row.add(Cell.text("–"));
  }

  private static void leftover(TankMix mix, Presentation.Builder page) {
    var left = mix.leftover();
    var style = style(mix);
    if (!(left.volume().litres() > 0)) {
      page.fact(
          "Left over",
          mix.plan().tank().deadVolume().isPresent()
              ? "nothing is planned to be left"
              : "what stays in tank, pump and hoses; how much was not recorded");
      return;
    }
    page.fact("Left over", style.print(left.volume()) + ", enough for " + style.print(left.area()));
    left.holds().forEach(p -> page.fact("  holds " + p.product(), p.amount().print(style)));
    page.paragraph(
        "Dilute what is left and spray it out as the label says; never pour it into a drain or"
            + " water.");
  }

  static ResultTable purchases(TankMix mix) {
    var rows = new ArrayList<List<Cell>>();
    for (var purchase : mix.purchases()) {
      if (purchase.isOneChoice()) {
        rows.add(row(mix, purchase, "least waste and lowest cost", purchase.leastWaste()));
      } else {
        rows.add(row(mix, purchase, "least waste", purchase.leastWaste()));
        purchase.leastCost().ifPresent(c -> rows.add(row(mix, purchase, "lowest cost", c)));
      }
    }
    var columns =
        List.of(
            Column.of("Product"),
            Column.of("Need"),
            Column.of("In hand"),
            Column.of("Choice"),
            Column.of("Packs"),
            Column.of("Left in packs"),
            Column.of("Cost"));
    return ResultTable.of("What to buy", columns, rows)
        .withNote(
            "Of a range both ends are shown; packs for the low end do not cover the high end.");
  }

  private static List<Cell> row(TankMix mix, Purchase purchase, String choice, PackChoice packs) {
    var style = mix.plan().style();
    return List.of(
        Cell.text(purchase.product()),
        Cell.text(purchase.need().print(style)),
        Cell.text(purchase.inHand().print(style)),
        Cell.text(choice),
        Cell.text(packs.printPacks()),
        Cell.text(packs.waste().print(style)),
        packs.cost().map(cost -> Cell.text(cost.toString())).orElse(Cell.notKnown()));
  }

  private static ResultTable findingTable(List<DoseFinding> findings) {
    var rows = new ArrayList<List<Cell>>();
    for (var finding : findings) {
      rows.add(
          List.of(
              Cell.text(finding.severity().words()),
              Cell.text(finding.rule()),
              Cell.text(finding.sentence())));
    }
    var columns = List.of(Column.of("Weight"), Column.of("About"), Column.of("What was found"));
    return ResultTable.of("To look at before filling", columns, rows);
  }

  private static List<Reference> sources(TankMix mix) {
    return List.of(mix.plan().order().source(), TankSources.USUAL_VESSELS, TankSources.HALF_A_MARK);
  }
}
