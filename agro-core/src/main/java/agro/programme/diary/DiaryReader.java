package agro.programme.diary;

import agro.dose.DosePerArea;
import agro.dose.LabelRate;
import agro.dose.ProductAmount;
import agro.programme.ApplicationWay;
import agro.programme.SprayedProduct;
import agro.programme.Spraying;
import agro.reading.DelimitedLine;
import agro.report.InputProblem;
import agro.units.Area;
import agro.units.UnreadableQuantity;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Reads a line of the diary back. */
final class DiaryReader {

  private static final Pattern PARTNERS = Pattern.compile(" \\+ ");

  private final DelimitedLine line;

  private DiaryReader(DelimitedLine line) {
    this.line = line;
  }

  static DiaryEntry<?> entry(DiaryTable table, DelimitedLine line) {
    var reader = new DiaryReader(line);
    var id = reader.text(DiaryTable.ID);
    var corrects = reader.text(DiaryTable.CORRECTS);
    return new DiaryEntry<>(
        id,
        reader.read(DiaryTable.WRITTEN, Instant::parse, "a moment such as 2027-06-01T16:30:00Z"),
        reader.text(DiaryTable.BY),
        corrects.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new DiaryEntry.Correction(corrects, reader.text(DiaryTable.CORRECTION_REASON))),
        line.optionalYesOrNo(DiaryTable.WITHDRAWN).orElse(false),
        reader.located(() -> reader.what(table, id)),
        line.location());
  }

  private DiaryRecord what(DiaryTable table, String id) {
    return switch (table) {
      case ADVISED ->
          new AdvisedUse(
              line.date("day"),
              text("field"),
              text("product"),
              read("dose", DiaryReader::dose, "a dose per area such as 0.75 L/ha"),
              line.optionalDate("from"),
              line.optionalDate("to"),
              text("adviser"),
              text("reason"));
      case BOUGHT ->
          new BoughtProduct(
              line.date("day"),
              text("product"),
              text("lot"),
              read("amount", ProductAmount::parse, "an amount such as 5 L"),
              text("note"));
      case APPLIED -> applied(id);
      case SCOUTED ->
          new ScoutedField(
              line.date("day"),
              text("field"),
              text("pest"),
              line.optionalCount("count"),
              line.optionalCount("units"),
              text("unit"),
              text("trap"),
              line.optionalChoice("visit", ScoutedField.TrapVisitState.class)
                  .orElse(ScoutedField.TrapVisitState.NO_TRAP),
              line.optionalNumber("nights_open"),
              line.optionalYesOrNo("lure_renewed").orElse(false),
              text("scout"));
      case RELEASED ->
          new ReleasedEnemy(
              line.date("day"),
              text("field"),
              text("organism"),
              text("amount"),
              text("lot"),
              text("note"));
    };
  }

  private AppliedUse applied(String id) {
    var words = "a moment with its offset such as 2027-06-01T18:30+02:00[Europe/Ljubljana]";
    line.text("start");
    line.text("end");
    var spraying =
        new Spraying(
            id,
            read("start", ZonedDateTime::parse, words).orElseThrow(),
            read("end", ZonedDateTime::parse, words).orElseThrow(),
            text("field"),
            products(),
            line.optionalChoice("way", ApplicationWay.class).orElse(ApplicationWay.SPRAY),
            read("treated_area", Area::parse, "an area such as 1.2 ha"),
            text("crop_stage"),
            text("reason"));
    return new AppliedUse(
        spraying,
        new AppliedUse.Conditions(
            text("volume"),
            text("nozzle"),
            text("operator"),
            line.optionalNumber("wind_m_per_s"),
            line.optionalNumber("temperature_c"),
            text("count")));
  }

  private List<SprayedProduct> products() {
    line.text("products");
    var names = parts("products", 0);
    var doses = parts("doses", names.size());
    var lots = parts("lots", names.size());
    var products = new ArrayList<SprayedProduct>();
    for (int i = 0; i < names.size(); i++) {
      int place = i;
      var dose =
          doses.get(i).isEmpty()
              ? Optional.<DosePerArea>empty()
              : Optional.of(
                  quantity(
                      "doses",
                      doses.get(place),
                      DiaryReader::dose,
                      "a dose per area such as 0.75 L/ha"));
      products.add(new SprayedProduct(names.get(i), dose, lots.get(i)));
    }
    return products;
  }

  /** The parts of a cell; where the cell is empty, as many empty ones as are wanted. */
  private List<String> parts(String column, int wanted) {
    var cell = text(column);
    var parts = new ArrayList<String>();
    if (cell.isEmpty()) {
      for (int i = 0; i < wanted; i++) {
        parts.add("");
      }
      return parts;
    }
    for (var part : PARTNERS.split(cell, -1)) {
      parts.add(part.strip().equals("-") ? "" : part.strip());
    }
    if (wanted > 0 && parts.size() != wanted) {
      throw InputProblem.at(line.location(column), "the cell reads \"" + cell + "\"")
          .expected(wanted + " parts with \" + \" between them, one for each product")
          .because("it is unknown which part belongs to which product")
          .mend("write - for a part that is not known");
    }
    return parts;
  }

  private static DosePerArea dose(String text) {
    if (LabelRate.parse(text) instanceof DosePerArea dose) {
      return dose;
    }
    throw InputProblem.of("\"" + text + "\" is no dose per area")
        .expected("a dose per area such as 0.75 L/ha")
        .because("doses are added up per area over the season")
        .mend("convert it with the figures of the field before it is entered");
  }

  private String text(String column) {
    return DiaryText.read(line.optionalText(column).orElse(""));
  }

  private <T> Optional<T> read(String column, Function<String, T> reader, String expected) {
    var text = text(column);
    return text.isEmpty()
        ? Optional.empty()
        : Optional.of(quantity(column, text, reader, expected));
  }

  private <T> T quantity(String column, String text, Function<String, T> reader, String expected) {
    try {
      return reader.apply(text);
    } catch (InputProblem | UnreadableQuantity | DateTimeException problem) {
      throw InputProblem.at(line.location(column), "the cell reads \"" + text + "\"")
          .expected(expected)
          .because("limits are counted from it")
          .mend("correct it by a line that refers to this one, or from a copy of the file");
    }
  }

  private DiaryRecord located(java.util.function.Supplier<DiaryRecord> reader) {
    try {
      return reader.get();
    } catch (InputProblem problem) {
      if (!problem.location().file().isEmpty()) {
        throw problem;
      }
      throw InputProblem.at(line.location(), problem.read())
          .expected(problem.expected())
          .because(problem.why())
          .mend(problem.cure());
    }
  }
}
