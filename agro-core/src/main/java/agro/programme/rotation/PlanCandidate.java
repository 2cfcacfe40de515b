package agro.programme.rotation;

import agro.dose.LabelEntry;
import agro.dose.LabelLimit;
import agro.dose.PreHarvest;
import agro.dose.PreHarvestLimit;
import agro.programme.LabelRecord;
import agro.report.InputProblem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A label record as the search sees it.
 *
 * @param record the record
 * @param modes modes of action of its active ingredients; empty if one of them is not recorded
 * @param limits limits of the label and of local rules
 * @param cost cost per hectare in the user's currency
 * @param hazard rank of the hazard class, 0 for the mildest; nothing if not recorded
 * @param residueDays days for which the residue lasts
 */
record PlanCandidate(
    LabelRecord record,
    List<ModeOfAction> modes,
    List<LabelLimit> limits,
    Optional<Double> cost,
    OptionalInt hazard,
    OptionalInt residueDays) {

  static final String COST = "cost_per_ha";
  static final String HAZARD = "hazard_class";
  static final String RESIDUE = "residue_days";

  static PlanCandidate of(
      LabelRecord record,
      List<LabelLimit> limits,
      ModeOfActionTable table,
      List<String> hazardClasses) {
    boolean known =
        !record.actives().isEmpty()
            && record.actives().stream().allMatch(active -> active.group().isPresent());
    var modes =
        known
            ? record.actives().stream()
                .map(each -> table.of(each.group().orElseThrow(), each.name()))
                .distinct()
                .toList()
            : List.<ModeOfAction>of();
    var residue = number(record, RESIDUE);
    return new PlanCandidate(
        record,
        modes,
        limits,
        number(record, COST),
        hazard(record, hazardClasses),
        residue.isPresent()
            ? OptionalInt.of((int) Math.floor(residue.get()))
            : OptionalInt.empty());
  }

  String product() {
    return record.product();
  }

  boolean hasNumber(String number) {
    return modes.stream().anyMatch(mode -> mode.number().equals(number));
  }

  boolean holds(String active) {
    return record.actives().stream().anyMatch(each -> each.name().equals(active));
  }

  /** The longest stated days before harvest; nothing if none is stated in days. */
  OptionalInt preHarvestDays() {
    return limits.stream()
        .filter(PreHarvestLimit.class::isInstance)
        .map(limit -> ((PreHarvestLimit) limit).entry())
        .filter(LabelEntry.Stated.class::isInstance)
        .map(entry -> ((LabelEntry.Stated<PreHarvest>) entry).value())
        .filter(PreHarvest.Days.class::isInstance)
        .mapToInt(value -> ((PreHarvest.Days) value).days())
        .max();
  }

  private static Optional<Double> number(LabelRecord record, String column) {
    var cell = record.further().get(column);
    if (cell == null || cell.isBlank()) {
      return Optional.empty();
    }
    try {
      double value = Double.parseDouble(cell.strip());
      if (value >= 0 && Double.isFinite(value)) {
        return Optional.of(value);
      }
    } catch (NumberFormatException e) {
      throw refused(record, column, cell, "a number of at least 0 with a decimal point");
    }
    throw refused(record, column, cell, "a number of at least 0 with a decimal point");
  }

  private static OptionalInt hazard(LabelRecord record, List<String> classes) {
    var cell = record.further().get(HAZARD);
    if (cell == null || cell.isBlank()) {
      return OptionalInt.empty();
    }
    int rank = classes.indexOf(cell.strip());
    if (rank < 0) {
      throw refused(record, HAZARD, cell, "one of " + String.join(", ", classes));
    }
    return OptionalInt.of(rank);
  }

  private static InputProblem refused(
      LabelRecord record, String column, String cell, String expected) {
    return InputProblem.at(
            record.location().column(column), record.use() + ": the cell reads \"" + cell + "\"")
        .expected(expected)
        .because("proposed programmes are ranked by it")
        .mend("correct the cell, or empty it if it is not known");
  }
}
