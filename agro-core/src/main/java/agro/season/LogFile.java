package agro.season;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import agro.reading.TextFile;
import agro.report.Progress;
import agro.weather.LogFormat;
import agro.weather.Medium;
import agro.weather.TemperatureLog;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A temperature log as a line of logs.csv describes it.
 *
 * @param path where it lies
 * @param name the name that logs.csv gives it, which is what messages show
 * @param format how it is written
 * @param place where it was recorded
 * @param medium what was measured there
 * @param madeOn for days foreseen, the day on which they were foretold; empty for measured ones
 */
record LogFile(
    Path path,
    String name,
    LogFormat format,
    String place,
    Medium medium,
    Optional<LocalDate> madeOn) {

  TemperatureLog read(Progress progress) {
    DelimitedFormat written = format.text();
    var content = TextFile.read(path, name, written.charset());
    var text = DelimitedText.parse(name, content, written, format.columns().names());
    return TemperatureLog.of(text, format, place, medium, progress);
  }
}
