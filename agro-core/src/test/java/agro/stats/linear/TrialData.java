package agro.stats.linear;

import agro.ReferenceTable;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** A data set beside the tests, without some of its rows. */
record TrialData(List<NamedCsvRecord> rows) {

  static TrialData read(String file) {
    return new TrialData(ReferenceTable.read(TrialData.class, file));
  }

  /** Leaves out rows by their places from 1, separated by blanks. */
  TrialData without(String places) {
    var omitted = new HashSet<Integer>();
    for (String place : places.split(" ", -1)) {
      if (!place.isEmpty()) {
        omitted.add(Integer.parseInt(place));
      }
    }
    var kept = new ArrayList<NamedCsvRecord>();
    for (int i = 0; i < rows.size(); i++) {
      if (!omitted.contains(i + 1)) {
        kept.add(rows.get(i));
      }
    }
    return new TrialData(kept);
  }

  Factor factor(String column) {
    return Factor.of(column, rows.stream().map(row -> row.getField(column)).toList());
  }

  Factor factor(String column, String... declared) {
    return Factor.declared(
        column, List.of(declared), rows.stream().map(row -> row.getField(column)).toList());
  }

  double[] numbers(String column) {
    return rows.stream().mapToDouble(row -> ReferenceTable.number(row, column)).toArray();
  }

  double[] numbers(String column, DoubleUnaryOperator scale) {
    return rows.stream()
        .mapToDouble(row -> scale.applyAsDouble(ReferenceTable.number(row, column)))
        .toArray();
  }

  Covariate covariate(String column) {
    return Covariate.of(column, numbers(column));
  }
}
