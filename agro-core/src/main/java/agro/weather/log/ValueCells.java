package agro.weather.log;

import agro.reading.DelimitedLine;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.TemperatureUnit;
import java.util.Set;

/** Reads temperature cells: missing codes, unit and plausible range. */
final class ValueCells {

  private final TemperatureUnit unit;
  private final boolean unitDeclared;
  private final Set<String> missingCodes;
  private final Plausibility plausibility;
  private final Tally missing =
      new Tally(Deed.NOTED, "no temperature: the cell is empty or holds a missing code");

  ValueCells(LogFormat format, String file, int mostValues) {
    unit = format.unit().orElse(TemperatureUnit.CELSIUS);
    unitDeclared = format.unit().isPresent();
    missingCodes = format.missingCodes();
    plausibility = new Plausibility(file, unit, mostValues);
  }

  /** Temperature in °C, or NaN when it is missing or was dropped. */
  double celsius(DelimitedLine line, String column) {
    var text = line.optionalText(column);
    if (text.isEmpty() || missingCodes.contains(text.get())) {
      missing.add(line.location(column));
      return Double.NaN;
    }
    double value = unit.toCelsius(line.number(column));
    return plausibility.accepts(value, line.location(column)) ? value : Double.NaN;
  }

  /** A number as it was read, in °C; NaN when it is missing or has to be left out. */
  double celsius(double number) {
    double celsius = unit.toCelsius(number);
    return plausibility.isPlausible(celsius) ? celsius : Double.NaN;
  }

  /** Counts a number for which {@link #celsius(double)} has no temperature. */
  void leaveOut(double number, SourceLocation place) {
    if (Double.isNaN(number)) {
      missing.add(place);
    } else {
      plausibility.leaveOut(place);
    }
  }

  /** Tells what was found, and refuses a log that looks like another unit. */
  void tell(ReadReport.Collector collector, SourceLocation file) {
    if (!unitDeclared) {
      collector.add(Deed.ASSUMED, file, "no unit is declared: the temperatures are taken for °C");
    }
    missing.tell(collector);
    plausibility.judge(collector);
  }
}
