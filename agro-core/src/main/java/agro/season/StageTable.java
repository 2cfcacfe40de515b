package agro.season;

import agro.development.Thresholds;
import agro.generation.StageOffset;
import agro.reading.DelimitedLine;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.units.ThermalTime;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the table of stages that follow the flights, which a folder may be without. */
final class StageTable {

  private static final double MOST_DEGREE_DAYS = 5000;

  private StageTable() {}

  /** The pests with their stages in the order of the table. */
  static Map<String, MonitoredPest> addTo(
      Map<String, MonitoredPest> pests, Path folder, ReadReport.Collector report) {
    if (!Files.exists(folder.resolve(FolderLayout.STAGES.fileName()))) {
      return pests;
    }
    var stages = new LinkedHashMap<String, List<StageOffset>>();
    for (var line : FolderTable.linesIfAny(folder, FolderLayout.STAGES, report)) {
      report.countRow();
      var pest = FolderTable.reference(line, "pest", FolderLayout.PESTS, pests.keySet());
      var known = stages.computeIfAbsent(pest, name -> new ArrayList<>());
      known.add(stage(line, known, pests.get(pest)));
    }
    var joined = new LinkedHashMap<String, MonitoredPest>();
    pests.forEach(
        (name, pest) -> joined.put(name, pest.with(stages.getOrDefault(name, List.of()))));
    return joined;
  }

  private static StageOffset stage(
      DelimitedLine line, List<StageOffset> known, MonitoredPest pest) {
    var name = line.text("stage");
    if (name.equals("flight") || known.stream().anyMatch(stage -> stage.stage().equals(name))) {
      throw InputProblem.at(line.location("stage"), "the stage \"" + name + "\"")
          .expected("each stage of a pest once, and none with the name of the flight itself")
          .because("a line of the forecast is known by the name of its stage")
          .mend("take the line out, or give the stage another name");
    }
    var thresholds = FolderTable.located(line, "upper_c", () -> thresholds(line));
    FolderTable.located(line, "upper_c", () -> pest.model().with(thresholds));
    return new StageOffset(
        name, new ThermalTime(afterFlight(line)), thresholds, PestTable.source(line, "source"));
  }

  private static Thresholds thresholds(DelimitedLine line) {
    var lower = PestTable.celsius(line, "lower_c", line.number("lower_c"));
    var upper = line.optionalNumber("upper_c");
    return upper.isPresent()
        ? Thresholds.between(lower, PestTable.celsius(line, "upper_c", upper.getAsDouble()))
        : Thresholds.above(lower);
  }

  private static double afterFlight(DelimitedLine line) {
    var after = line.number("after_flight_c_d");
    if (!(after >= 0 && after <= MOST_DEGREE_DAYS)) {
      throw InputProblem.at(line.location("after_flight_c_d"), "the cell reads " + after)
          .expected("0 to 5000 °C·d after the same share of the flight")
          .because("a stage follows the flight, within a generation or two")
          .mend("look for a missing decimal point, or a sum in °F·d");
    }
    return after;
  }
}
