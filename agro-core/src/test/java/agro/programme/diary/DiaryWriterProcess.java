package agro.programme.diary;

import agro.dose.ProductPerArea;
import agro.programme.SprayedProduct;
import agro.programme.Spraying;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;

/** A process that writes entries and says after each one that it is finished. */
final class DiaryWriterProcess {

  private DiaryWriterProcess() {}

  /** Folder, name of the operator, number of entries. */
  public static void main(String[] arguments) {
    var out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    var diary = Diary.in(Path.of(arguments[0]));
    out.println("ready");
    for (int i = 0; i < Integer.parseInt(arguments[2]); i++) {
      out.println(diary.append(entry(i), arguments[1]));
    }
    out.println("done");
  }

  static AppliedUse entry(int i) {
    var start =
        ZonedDateTime.of(2027, 6, 1, 18, 0, 0, 0, ZoneId.of("Europe/Ljubljana")).plusHours(i);
    var dose = ProductPerArea.parse("0.75 L/ha");
    return AppliedUse.of(
        Spraying.of(
                "",
                start,
                start.plusMinutes(40),
                "Long Acre",
                SprayedProduct.of("Product A", dose),
                SprayedProduct.of("Product B", dose))
            .atStage("entry " + i + ", with a comma and \"quotes\""));
  }

  static ProcessBuilder start(Path folder, String operator, int entries) {
    var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    return new ProcessBuilder(
            List.of(
                java,
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                DiaryWriterProcess.class.getName(),
                folder.toString(),
                operator,
                Integer.toString(entries)))
        .redirectError(ProcessBuilder.Redirect.INHERIT);
  }
}
