package agro.stats.mixed;

import static agro.ReferenceTable.number;

import agro.ReferenceTable;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Open data for mixed models, and the model of each set. */
final class TrialData {

  private final List<NamedCsvRecord> rows;

  private TrialData(List<NamedCsvRecord> rows) {
    this.rows = rows;
  }

  static TrialData of(String model) {
    var set = model.startsWith("chicks") ? "chicks" : model;
    return new TrialData(
        ReferenceTable.read(TrialData.class, "mixed-values.csv").stream()
            .filter(line -> line.getField("set").equals(set))
            .toList());
  }

  TrialData shuffled(long seed) {
    var other = new ArrayList<>(rows);
    Collections.shuffle(other, new Random(seed));
    return new TrialData(other);
  }

  double[] y() {
    return rows.stream().mapToDouble(line -> number(line, "value")).toArray();
  }

  Factor factor(String column) {
    return Factor.of(column, rows.stream().map(line -> line.getField(column)).toList());
  }

  double[] times() {
    return rows.stream().mapToDouble(line -> number(line, "time")).toArray();
  }

  static MixedModel model(String name) {
    return of(name).modelOf(name);
  }

  MixedModel modelOf(String name) {
    return switch (name) {
      case "npk" -> MixedModel.of(crossed(), List.of(group()));
      case "warpbreaks" -> MixedModel.of(List.of(ModelTerm.of(factor("fixed"))), List.of(group()));
      case "OrchardSprays" ->
          MixedModel.of(
              List.of(ModelTerm.of(factor("fixed"))),
              List.of(group(), ModelTerm.of(factor("nested"))));
      case "chicks" ->
          MixedModel.of(crossed(), List.of())
              .with(WithinSubject.autoregressive(factor("subject"), times()));
      case "chicks equal correlation" ->
          MixedModel.of(crossed(), List.of(ModelTerm.of(factor("subject"))));
      default ->
          MixedModel.of(
              crossed(), List.of(group(), ModelTerm.nested(factor("nested"), factor("group"))));
    };
  }

  private List<ModelTerm> crossed() {
    return ModelTerm.crossing(factor("fixed"), factor("other"));
  }

  private ModelTerm group() {
    return ModelTerm.of(factor("group"));
  }
}
