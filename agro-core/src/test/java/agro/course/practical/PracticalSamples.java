package agro.course.practical;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import java.nio.file.Path;
import java.util.List;

/** Readings for tests; every number is invented. */
final class PracticalSamples {

  private PracticalSamples() {}

  static ClassReadings read(String text) {
    return read(text, DelimitedFormat.COMMA);
  }

  static ClassReadings read(String text, DelimitedFormat format) {
    return ClassReadings.of(DelimitedText.parse("class.csv", text, format, List.of()));
  }

  /** The class of the demonstration data. */
  static ClassReadings demo() {
    return ClassReadings.read(
        Path.of(System.getProperty("basedir", "."))
            .resolve("../demo-data/osmere-vale/class-calibrations.csv"));
  }

  /** Groups with lances that come to so many L/ha: 25 m in 25 s, 1 m wide, so 2.5 mL for 1 L/ha. */
  static ClassReadings volumes(double... litresPerHectare) {
    var text = new StringBuilder("group,course,time,width,output (mL),catch_time\n");
    for (int i = 0; i < litresPerHectare.length; i++) {
      text.append(i + 1).append(",25 m,25 s,1 m,").append(2.5 * litresPerHectare[i]);
      text.append(",25 s\n");
    }
    return read(text.toString());
  }
}
