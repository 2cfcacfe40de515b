package agro.programme;

import agro.dose.LabelLimits;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.TextFile;
import agro.report.InputProblem;
import agro.units.Area;
import agro.units.Length;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Tables of a programme in a season folder: {@code labels.csv}, {@code fields.csv}, {@code
 * plantings.csv}, and, where they exist, {@code local-rules.csv}, {@code bloom.csv} and {@code
 * generations.csv}. Applications and releases come from the diary.
 */
public final class ProgrammeFolder {

  private ProgrammeFolder() {}

  /**
   * Reads the tables.
   *
   * @param folder the season folder
   * @return the programme without applications
   * @throws InputProblem for a missing table or a cell that cannot be read
   */
  public static Programme read(Path folder) {
    var fields = table(folder, "fields.csv", "field", "zone");
    var plantings = table(folder, "plantings.csv", "field", "crop", "planted");
    return Programme.of(
            LabelBook.read(folder),
            fields.stream().map(ProgrammeFolder::field).toList(),
            plantings.stream().map(ProgrammeFolder::planting).toList())
        .withLocalRules(
            optional(folder, "local-rules.csv", "rule").stream()
                .map(ProgrammeFolder::rule)
                .toList())
        .withBlooms(
            optional(folder, "bloom.csv", "field", "plant", "first").stream()
                .map(
                    line ->
                        LabelColumns.located(
                            line,
                            "first",
                            () ->
                                new BloomPeriod(
                                    line.text("field"),
                                    line.text("plant"),
                                    line.date("first"),
                                    line.optionalDate("last"))))
                .toList())
        .withGenerations(
            optional(folder, "generations.csv", "pest", "generation", "first", "last").stream()
                .map(ProgrammeFolder::generation)
                .toList());
  }

  private static List<DelimitedLine> table(Path folder, String file, String... columns) {
    var text = TextFile.read(folder.resolve(file), file, StandardCharsets.UTF_8);
    return DelimitedText.parse(file, text, DelimitedFormat.COMMA, List.of(columns)).lines();
  }

  private static List<DelimitedLine> optional(Path folder, String file, String... columns) {
    return Files.exists(folder.resolve(file)) ? table(folder, file, columns) : List.of();
  }

  private static GenerationDays generation(DelimitedLine line) {
    return LabelColumns.located(
        line,
        "last",
        () ->
            new GenerationDays(
                line.optionalText("district").orElse(""),
                line.text("pest"),
                line.wholeNumber("generation"),
                line.date("first"),
                line.date("last")));
  }

  private static FarmField field(DelimitedLine line) {
    return new FarmField(
        line.text("field"),
        line.optionalText("district").orElse(""),
        zone(line),
        line.optionalText("area")
            .map(text -> LabelColumns.located(line, "area", () -> Area.parse(text))),
        line.optionalNumber("latitude"),
        line.optionalNumber("longitude"),
        distances(line));
  }

  private static ZoneId zone(DelimitedLine line) {
    try {
      return ZoneId.of(line.text("zone"));
    } catch (DateTimeException e) {
      throw InputProblem.at(line.location("zone"), "the cell reads \"" + line.text("zone") + "\"")
          .expected("a region such as Europe/Ljubljana, or an offset such as +01:00")
          .because("re-entry is counted in hours, and clocks change twice a year")
          .mend("write the region whose clock the farm keeps");
    }
  }

  private static Map<String, Length> distances(DelimitedLine line) {
    var found = new LinkedHashMap<String, Length>();
    LabelColumns.BUFFERS.forEach(
        (column, toward) -> {
          var own =
              column.replace("buffer_", "distance_").replace("exclusion_zone", "clear_of_people");
          line.optionalText(own)
              .ifPresent(
                  text ->
                      found.put(toward, LabelColumns.located(line, own, () -> Length.parse(text))));
        });
    return found;
  }

  private static CropPlanting planting(DelimitedLine line) {
    var field = line.text("field");
    var crop = line.text("crop");
    var planted = line.date("planted");
    return LabelColumns.located(
        line,
        "planted",
        () ->
            new CropPlanting(
                line.optionalText("planting").orElse(crop + ", " + field + ", " + planted),
                field,
                crop,
                planted,
                line.optionalDate("cleared"),
                picking(line)));
  }

  private static PickingPlan picking(DelimitedLine line) {
    var plan = pickingDays(line);
    return line.optionalText("picked_by")
        .map(
            text -> {
              try {
                return plan.doneBy(LocalTime.parse(text));
              } catch (DateTimeException e) {
                throw LabelColumns.cell(
                    line, "picked_by", text, "an hour such as 10:30", "it is no hour of a day");
              }
            })
        .orElse(plan);
  }

  private static PickingPlan pickingDays(DelimitedLine line) {
    var days = line.optionalText("picking_days");
    var first = line.optionalDate("first_picking");
    if (days.isPresent()) {
      return PickingPlan.on(
          Arrays.stream(days.get().split("[;\\s]+"))
              .map(text -> day(line, text))
              .toArray(LocalDate[]::new));
    }
    if (first.isEmpty()) {
      return PickingPlan.notStated();
    }
    var every = line.optionalWholeNumber("picking_every_days");
    var last = line.optionalDate("last_picking");
    return LabelColumns.located(
        line,
        "first_picking",
        () ->
            last.isPresent()
                ? PickingPlan.every(first.get(), last.get(), every.orElse(1))
                : PickingPlan.on(first.get()));
  }

  private static LocalDate day(DelimitedLine line, String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw LabelColumns.cell(
          line,
          "picking_days",
          text,
          "days as 2027-06-12, separated by semicolons",
          "it is no day of the calendar");
    }
  }

  private static LocalRule rule(DelimitedLine line) {
    var name = line.text("rule");
    return new LocalRule(
        name,
        line.optionalText("product"),
        line.optionalText("crop"),
        line.optionalText("district"),
        new LabelLimits(name, LabelColumns.limits(line)));
  }

  /**
   * The column names of {@code labels.csv} that hold limits or names this library knows.
   *
   * @return the names
   */
  public static List<String> labelColumns() {
    return LabelTable.columns();
  }
}
