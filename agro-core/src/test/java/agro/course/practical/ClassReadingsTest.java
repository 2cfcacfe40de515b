package agro.course.practical;

import static agro.ReferenceTable.number;
import static agro.course.practical.PracticalSamples.read;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.dose.sprayer.SprayUnits;
import agro.reading.DelimitedFormat;
import agro.report.InputProblem;
import agro.units.VolumePerArea;
import agro.working.TextLanguage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ClassReadingsTest {

  private static final String COLUMNS =
      "group,course,time,speed,width,nozzles,spacing,catches,output,catch_time,refill";

  private static double litresPerHectare(String heading, String line) {
    return volume(read(heading + "\n" + line + "\n"));
  }

  private static double volume(ClassReadings readings) {
    return readings
        .groups()
        .get(0)
        .calibrate(SprayUnits.METRIC)
        .perFieldArea()
        .perArea()
        .litresPerHectare();
  }

  @Test
  void publishedCalibrationsComeOut() {
    var lines = ReferenceTable.read(ClassReadingsTest.class, "published-calibrations.csv");
    assertThat(lines).hasSize(8);
    for (var line : lines) {
      var cells = line.getFields();
      var row = String.join(",", cells.subList(1, 11));
      double expected = VolumePerArea.parse(line.getField("expected")).litresPerHectare();
      assertThat(litresPerHectare(COLUMNS, line.getField("id") + "," + row))
          .as(line.getField("id"))
          .isCloseTo(expected, withinPercentage(100 * number(line, "tolerance")));
    }
  }

  /** 25 m in 25 s is 3.6 km/h; 600 × 0.9 L/min ÷ (3.6 km/h × 1 m) is 150 L/ha. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "group,course,time,width,output,catch_time ! 1,25 m,25 s,1 m,450 mL,30 s",
        "group,course (m),time (s),width (cm),output (mL),catch_time (s) ! 1,25,25,100,450,30",
        "group,course_m,time_s,width_m,output_ml,catch_time_s ! 1,25,25,1,450,30",
        "Gruppe,Strecke (m),Zeit,Breite,Gesamtmenge,Auffangzeit ! 1,25,24; 26 s,1 m,0.45 L,0.5 min",
        "group,course,time,width,catches,nozzles,catch_time ! 1,25 m,24 s|26 s,1 m,225|225 mL,2,30 s",
        "group,course,width,refill ! 1,25 m,1 m,375 mL",
        "group,speed,spacing,nozzles,output,catch_time ! 1,3.6 km/h,50 cm,2,440; 460 mL,30 s",
        "group,course [m],time,width,output,catch_time,shoes ! 1,25,25 s,1 m,450 mL,30 s,red"
      })
  void oneCalibrationInManyHands(String heading, String line) {
    assertThat(litresPerHectare(heading, line)).isCloseTo(150, offset(1e-9));
  }

  @Test
  void decimalCommasAreReadWhereTheyAreDeclared() {
    var text =
        """
        gruppe;strecke;zeit;breite;auffangmengen;auffangzeit;soll
        1;25 m;"24,9 s; 25,1";1,2 m;0,45 L;30 s;140 L/ha
        """;
    assertThatThrownBy(() -> read(text, DelimitedFormat.SEMICOLON))
        .hasMessageContaining("number with its unit");
    var mended = text.replace("25,1\"", "25,1 s\"");
    assertThat(volume(read(mended, DelimitedFormat.SEMICOLON))).isCloseTo(125, offset(1e-9));
    assertThatThrownBy(() -> read(mended.replace("1,2 m", "1.2 m"), DelimitedFormat.SEMICOLON))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("breite")
        .hasMessageContaining("1.2 m")
        .hasMessageContaining("decimal comma");
  }

  @Test
  void repeatsAndNozzlesAreToldApart() {
    var heading = "group,course,time,width,nozzles,catches (mL),catch_time\n";
    var repeats = read(heading + "1,25 m,25 s,1 m,1,440; 450; 460,30 s\n");
    assertThat(volume(repeats)).isCloseTo(150, offset(1e-9));
    var nozzles = read(heading + "1,25 m,25 s,1 m,3,440; 450; 460,30 s\n");
    assertThat(volume(nozzles)).isCloseTo(450, offset(1e-9));
    var both = read(heading + "1,25 m,25 s,1 m,2,440; 450 | 460; 450,30 s\n");
    assertThat(volume(both)).isCloseTo(300, offset(1e-9));
    var half =
        both.groups().get(0).calibrate(SprayUnits.METRIC).relativeHalfWidth(0.95).orElseThrow();
    assertThat(half).isBetween(0.01, 0.1);
  }

  @Test
  void groupsWithoutReadingsAreLeftOutAndTold() {
    var found =
        read(
            "group,course,time,width,output,catch_time\n1,25 m,25 s,1 m,450 mL,30 s\n2,,,1 m,,30 s\n");
    assertThat(found.groups()).hasSize(1);
    assertThat(found.emptyGroups()).containsExactly("2");
    assertThat(found.pooled(PoolingRules.STANDARD).presentation().toText())
        .containsPattern("groups without readings: +2");
    assertThat(found.report().rowsRead()).isEqualTo(2);
    assertThat(found.report().toString()).contains("line 3", "group 2 has no readings");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "1,25,25 s,1 m,1,450 mL,30 s ! course ! its unit",
        "1,25 m,25 s,1 m,,450 mL; 450 mL,30 s ! nozzles ! repeats of one",
        "1,25 m,25 s,1 m,2,1 mL; 2 mL; 3 mL,30 s ! catches ! part the nozzles",
        "1,25 m,,1 m,1,450 mL,30 s ! neither time nor speed ! seconds of each run",
        "1,25 m,25 s,,1,450 mL,30 s ! width ! measure the width",
        "1,25 m,25 s,1 m,1,450 mL, ! catch_time ! write the time",
        "1,25 m,25 s,1 m,1,,30 s ! catches ! what was caught",
        "1,25 m,0 s,1 m,1,450 mL,30 s ! time ! more than zero",
        "1,25 L,25 s,1 m,1,450 mL,30 s ! course ! 25 L",
        "1,quick,25 s,1 m,1,450 mL,30 s ! course ! is no number",
        "1,25 m,25 s,1 m,0,450 mL,30 s ! nozzles ! 1 or more",
        "1,25 m,25 s,1 m,1,0 mL,30 s ! nothing was caught ! open the valve",
        ",25 m,25 s,1 m,1,450 mL,30 s ! group ! number the groups",
        "1,25 m; 26 m,25 s,1 m,1,450 mL,30 s ! course ! holds for all runs"
      })
  void refusesWhatCannotBeUsedAndNamesTheCell(String line, String what, String cure) {
    assertThatThrownBy(
            () -> read("group,course,time,width,nozzles,catches,catch_time\n" + line + "\n"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("class.csv")
        .hasMessageContaining(what)
        .hasMessageContaining(cure);
  }

  @Test
  void refusesFilesThatContradictThemselves() {
    var line = "1,25 m,25 s,1 m,450 mL,30 s\n";
    var heading = "group,course,time,width,output,catch_time";
    assertThatThrownBy(() -> read(heading + "\n" + line + line))
        .hasMessageContaining("each group once");
    assertThatThrownBy(() -> read(heading.substring(6) + "\n" + line.substring(2)))
        .hasMessageContaining("no column for the group");
    assertThatThrownBy(() -> read(heading + ",course (m)\n1,25 m,25 s,1 m,450 mL,30 s,25\n"))
        .hasMessageContaining("hold the same");
    assertThatThrownBy(() -> read(heading + ",refill\n1,25 m,25 s,1 m,450 mL,30 s,1 L\n"))
        .hasMessageContaining("which of them counts");
    assertThatThrownBy(() -> read(heading + ",speed\n1,25 m,25 s,1 m,450 mL,30 s,4 km/h\n"))
        .hasMessageContaining("either a speed or the times");
    assertThatThrownBy(
            () -> read(heading + ",nozzles,spacing\n1,25 m,25 s,3 m,450 mL,30 s,2,50 cm\n"))
        .hasMessageContaining("contradict each other");
    assertThatThrownBy(() -> read(heading + "\n1,,,,,\n"))
        .hasMessageContaining("no group has readings");
  }

  @Test
  void sprayersCanBeTakenApart() {
    var text =
        """
        group,sprayer,course,time,width,output,catch_time
        1,red,25 m,25 s,1 m,450 mL,30 s
        2,blue,25 m,25 s,1 m,300 mL,30 s
        """;
    var both = read(text);
    assertThat(both.sprayers()).containsExactly("red", "blue");
    assertThat(volume(both.ofSprayer("blue"))).isCloseTo(100, offset(1e-9));
    assertThatThrownBy(() -> both.ofSprayer("green")).hasMessageContaining("[red, blue]");
  }

  @ParameterizedTest
  @EnumSource(TextLanguage.class)
  void theExamplesOfTheTemplateAreReadBack(TextLanguage language) {
    var template = ClassReadings.template(language);
    var heading = template.lines().filter(line -> !line.startsWith("#")).findFirst().orElseThrow();
    var examples = new StringBuilder(heading).append('\n');
    template
        .lines()
        .filter(line -> line.matches("# [0-9].*"))
        .forEach(line -> examples.append(line.substring(2)).append('\n'));
    var format =
        language == TextLanguage.GERMAN ? DelimitedFormat.SEMICOLON : DelimitedFormat.COMMA;
    var found = read(examples.toString(), format);
    assertThat(found.groups()).hasSize(3);
    for (var finding : found.pooled(PoolingRules.STANDARD).findings()) {
      assertThat(finding.verdict()).isEqualTo(GroupVerdict.WITHIN);
      assertThat(finding.ownArithmetic().map(OwnArithmetic::agrees).orElse(true)).isTrue();
    }
  }

  @Test
  void anEmptyTemplateIsWrittenButNeverOverAFile(@TempDir Path folder) throws IOException {
    var file = folder.resolve("class.csv");
    ClassReadings.writeTemplate(file, TextLanguage.GERMAN);
    assertThat(Files.readString(file, StandardCharsets.UTF_8)).contains("düsenabstand");
    assertThatThrownBy(() -> ClassReadings.writeTemplate(file, TextLanguage.ENGLISH))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("would be lost");
    assertThatThrownBy(() -> ClassReadings.read(file, DelimitedFormat.SEMICOLON))
        .hasMessageContaining("no lines below it");
  }
}
