package agro.trial;

import agro.report.ReadReport;
import agro.report.SourceLocation;
import agro.units.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Recognises repeated lines of one plot on one day as sub-samples of that plot. */
final class SubSamples {

  private record Place(
      String site, OptionalInt year, String plot, Optional<LocalDate> date, String variable) {
    static Place of(Assessment line) {
      var plot = line.plot();
      return new Place(plot.site(), plot.year(), plot.name(), line.date(), line.variable());
    }
  }

  private SubSamples() {}

  /**
   * Numbers the lines that repeat a plot on a day without naming the plant.
   *
   * @param lines lines of a trial
   * @param report takes a note when there were such lines
   * @return the lines, those with repetitions numbered from 1 in their order
   */
  static List<Assessment> numbered(List<Assessment> lines, ReadReport.Collector report) {
    Map<Place, Integer> times = new HashMap<>();
    for (var line : lines) {
      if (line.subSample().isEmpty()) {
        times.merge(Place.of(line), 1, Integer::sum);
      }
    }
    Map<Place, Integer> next = new HashMap<>();
    var numbered = new ArrayList<Assessment>();
    int places = 0;
    for (var line : lines) {
      var place = Place.of(line);
      if (line.subSample().isEmpty() && times.get(place) > 1) {
        int number = next.merge(place, 1, Integer::sum);
        places += number == 1 ? 1 : 0;
        numbered.add(line.onSubSample(Integer.toString(number)));
      } else {
        numbered.add(line);
      }
    }
    if (places > 0) {
      report.add(
          ReadReport.Deed.ASSUMED,
          SourceLocation.NONE,
          "repeated lines of one plot on one day are sub-samples of that plot, numbered from 1 in"
              + " their order, in "
              + places
              + (places == 1 ? " case" : " cases")
              + "; they are no replicates");
    }
    return List.copyOf(numbered);
  }

  static String written(Assessment line) {
    if (line.value().isEmpty()) {
      return "missing";
    }
    return Numbers.plain(line.value().getAsDouble())
        + (line.outOf().isPresent() ? " of " + line.outOf().getAsInt() : "");
  }
}
