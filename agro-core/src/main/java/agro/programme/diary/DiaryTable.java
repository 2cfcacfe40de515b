package agro.programme.diary;

import java.util.ArrayList;
import java.util.List;

/** The files of the diary with their columns. */
enum DiaryTable {
  ADVISED(
      "advised",
      AdvisedUse.class,
      "day",
      "field",
      "product",
      "dose",
      "from",
      "to",
      "adviser",
      "reason"),
  BOUGHT("bought", BoughtProduct.class, "day", "product", "lot", "amount", "note"),
  APPLIED(
      "applied",
      AppliedUse.class,
      "start",
      "end",
      "field",
      "products",
      "doses",
      "lots",
      "way",
      "treated_area",
      "crop_stage",
      "volume",
      "nozzle",
      "operator",
      "wind_m_per_s",
      "temperature_c",
      "reason",
      "count"),
  SCOUTED(
      "scouted",
      ScoutedField.class,
      "day",
      "field",
      "pest",
      "count",
      "units",
      "unit",
      "trap",
      "visit",
      "nights_open",
      "lure_renewed",
      "scout"),
  RELEASED("released", ReleasedEnemy.class, "day", "field", "organism", "amount", "lot", "note");

  static final String ID = "id";
  static final String WRITTEN = "written";
  static final String BY = "by";
  static final String CORRECTS = "corrects";
  static final String CORRECTION_REASON = "correction_reason";
  static final String WITHDRAWN = "withdrawn";

  private final String word;
  private final Class<? extends DiaryRecord> type;
  private final List<String> own;

  DiaryTable(String word, Class<? extends DiaryRecord> type, String... own) {
    this.word = word;
    this.type = type;
    this.own = List.of(own);
  }

  static DiaryTable of(DiaryRecord what) {
    for (var table : values()) {
      if (table.type.isInstance(what)) {
        return table;
      }
    }
    throw new IllegalStateException("no table holds " + what);
  }

  Class<? extends DiaryRecord> type() {
    return type;
  }

  String word() {
    return word;
  }

  String fileName() {
    return word + ".csv";
  }

  List<String> columns() {
    var columns = new ArrayList<>(List.of(ID, WRITTEN, BY));
    columns.addAll(own);
    columns.addAll(List.of(CORRECTS, CORRECTION_REASON, WITHDRAWN));
    return columns;
  }

  List<String> neededColumns() {
    return List.of(ID, own.get(0));
  }
}
