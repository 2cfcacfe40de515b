package agro.programme;

import agro.reading.NearestWord;
import agro.reading.TextFile;
import agro.report.InputProblem;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * The user's own label records. In the file a limit is a number with its unit, the word {@code
 * none} where the label says in words that there is no such limit, or an empty cell where nobody
 * has looked.
 *
 * @param records the records; one for a product and a crop
 */
public record LabelBook(List<LabelRecord> records) implements Presentable {

  /** Name of the file in a season folder. */
  public static final String FILE = "labels.csv";

  /** Refuses two records of one use. */
  public LabelBook {
    records = List.copyOf(records);
    var seen = new LinkedHashSet<String>();
    for (var each : records) {
      if (!seen.add(each.use())) {
        throw InputProblem.at(each.location(), each.use() + " for the second time")
            .expected("one record for a product and a crop")
            .because("it is unknown which of the two holds")
            .mend("remove the older record, or name the other product differently");
      }
    }
  }

  /**
   * A book of records that were made in code.
   *
   * @param records the records
   * @return the book
   */
  public static LabelBook of(LabelRecord... records) {
    return new LabelBook(List.of(records));
  }

  /**
   * Reads {@code labels.csv} of a season folder.
   *
   * @param folder the folder
   * @return the book
   * @throws InputProblem for a cell that cannot be read; it names line and column
   */
  public static LabelBook read(Path folder) {
    var text = TextFile.read(folder.resolve(FILE), FILE, StandardCharsets.UTF_8);
    return parse(FILE, text);
  }

  /**
   * Reads a book from text.
   *
   * @param name name of the text in messages
   * @param text the table
   * @return the book
   * @throws InputProblem for a cell that cannot be read; it names line and column
   */
  public static LabelBook parse(String name, String text) {
    return new LabelBook(LabelTable.read(name, text));
  }

  /**
   * The record of one use.
   *
   * @param product the product
   * @param crop the crop
   * @return the record; nothing if there is none
   */
  public Optional<LabelRecord> find(String product, String crop) {
    return records.stream()
        .filter(each -> each.product().equals(product) && each.crop().equals(crop))
        .findFirst();
  }

  /**
   * The record of one use, which has to be there.
   *
   * @param product the product
   * @param crop the crop
   * @return the record
   * @throws InputProblem if there is none
   */
  public LabelRecord require(String product, String crop) {
    return find(product, crop).orElseThrow(() -> missing(product, crop));
  }

  private InputProblem missing(String product, String crop) {
    var uses = records.stream().map(LabelRecord::use).toList();
    return InputProblem.of("no label record of " + product + " on " + crop)
        .expected("one of the records in the book: " + String.join(", ", uses))
        .because("a use that is not on the label is not allowed, and its limits are not known")
        .mend(
            NearestWord.to(product + " on " + crop, uses)
                .map(near -> "write " + near + " if that is meant")
                .orElse("read the label and add its line to " + FILE));
  }

  /**
   * The active ingredients of a product, from any crop for which they are recorded.
   *
   * @param product the product
   * @return its active ingredients; empty if no record names them
   */
  public List<LabelActive> activesOf(String product) {
    return records.stream()
        .filter(each -> each.product().equals(product))
        .map(LabelRecord::actives)
        .filter(actives -> !actives.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  /**
   * The records for a crop.
   *
   * @param crop the crop
   * @return the records in the order of the book
   */
  public List<LabelRecord> forCrop(String crop) {
    return records.stream().filter(each -> each.crop().equals(crop)).toList();
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var each : records) {
      var actives = each.actives().stream().map(LabelActive::toString).toList();
      rows.add(
          List.of(
              Cell.text(each.product()),
              Cell.text(each.crop()),
              Cell.text(actives.isEmpty() ? "not recorded" : String.join(" + ", actives)),
              Cell.number(each.limits().limits().size() + each.caps().size(), 0)));
    }
    var columns =
        List.of(
            ResultTable.Column.of("Product"),
            ResultTable.Column.of("Crop"),
            ResultTable.Column.of("Active ingredients"),
            ResultTable.Column.of("Limits recorded"));
    var table = ResultTable.of("Label records", columns, rows);
    return Presentation.titled("Label records of the user")
        .table(table.withNote("A limit that is not recorded is not absent: look at the label."))
        .cautions(Caution.all())
        .build();
  }
}
