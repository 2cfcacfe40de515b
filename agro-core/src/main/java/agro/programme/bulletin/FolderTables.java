package agro.programme.bulletin;

import agro.programme.LabelBook;
import agro.programme.Programme;
import agro.programme.ProgrammeFolder;
import agro.programme.diary.Diary;
import agro.programme.diary.DiaryBook;
import agro.programme.interval.SideEffectTable;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import agro.reading.TextFile;
import agro.sampling.ScoutingTable;
import agro.season.Ledger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tables of a season folder that a bulletin reads beside those of the forecast. */
record FolderTables(
    Optional<Programme> programme,
    boolean withLabels,
    Optional<DiaryBook> diary,
    Optional<SideEffectTable> sideEffects,
    Optional<ScoutingTable> scouting,
    ThresholdBook thresholds,
    List<FieldSprayer> sprayers,
    Ledger ledger,
    Optional<SprayHoursTable> hours,
    Map<String, String> places) {

  private static final String FIELDS = "fields.csv";
  private static final String PLANTINGS = "plantings.csv";
  private static final String SCOUTING = "scouting.csv";

  static FolderTables read(Path folder) {
    boolean labels = has(folder, LabelBook.FILE);
    boolean all = labels && has(folder, FIELDS) && has(folder, PLANTINGS);
    return new FolderTables(
        all ? Optional.of(ProgrammeFolder.read(folder)) : Optional.empty(),
        labels,
        Diary.files().stream().anyMatch(file -> has(folder, file))
            ? Optional.of(Diary.in(folder).read())
            : Optional.empty(),
        has(folder, SideEffectTable.FILE)
            ? Optional.of(SideEffectTable.read(folder))
            : Optional.empty(),
        has(folder, SCOUTING)
            ? Optional.of(ScoutingTable.read(folder.resolve(SCOUTING)))
            : Optional.empty(),
        ThresholdBook.read(folder),
        FieldSprayer.read(folder),
        Ledger.read(folder),
        SprayHoursTable.read(folder),
        all ? places(folder) : Map.of());
  }

  private static boolean has(Path folder, String file) {
    return Files.exists(folder.resolve(file));
  }

  /** The column of places in the table of fields, which the table may be without. */
  private static Map<String, String> places(Path folder) {
    var text = TextFile.read(folder.resolve(FIELDS), FIELDS, StandardCharsets.UTF_8);
    var table = DelimitedText.parse(FIELDS, text, DelimitedFormat.COMMA, List.of("field"));
    var places = new LinkedHashMap<String, String>();
    if (table.columns().contains("place")) {
      for (var line : table.lines()) {
        line.optionalText("place").ifPresent(place -> places.put(line.text("field"), place));
      }
    }
    return places;
  }

  /** The place that the table of fields names for a field. */
  Optional<String> placeOf(String field) {
    return Optional.ofNullable(places.get(field));
  }

  /** The programme with what the diary knew on a day. */
  Optional<Programme> programmeUpTo(LocalDate asOf) {
    return programme.map(
        each ->
            diary
                .map(
                    book ->
                        each.withSprayings(
                                book.sprayings().stream()
                                    .filter(one -> !one.start().toLocalDate().isAfter(asOf))
                                    .toList())
                            .withReleases(
                                book.releases().stream()
                                    .filter(one -> !one.day().isAfter(asOf))
                                    .toList()))
                .orElse(each));
  }
}
