package agro.programme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.dose.ApplicationLimit;
import agro.dose.IntervalLimit;
import agro.dose.LabelEntry;
import agro.dose.LimitScope;
import agro.dose.PreHarvest;
import agro.dose.PreHarvestLimit;
import agro.dose.ReEntryLimit;
import agro.report.InputProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabelBookTest {

  @TempDir Path folder;

  private static LabelRecord one(String columns, String cells) {
    return LabelBook.parse("labels", "product,crop," + columns + "\nA,leeks," + cells + "\n")
        .require("A", "leeks");
  }

  @Test
  void theThreeStatesAreThreeThings() {
    var record = one("max_applications,min_interval,pre_harvest,re_entry", "3,none,7 days,");
    var number = record.limits().of(ApplicationLimit.class);
    assertThat(number).extracting(ApplicationLimit::entry).containsExactly(LabelEntry.stated(3));
    assertThat(record.limits().of(IntervalLimit.class))
        .extracting(IntervalLimit::entry)
        .containsExactly(LabelEntry.none());
    assertThat(record.limits().of(ReEntryLimit.class)).isEmpty();
    assertThat(record.limits().of(PreHarvestLimit.class).get(0).entry())
        .isEqualTo(LabelEntry.stated(new PreHarvest.Days(7)));
    assertThat(record.stewardship().rainFree()).isEqualTo(LabelEntry.notRecorded());
  }

  @Test
  void mixturesNameTheIngredientOfACap() {
    var record =
        one(
            "active,group,content,max_dose_season,re_entry,cost_per_ha",
            "one + two,28 + 4A,200 g/L + 50 g/L,1.5 kg ai/ha of one; 3 L/ha,2 days,40");
    assertThat(record.actives()).extracting(LabelActive::name).containsExactly("one", "two");
    assertThat(record.actives().get(1).groupNumber()).contains("4");
    assertThat(record.caps()).extracting(ActiveCap::active).containsExactly("one");
    assertThat(record.caps().get(0).limit().scope()).isEqualTo(LimitScope.SEASON);
    assertThat(record.limits().limits()).hasSize(2);
    assertThat(record.limits().of(ReEntryLimit.class).get(0).entry())
        .isEqualTo(LabelEntry.stated(Duration.ofDays(2)));
    assertThat(record.further()).containsEntry("cost_per_ha", "40");
  }

  @ParameterizedTest
  @CsvSource({
    "max_applications,0,whole number",
    "max_applications,three,whole number",
    "min_interval,1.5,whole days",
    "pre_harvest,-7,whole days",
    "pre_harvest,7.5 d,whole days",
    "re_entry,24,unit",
    "re_entry,soon,unit",
    "max_dose_season,1.5 kg ai/ha,active",
    "max_dose,3 mL/L,per area",
    "buffer_water,5,5",
    "max_aplications,3,max_applications",
    "bees,perhaps,not in bloom"
  })
  void aCellThatCannotBeReadIsNoLimitThatNobodySees(String column, String cell, String word) {
    assertThatThrownBy(() -> one(column, cell))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining(column)
        .hasMessageContaining(word);
  }

  @ParameterizedTest
  @CsvSource({"4A,4", "28,28", "UN,UN", "UNF,UNF", "N-1B,N-1", "12,12"})
  void subGroupsHaveTheirMainNumber(String written, String number) {
    assertThat(LabelActive.of("x", written, "100 g/L").groupNumber()).contains(number);
  }

  @Test
  void aFolderIsReadWithItsPickingDays() throws IOException {
    Files.writeString(folder.resolve("labels.csv"), "product,crop\nA,leeks\n");
    Files.writeString(
        folder.resolve("fields.csv"),
        """
            field,district,zone,area,latitude,longitude,distance_water
            Long Acre,Osmere Vale,Europe/Ljubljana,2.5 ha,46.4,14.5,20 m
            """);
    Files.writeString(
        folder.resolve("plantings.csv"),
        """
            field,crop,planted,first_picking,last_picking,picking_every_days,picked_by
            Long Acre,leeks,2027-04-01,2027-07-01,2027-07-10,3,10:30
            """);
    Files.writeString(
        folder.resolve("local-rules.csv"), "rule,crop,pre_harvest\ndistrict order,leeks,14\n");
    Files.writeString(
        folder.resolve("bloom.csv"), "field,plant,first,last\nLong Acre,clover,2027-06-01,\n");
    var programme = ProgrammeFolder.read(folder);
    var picking = programme.plantings().get(0).picking();
    assertThat(picking.days()).hasSize(4).contains(LocalDate.of(2027, 7, 10));
    assertThat(picking.doneBy()).contains(LocalTime.of(10, 30));
    assertThat(programme.field("Long Acre").distances().get("water").metres()).isEqualTo(20);
    assertThat(programme.localRules().get(0).limits().limits()).hasSize(1);
    assertThat(programme.blooms().get(0).covers(LocalDate.of(2027, 8, 1))).isTrue();
    assertThatThrownBy(() -> programme.field("Long Aker"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("Long Acre");
    assertThatThrownBy(() -> programme.labels().require("B", "leeks"))
        .isInstanceOf(InputProblem.class);
  }
}
