package agro.trial.analysis;

import agro.ReferenceTable;
import agro.trial.Assessment;
import agro.trial.FieldTrial;
import agro.trial.TrialDesign;
import agro.trial.TrialPlot;
import agro.trial.TrialResponse;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

/** Published data sets as trials. */
final class KnownTrials {

  static final LocalDate DAY = LocalDate.of(2026, 6, 15);

  private KnownTrials() {}

  private static List<NamedCsvRecord> rows(String file) {
    return ReferenceTable.read(KnownTrials.class, "/agro/stats/linear/" + file);
  }

  /** Reference values of one case. */
  static List<NamedCsvRecord> values(String name) {
    return ReferenceTable.read(KnownTrials.class, "analysis.csv").stream()
        .filter(row -> row.getField("case").equals(name))
        .toList();
  }

  static double value(String name, String quantity, String label) {
    return values(name).stream()
        .filter(row -> row.getField("quantity").equals(quantity))
        .filter(row -> row.getField("label").equals(label))
        .mapToDouble(row -> ReferenceTable.number(row, "value"))
        .findFirst()
        .orElseThrow();
  }

  private static FieldTrial trial(
      String file, TrialResponse response, String column, String block, List<String> factors) {
    var lines = new ArrayList<Assessment>();
    int number = 1;
    for (var row : rows(file)) {
      var levels = new LinkedHashMap<String, String>();
      factors.forEach(factor -> levels.put(factor, row.getField(factor)));
      var plot =
          TrialPlot.of(
              Integer.toString(number++), block.isEmpty() ? "" : row.getField(block), levels);
      lines.add(Assessment.of(plot, DAY, response.name(), ReferenceTable.number(row, column)));
    }
    return FieldTrial.of(file, List.of(response), lines);
  }

  static FieldTrial sprays() {
    return trial(
        "insect-sprays.csv", TrialResponse.count("insects"), "count", "", List.of("spray"));
  }

  static FieldTrial soybean() {
    return trial(
        "soybean.csv",
        TrialResponse.measure("failures", ""),
        "failures",
        "block",
        List.of("treatment"));
  }

  static FieldTrial npk() {
    return trial(
        "npk.csv", TrialResponse.measure("yield", "lb"), "yield", "block", List.of("N", "P", "K"));
  }

  static FieldTrial oats() {
    return trial(
            "yates-oats.csv",
            TrialResponse.measure("yield", ""),
            "yield",
            "block",
            List.of("variety", "nitrogen"))
        .withDesign(new TrialDesign.SplitPlot(List.of("variety"), List.of("nitrogen"), true));
  }

  static FieldTrial of(FieldTrial trial, List<Assessment> lines) {
    var changed = FieldTrial.of(trial.name(), trial.responses(), lines);
    return trial.declaredDesign().map(changed::withDesign).orElse(changed);
  }
}
