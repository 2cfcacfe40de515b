package agro.development.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.reading.DelimitedFormat;
import agro.report.InputProblem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RearingDataTest {

  @TempDir private Path folder;

  private Path file(String... lines) throws IOException {
    var file = folder.resolve("rearing.csv");
    Files.writeString(file, String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
    return file;
  }

  @Test
  void readsMeansWithAllTheirColumns() throws IOException {
    var file =
        file(
            "cabinet;set_celsius;measured_celsius;days;n;sd_days",
            "A;15;14,6;51,66;30;4,2",
            "B;20;;23,21;;",
            "C;36;35,2;none;40;");
    var data = RearingData.readMeans("beetle", file, DelimitedFormat.SEMICOLON);
    assertThat(data.means()).hasSize(3);
    assertThat(data.means().get(0).celsius()).isEqualTo(14.6);
    assertThat(data.means().get(0).rateStandardError())
        .isCloseTo(4.2 / Math.sqrt(30) / (51.66 * 51.66), within(1e-12));
    assertThat(data.means().get(1).celsius()).isEqualTo(20);
    assertThat(data.means().get(2).rate()).isZero();
    assertThat(data.report().toString())
        .contains("set temperature stands for the measured one in 1");
    assertThat(data.presentation().toText()).contains("no development").contains("51.66");
  }

  /** Published: 50.11 ± 0.79 d gives 3.146e-4, 7.73 ± 0.14 d gives 2.343e-3 (Acarologia 52). */
  @Test
  void theErrorOfARateFollowsFromThatOfTheDuration() {
    assertThat(RearingMean.of(15, 50.11).withSpread(1, 0.79).rateStandardError())
        .isCloseTo(3.146e-4, within(5e-8));
    assertThat(RearingMean.of(30, 7.73).withSpread(1, 0.14).rateStandardError())
        .isCloseTo(2.343e-3, within(5e-7));
    assertThat(RearingMean.of(30, 7.73).rateStandardError()).isNaN();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "15,0,,|line 3, column \"days\"|0 d",
        "15,-3,,|line 3, column \"days\"|-3 d",
        "15,,,|line 3, column \"days\"|the cell is empty",
        "75,12,,|line 3, column \"set_celsius\"|75",
        "15,12,0,|line 3, column \"n\"|number of animals is 0",
        "15,12,4,-1|line 3, column \"sd_days\"|-1",
        "15,NaN,,|line 3, column \"days\"|NaN"
      })
  void namesLineAndColumnOfWhatCannotBe(String line, String place, String value)
      throws IOException {
    var file = file("set_celsius,days,n,sd_days", "20,23.21,,", line);
    assertThatThrownBy(() -> RearingData.readMeans("beetle", file, DelimitedFormat.COMMA))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining(place)
        .hasMessageContaining(value);
  }

  @Test
  void readsAnimalsAndWorksOutTheirMeans() throws IOException {
    var file =
        file(
            "cabinet,set_celsius,from_days,to_days,fate,n",
            "A,20,20,21,developed,4",
            "A,20,22,23,developed,2",
            "A,20,25,,alive,1",
            "A,20,9,,died,3");
    var data = RearingData.readAnimals("beetle", file, DelimitedFormat.COMMA);
    assertThat(data.means()).hasSize(1);
    var mean = data.means().get(0);
    assertThat(mean.meanDays().orElseThrow()).isCloseTo((4 * 20.5 + 2 * 22.5) / 6, within(1e-12));
    assertThat(mean.animals().orElseThrow()).isEqualTo(6);
    assertThat(data.report().toString()).contains("count as not yet developed until their last");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "20,21,20,developed|column \"to_days\"|not yet developed on day 21",
        "20,21,,developed|column \"to_days\"|no day on which that was seen",
        "20,21,22,died|column \"to_days\"|did not develop have a day",
        "20,-1,,alive|column \"from_days\"|day -1",
        "20,21,22,emerged|column \"fate\"|emerged"
      })
  void namesTheCellOfARecordThatCannotBe(String line, String place, String value)
      throws IOException {
    var file = file("set_celsius,from_days,to_days,fate", line);
    assertThatThrownBy(() -> RearingData.readAnimals("beetle", file, DelimitedFormat.COMMA))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("line 2")
        .hasMessageContaining(place)
        .hasMessageContaining(value);
  }

  @Test
  void refusesWhatCarriesNoFit() {
    var few = RearingData.ofMeans("few", new double[] {15, 20}, new double[] {30, 20});
    assertThatThrownBy(() -> RateFitting.of(RateModel.BRIERE_1).fit(few))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("3 free parameters")
        .hasMessageContaining("2 temperatures")
        .hasMessageContaining("fix one");
    var one = RearingData.ofMeans("one", new double[] {20, 20, 20}, new double[] {30, 31, 29});
    assertThatThrownBy(() -> RateFitting.of(RateModel.LINEAR).fit(one))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("all 3 rates of \"one\" belong to 20 °C");
    var none = RearingData.of("none", List.of(RearingMean.noDevelopment(10)));
    assertThatThrownBy(() -> RateFitting.of(RateModel.TAYLOR).fit(none))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no animal developed at any temperature");
    assertThatThrownBy(() -> RearingData.of("empty", List.of()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("a rearing without data");
    assertThatThrownBy(() -> RearingData.ofMeans("odd", new double[] {1, 2}, new double[] {3}))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2 temperatures with 1 durations");
    assertThatThrownBy(
            () -> RearingData.ofMeans("bad", new double[] {20}, new double[] {Double.NaN}))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("not known d")
        .hasMessageContaining("withoutDevelopmentAt");
    assertThatThrownBy(
            () -> RearingData.ofMeans("bad", new double[] {Double.NaN}, new double[] {3}))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("in °C between -30 and 70");
  }

  @Test
  void aCabinetWithoutDevelopmentIsData() {
    var data = Rearings.named("oligota").withoutDevelopmentAt(10, 35);
    var fit = RateFitting.of(RateModel.BRIERE_2).fit(data);
    assertThat(fit.points()).hasSize(9);
    assertThat(fit.curve().rate(35)).isZero();
    var line = RateFitting.of(RateModel.LINEAR).fit(data);
    assertThat(line.points()).hasSize(7);
    assertThat(line.remarks().toString()).contains("without development, where no line holds");
  }

  @Test
  void cabinetsWithCensoredAnimalsAloneAreRefusedByMeansAndTakenByDurations() {
    var animals =
        List.of(
            RearedAnimals.developed("A", 18, 30, 31, 20),
            RearedAnimals.developed("B", 24, 18, 19, 20),
            RearedAnimals.developed("C", 28, 14, 15, 20),
            RearedAnimals.alive("D", 12, 40, 15),
            RearedAnimals.died("E", 36, 6, 20));
    var data = RearingData.ofAnimals("beetle", animals);
    var line = RateFitting.of(RateModel.LINEAR);
    assertThatThrownBy(() -> line.fit(data))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("not one animal was seen to develop in cabinet D at 12 °C, cabinet E")
        .hasMessageContaining("byDurations")
        .hasMessageContaining("countingDeathsAsNoDevelopment");
    var counted = data.countingDeathsAsNoDevelopment();
    assertThat(counted.means()).hasSize(4);
    assertThat(counted.means().get(3).rate()).isZero();
    var byDurations = line.byDurations(DurationDistribution.LOG_NORMAL).fit(data);
    assertThat(byDurations.curve().rate(12)).isLessThan(1 / 40.0);
  }

  @Test
  void animalsThatNeverDevelopedAnywhereAreRefused() {
    var data =
        RearingData.ofAnimals(
            "beetle",
            List.of(RearedAnimals.alive("A", 12, 40, 15), RearedAnimals.died("B", 36, 6, 20)));
    assertThatThrownBy(
            () ->
                RateFitting.of(RateModel.LINEAR).byDurations(DurationDistribution.GAMMA).fit(data))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("not one animal of \"beetle\" was seen to develop");
    assertThatThrownBy(
            () ->
                RateFitting.of(RateModel.BRIERE_1)
                    .byDurations(DurationDistribution.GAMMA)
                    .fit(Rearings.named("oligota")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("holds means alone");
  }
}
