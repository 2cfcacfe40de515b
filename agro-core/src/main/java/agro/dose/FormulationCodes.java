package agro.dose;

import agro.reading.NearestWord;
import agro.report.InputProblem;
import agro.source.Edition;
import agro.source.Reference;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The list of formulation codes, read once from the table beside this class. */
final class FormulationCodes {

  private static final String TABLE = "formulation-codes.csv";

  private static final Edition EDITION_2017 =
      new Edition("formulation codes", "7, revised 2017", LocalDate.of(2017, 3, 1));
  private static final Edition EDITION_2014 =
      new Edition("formulation codes", "as quoted in 2014", LocalDate.of(2014, 1, 1));

  /** Suffixes of another list, and the codes that they stand for. */
  private static final Map<String, List<String>> US_SUFFIXES =
      Map.of(
          "E", List.of("EC"),
          "F", List.of("SC"),
          "FL", List.of("SC"),
          "L", List.of("SC"),
          "WDG", List.of("WG"),
          "DF", List.of("WG"),
          "S", List.of("SL"),
          "W", List.of("WP"));

  private FormulationCodes() {}

  private static final class Table {
    static final List<Formulation> ROWS = read();

    private Table() {}
  }

  static List<Formulation> all() {
    return Table.ROWS;
  }

  static Formulation find(String code) {
    var wanted = code.strip().toUpperCase(Locale.ROOT);
    for (var formulation : all()) {
      if (formulation.code().equals(wanted)) {
        return formulation;
      }
    }
    var suffix = US_SUFFIXES.get(wanted);
    if (suffix != null) {
      throw InputProblem.of("\"" + code + "\" is no code of the international list")
          .expected("a code of two letters, such as EC, SC or WG")
          .because(
              "on labels of the United States this suffix means "
                  + suffix.get(0)
                  + ", and the number before it is pounds of active ingredient per US gallon for a"
                  + " liquid and per cent by mass for a solid")
          .mend("write \"" + suffix.get(0) + "\" and state the strength with its unit");
    }
    throw InputProblem.of("\"" + code + "\" is no formulation code that this library holds")
        .expected("a code of two letters, such as EC, SC, WP or GR")
        .because("the code tells whether a product is measured or weighed and when it is mixed in")
        .mend(nearest(wanted));
  }

  private static String nearest(String wanted) {
    var codes = all().stream().map(Formulation::code).toList();
    return NearestWord.to(wanted, codes)
        .map(near -> "look at the label again; a near code is " + near + ", " + find(near).name())
        .orElse("look at the label again; the code stands behind the name of the product");
  }

  private static List<Formulation> read() {
    var stream = Objects.requireNonNull(FormulationCodes.class.getResourceAsStream(TABLE), TABLE);
    var reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
    try (var csv =
        CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(reader)) {
      return csv.stream().map(FormulationCodes::row).toList();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static Formulation row(NamedCsvRecord line) {
    boolean current = line.getField("edition").equals("2017");
    Reference source =
        current ? DoseSources.FORMULATION_CODES_2017 : DoseSources.FORMULATION_CODES_2014;
    var state = line.getField("state");
    return new Formulation(
        line.getField("code"),
        line.getField("name"),
        FormulationUse.valueOf(line.getField("use")),
        state.isEmpty() ? Optional.empty() : Optional.of(ProductState.valueOf(state)),
        current ? EDITION_2017 : EDITION_2014,
        source);
  }
}
