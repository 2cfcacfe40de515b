package agro.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.nio.file.Path;
import java.time.LocalDate;
import org.assertj.core.api.AbstractThrowableAssert;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SeasonFolderProblemsTest {
  private static final String VISITS = "visits.csv";

  @TempDir Path folder;

  private AbstractThrowableAssert<?, ? extends Throwable> reading(SmallFolder small) {
    small.writeTo(folder);
    return assertThatThrownBy(() -> SeasonFolder.read(folder)).isInstanceOf(InputProblem.class);
  }

  @Test
  void aFolderThatIsNotThere() {
    assertThatThrownBy(() -> SeasonFolder.read(folder.resolve("nowhere")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("template");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "places.csv",
        "logs.csv",
        "pests.csv",
        "traps.csv",
        "visits.csv",
        "logs/hill-top.csv"
      })
  void aFileThatIsMissingEmptyOrHeaderOnly(String file) {
    reading(new SmallFolder().without(file)).hasMessageContaining(file);
    reading(new SmallFolder().put(file, "")).hasMessageContaining(file);
  }

  @ParameterizedTest
  @ValueSource(strings = {"places.csv", "logs.csv", "pests.csv", "traps.csv", "visits.csv"})
  void aTableWithItsHeadingOnly(String file) {
    var small = new SmallFolder().writeTo(folder);
    var heading = SmallFolder.textOf(small.resolve(file)).lines().findFirst().orElseThrow();
    reading(new SmallFolder().put(file, heading + "\n")).hasMessageContaining(file);
  }

  @Test
  void aLogWithItsHeadingOnly() {
    reading(new SmallFolder().put("logs/hill-top.csv", "day,min,max\n"))
        .hasMessageContaining("hill-top.csv");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "T1,2024-04-09,working,3,|T1,2024-04-09,working,three,|line 4|\"count\"|three",
        "T1,2024-04-09,working,3,|T1,2024-04-09,working,-3,|line 4|\"count\"|-3",
        "T1,2024-04-09,working,3,|T1,2024-04-09,working,2.5,|line 4|\"count\"|2.5",
        "T1,2024-04-09,working,3,|T1,2024-04-09,working,,|line 4|\"count\"|failed",
        "T1,2024-04-13,failed,,|T1,2024-04-13,failed,2,|line 5|\"count\"|working",
        "T1,2024-04-01,set,,yes|T1,2024-04-01,set,0,yes|line 2|\"count\"|empty",
        "T1,2024-04-09,working,3,|T1,2024-04-09,wroking,3,|line 4|\"state\"|working",
        "T1,2024-04-09,working,3,|T9,2024-04-09,working,3,|line 4|\"trap\"|T1",
        "T1,2024-04-09,working,3,|T1,09-04,working,3,|line 4|\"date\"|year",
        "T1,2024-04-09,working,3,|T1,2024-04-31,working,3,|line 4|\"date\"|calendar",
        "T1,2024-04-09,working,3,|T1,2024-04-05,working,3,|line 4|second line|line 3",
        "T1,2024-04-09,working,3,|T1,2024-04-03,working,3,|line 4|after 2024-04-05|order",
        "T2,2024-04-01,set,,|# |line 8|before the trap was set|state set",
        "working,2,no|working,2,never|line 8|\"lure_renewed\"|yes or no",
      })
  void visitsThatCannotBe(String old, String by, String where, String what, String cure) {
    reading(new SmallFolder().replacing(VISITS, old, by))
        .hasMessageContaining("visits.csv")
        .hasMessageContaining(where)
        .hasMessageContaining(what)
        .hasMessageContaining(cure)
        .hasMessageContaining("Mend:");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "places.csv|Hill Top,shelter air|Hill Top,shed air|shelter air, canopy air, tunnel, soil",
        "places.csv|2,Hill Top|2,Hilltop|write \"Hill Top\" if that is meant",
        "places.csv|Deep Bed,soil|Long Acre,soil|for the second time",
        "places.csv|Hill Top,shelter air,2,|Hill Top,shelter air,2,Hill Top|its own neighbour",
        "logs.csv|hill-top.csv,Hill Top|hill-top.csv,Hill Tip|write \"Hill Top\" if that is meant",
        "logs.csv|daily extremes,day,min,max,°C|dayly extremes,day,min,max,°C|daily extremes",
        "logs.csv|max,°C|max,degrees|°F",
        "logs.csv|day,min,max,°C|,min,max,°C|time_column",
        "pests.csv|air,7,none|air,7,horizontal|upper threshold",
        "pests.csv|air,7,none|air,445,none|from -20 to 60 °C",
        "pests.csv|air,7,none|air,7,sideways|none, horizontal, intermediate, vertical",
        "pests.csv|03-01,10-31|1 March,10-31|such as 03-01",
        "traps.csv|T1,Long Acre,red moth|T1,Long Acre,red math|write \"red moth\" if that is",
        "traps.csv|trap,place,pest|trap,plaice,pest|place",
      })
  void tablesThatCannotBe(String file, String old, String by, String expected) {
    reading(new SmallFolder().replacing(file, old, by))
        .hasMessageContaining(file)
        .hasMessageContaining(expected);
  }

  @Test
  void aPestWithoutRangeAndRequirement() {
    reading(
            new SmallFolder()
                .replacing(
                    "pests.csv",
                    "none,invented for demonstration,400,invented for demonstration,50",
                    "none,invented for demonstration,,,"))
        .hasMessageContaining("pests.csv, line 2")
        .hasMessageContaining("egg_to_adult_c_d");
  }

  @Test
  void moreNightsOpenThanThereWere() {
    var small =
        new SmallFolder()
            .put(
                VISITS,
                """
                trap,date,state,count,nights_open
                T1,2024-04-01,set,,
                T1,2024-04-05,working,0,6
                """);
    var read = SeasonFolder.read(small.writeTo(folder));
    assertThatThrownBy(() -> read.pestAt("red moth", "Long Acre"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("visits.csv, line 3, column \"nights_open\"");
  }

  @Test
  void logsThatCannotBe() {
    var log = SmallFolder.days(LocalDate.of(2024, 2, 20), LocalDate.of(2024, 4, 17), 4);
    var file = "logs/long-acre.csv";
    reading(new SmallFolder().put(file, log.replace("2024-03-05,", "2024-03-04,")))
        .hasMessageContaining("long-acre.csv")
        .hasMessageContaining("2024-03-04");
    reading(new SmallFolder().put(file, log.replace("2024-03-05,", "2024-01-05,")))
        .hasMessageContaining("long-acre.csv");
    reading(new SmallFolder().put(file, log.replace("2024-03-05,", "05-03,")))
        .hasMessageContaining("long-acre.csv");
    reading(new SmallFolder().put(file, log.replaceFirst("2024-03-05,\\d+", "2024-03-05,warm")))
        .hasMessageContaining("long-acre.csv")
        .hasMessageContaining("warm");
    reading(new SmallFolder().put(file, log.replaceFirst("2024-03-05,\\d+", "2024-03-05,40")))
        .hasMessageContaining("long-acre.csv");
  }

  @Test
  void namesThatNobodyKnows() {
    var read = SeasonFolder.read(new SmallFolder().writeTo(folder));
    assertThatThrownBy(() -> read.pestAt("red moths", "Long Acre"))
        .hasMessageContaining("ask for \"red moth\" if that is meant");
    assertThatThrownBy(() -> read.pestAt("red moth", "long acre"))
        .hasMessageContaining("ask for \"Long Acre\" if that is meant");
    assertThatThrownBy(() -> read.pestAt("red moth", "Hill Top"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("Long Acre");
  }

  @Test
  void thresholdsMadeForSoilRefuseAir() {
    var read = SeasonFolder.read(new SmallFolder().writeTo(folder));
    assertThatThrownBy(() -> read.pestAt("root fly", "Long Acre"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("soil");
  }

  @Test
  void aPlaceWithoutALog() {
    var read =
        SeasonFolder.read(
            new SmallFolder()
                .replacing(
                    "logs.csv", "logs/long-acre.csv,Long Acre,daily extremes,day,min,max,°C\n", "")
                .writeTo(folder));
    assertThatThrownBy(() -> read.pestAt("red moth", "Long Acre"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no log of Long Acre")
        .hasMessageContaining("Hill Top");
  }

  @Test
  void nothingWasKnownYet() {
    var read = SeasonFolder.read(new SmallFolder().writeTo(folder));
    assertThatThrownBy(() -> read.upTo(LocalDate.of(2024, 3, 1)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2024-04-20");
    assertThat(read.upTo(LocalDate.of(2024, 4, 1)).issueDate()).isEqualTo("2024-04-01");
  }

  @Test
  void aDayOfIssueGivenAsText() {
    var read = SeasonFolder.read(new SmallFolder().writeTo(folder));
    assertThat(read.asOf(" 2024-04-01 ").issueDate()).isEqualTo("2024-04-01");
    assertThat(read.asOf(" ")).isSameAs(read);
    assertThatThrownBy(() -> read.asOf("1 April"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("\"1 April\"")
        .hasMessageContaining("2024-04-20");
  }
}
