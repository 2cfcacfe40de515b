package agro.dose.tank;

import agro.dose.ProductAmount;
import agro.dose.Severity;
import agro.units.Area;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.units.WorkTimeUnit;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The tables of a sheet that is taken to the sprayer. */
final class FillingTables {

  private FillingTables() {}

  static ResultTable field(FieldJob job) {
    var mix = job.mix();
    var rows = new ArrayList<List<Cell>>();
    for (var placed : mix.sequence().steps()) {
      step(mix, placed, rows);
    }
    for (var product : mix.sequence().withoutPlace()) {
      rows.add(product(mix, product, product + " (when: see its label)"));
    }
    var style = TankTables.style(mix);
    rows.add(each(mix, "Fill up with water to", load -> style.print(load.made()), mix.made()));
    rows.add(
        line("Enough for", mix, load -> area(load.area(), style), area(fieldArea(mix), style)));
    if (mix.plan().field().treated().isPresent()) {
      var ground = new TreatedGround(mix.plan());
      rows.add(
          line(
              "of which gets wet",
              mix,
              load -> area(ground.of(load.area()), style),
              area(ground.of(fieldArea(mix)), style)));
    }
    return new ResultTable(title(mix), columns(mix), rows, notes(job));
  }

  private static Area fieldArea(TankMix mix) {
    return mix.plan().field().area();
  }

  private static String area(Area area, QuantityStyle style) {
    return Numbers.significant(area.in(style.land()), style.digits()) + " " + style.land().symbol();
  }

  private static String title(TankMix mix) {
    var plan = mix.plan();
    var style = TankTables.style(mix);
    return plan.field().name()
        + ", "
        + plan.field().printArea(plan.style())
        + ": "
        + plan.tank().kind().words()
        + " of "
        + style.print(plan.tank().capacity())
        + ", "
        + plan.spray().print(plan.style())
        + plan.field().treated().map(t -> " of field, " + t.print(plan.style())).orElse("");
  }

  private static List<Column> columns(TankMix mix) {
    var columns = new ArrayList<Column>();
    columns.add(Column.of("In this order"));
    for (var load : mix.loads()) {
      columns.add(Column.of(heading(load, mix.plan().tank().kind())));
    }
    if (mix.numberOfLoads() > 1) {
      columns.add(Column.of("in all"));
    }
    columns.add(Column.of("measure with"));
    return columns;
  }

  private static String heading(TankLoad load, TankKind kind) {
    return switch (load.count()) {
      case 1 -> kind.load() + " " + load.first();
      case 2 -> kind.loads() + " " + load.first() + " and " + load.last() + ", each";
      default -> kind.loads() + " " + load.numbers() + ", each";
    };
  }

  private static void step(TankMix mix, MixingSequence.Placed placed, List<List<Cell>> rows) {
    var share = placed.step().fillTo();
    if (placed.products().isEmpty()) {
      var style = TankTables.style(mix);
      rows.add(
          line(
              placed.step().words(),
              mix,
              load -> share.map(water -> water(load, water, style)).orElse(""),
              ""));
      return;
    }
    placed.products().forEach(product -> rows.add(product(mix, product, product)));
  }

  private static String water(TankLoad load, MixingStep.WaterShare share, QuantityStyle style) {
    var made = load.made();
    return TankTables.range(made.times(share.low()).to(made.times(share.high())), style);
  }

  private static List<Cell> each(
      TankMix mix, String name, Function<TankLoad, String> words, Volume all) {
    return line(name, mix, words, TankTables.style(mix).print(all));
  }

  private static List<Cell> line(
      String name, TankMix mix, Function<TankLoad, String> words, String all) {
    var row = new ArrayList<Cell>();
    row.add(Cell.text(name));
    mix.loads().forEach(load -> row.add(Cell.text(words.apply(load))));
    if (mix.numberOfLoads() > 1) {
      row.add(Cell.text(all));
    }
    row.add(Cell.text(""));
    return row;
  }

  /** The amount of a product in each load, the mark to read off, and the vessels. */
  private static List<Cell> product(TankMix mix, String product, String name) {
    var style = TankTables.style(mix);
    var density =
        mix.plan().partners().stream()
            .filter(partner -> partner.product().equals(product))
            .findFirst()
            .orElseThrow()
            .bulkDensity();
    var row = new ArrayList<Cell>();
    var vessels = new LinkedHashSet<String>();
    row.add(Cell.text(name));
    for (var load : mix.loads()) {
      var amount = load.amountOf(product);
      var reading = mix.plan().kit().suggest(amount, density);
      row.add(Cell.text(readOff(amount.print(style), reading)));
      vessels.add(vessel(reading));
    }
    if (mix.numberOfLoads() > 1) {
      row.add(Cell.text(mix.totalOf(product).print(style)));
    }
    row.add(Cell.text(String.join("; ", vessels)));
    return row;
  }

  /** The amount, and the mark beside it where that is another figure. */
  private static String readOff(String amount, VesselSuggestion suggestion) {
    if (!(suggestion instanceof VesselSuggestion.Suits suits)) {
      return amount;
    }
    var reading = suits.reading();
    var mark = reading.measured().print(QuantityStyle.METRIC.withDigits(6));
    var times = reading.fillings() == 1 ? "" : ", in " + reading.fillings() + " fillings";
    return amount + (mark.equals(amount) ? "" : ": read " + mark) + times;
  }

  private static String vessel(VesselSuggestion suggestion) {
    return suggestion instanceof VesselSuggestion.Suits suits
        ? suits.reading().vessel().print()
        : "no vessel at hand is fine enough";
  }

  private static List<String> notes(FieldJob job) {
    var time =
        job.time()
            .map(t -> "About " + Numbers.significant(t.in(WorkTimeUnit.HOUR), 2) + " h of work.")
            .orElse("");
    var words = (time + " " + job.remark()).strip();
    return words.isEmpty() ? List.of() : List.of(words);
  }

  /** The warnings of all fields, each once, with the fields for which it holds. */
  static List<String> warnings(List<FieldJob> jobs) {
    var fields = new LinkedHashMap<String, List<String>>();
    for (var job : jobs) {
      for (var finding : job.mix().findings()) {
        if (finding.severity() == Severity.WARNING) {
          var words = finding.rule() + ". " + finding.sentence();
          fields
              .computeIfAbsent(words, none -> new ArrayList<>())
              .add(job.mix().plan().field().name());
        }
      }
    }
    return fields.entrySet().stream()
        .map(e -> "Look first (" + String.join(", ", e.getValue()) + "): " + e.getKey())
        .toList();
  }

  static String refusal(FieldJob job) {
    var words = new StringBuilder();
    words
        .append(job.mix().plan().field().name())
        .append(": do not fill the sprayer. This mix goes against a label, and its amounts are")
        .append(" withheld until that is mended.");
    job.mix().findings().stream()
        .filter(finding -> finding.severity() == Severity.ERROR)
        .forEach(f -> words.append(' ').append(f.rule()).append(": ").append(f.sentence()));
    return words.toString();
  }

  static Optional<ResultTable> shopping(List<FieldJob> jobs) {
    var needs = new LinkedHashMap<String, ProductAmount>();
    var sold = new LinkedHashMap<String, TankPartner>();
    for (var job : jobs) {
      for (var partner : job.mix().plan().partners()) {
        var need = job.mix().totalOf(partner.product());
        needs.merge(partner.product(), need, ProductAmount::plus);
        if (!partner.packs().isEmpty()) {
          sold.putIfAbsent(partner.product(), partner);
        }
      }
    }
    if (sold.isEmpty()) {
      return Optional.empty();
    }
    var style = jobs.get(0).mix().plan().style();
    var rows = new ArrayList<List<Cell>>();
    sold.forEach((product, partner) -> bought(partner, needs.get(product), style, rows));
    var columns =
        List.of(
            Column.of("Product"),
            Column.of("Need"),
            Column.of("Choice"),
            Column.of("Packs"),
            Column.of("Left in packs"),
            Column.of("Cost"));
    return Optional.of(
        ResultTable.of("What to buy", columns, rows)
            .withNote("For all fields above; of a range, enough for the high end."));
  }

  private static void bought(
      TankPartner partner, ProductAmount need, QuantityStyle style, List<List<Cell>> rows) {
    var purchase = TankPurchases.purchase(partner, need.high());
    var needed =
        need.print(style)
            + partner.inHand().map(stock -> ", " + stock.print(style) + " in hand").orElse("");
    if (purchase.isOneChoice()) {
      var words = "least waste and lowest cost";
      rows.add(choice(purchase.product(), needed, words, purchase.leastWaste(), style));
      return;
    }
    rows.add(choice(purchase.product(), needed, "least waste", purchase.leastWaste(), style));
    purchase
        .leastCost()
        .ifPresent(c -> rows.add(choice(purchase.product(), needed, "lowest cost", c, style)));
  }

  private static List<Cell> choice(
      String product, String need, String words, PackChoice choice, QuantityStyle style) {
    return List.of(
        Cell.text(product),
        Cell.text(need),
        Cell.text(words),
        Cell.text(choice.printPacks()),
        Cell.text(choice.waste().print(style)),
        choice.cost().map(cost -> Cell.text(cost.toString())).orElse(Cell.notKnown()));
  }
}
