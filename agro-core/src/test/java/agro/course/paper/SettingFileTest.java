package agro.course.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.course.CourseUnits;
import agro.reading.DelimitedFormat;
import agro.report.InputProblem;
import agro.units.AreaUnit;
import agro.units.LandUnit;
import agro.working.TextLanguage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettingFileTest {

  private static SettingFile parse(String lines) {
    return SettingFile.parse(
        "setting.csv", "key,value\n" + lines, DelimitedFormat.COMMA, TextLanguage.ENGLISH);
  }

  @Test
  void everythingCanBeStated() {
    var read =
        parse(
            """
            place,Low Marsh
            fields,North; South / East
            crops,rice
            pests,stem borer
            pests,leaf folder
            currency,XTS
            units,us
            land unit,acre
            """);
    var setting = read.setting();
    assertThat(setting.place()).isEqualTo("Low Marsh");
    assertThat(setting.fields()).containsExactly("North", "South", "East");
    assertThat(setting.pests()).containsExactly("stem borer", "leaf folder");
    assertThat(setting.currency()).isEqualTo("XTS");
    assertThat(setting.units()).isEqualTo(CourseUnits.US.withLand(AreaUnit.ACRE));
    assertThat(read.report().toString()).doesNotContain("assumed").contains("1 ac is 4046.856");
    assertThat(read.presentation().toText()).contains("Low Marsh");
  }

  @Test
  void whatIsLeftOutIsReported() {
    var read = parse("place,Low Marsh\n");
    assertThat(read.setting().units()).isEqualTo(CourseUnits.METRIC);
    assertThat(read.report().toString())
        .contains("fields is not stated; taken: Upper Croft")
        .contains("land_unit is not stated; taken: hectare")
        .doesNotContain("place is not stated");
  }

  @Test
  void localUnitsOfLandNeedTheirPlaceOrTheirSize() {
    assertThat(parse("land_unit,bigha (Bihar)\n").setting().units().land())
        .isEqualTo(LandUnit.BIGHA_PUCCA);
    assertThat(parse("land_unit,rai\n").setting().units().land()).isEqualTo(LandUnit.RAI);
    assertThatThrownBy(() -> parse("land_unit,bigha\n"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("line 2")
        .hasMessageContaining("bigha (Himachal)");
    var own = parse("land_unit,1 strip = 338.5 m2\n").setting().units().land();
    assertThat(own.symbol()).isEqualTo("strip");
    assertThat(own.toBase(2)).isCloseTo(677, within(1e-9));
    assertThat(own.fromBase(338.5)).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plcae,x | write \"place\"",
        "units,imperial | metric or us",
        "land_unit,parsec | not known",
        "land_unit,1 strip = 3 kg | not clear",
        "land_unit,1 strip = 0.1 m2 | no unit of fields",
        "fields,one;two | at least 3",
        "place, | empty",
      })
  void whatCannotBeUsedIsRefused(String line, String message) {
    assertThatThrownBy(() -> parse("currency,EUR\n" + line + "\n"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("line 3")
        .hasMessageContaining(message.strip());
  }

  @Test
  void aKeyIsStatedOnce() {
    assertThatThrownBy(() -> parse("place,a\nplace,b\n")).hasMessageContaining("stated twice");
  }

  @Test
  void papersAreSetInThePlace() {
    var setting = parse("place,P\nfields,F1;F2;F3\nland_unit,1 strip = 338 m2\n").setting();
    var plan = PaperPlan.of(PaperSamples.onlyDose(1), PaperSamples.students(2), 4).at(setting);
    for (var paper : ClassPapers.of(plan).papers()) {
      assertThat(paper.presentation().toText()).contains(" strip").containsPattern("F[123]");
    }
  }
}
