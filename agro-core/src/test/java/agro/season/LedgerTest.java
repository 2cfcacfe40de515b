package agro.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.demo.OsmereVale;
import agro.generation.FlightShare;
import agro.generation.FlightTiming;
import agro.generation.GenerationForecast;
import agro.generation.skill.FlightEvent;
import agro.generation.skill.ObservedDate;
import agro.generation.skill.SeasonDates;
import agro.report.InputProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Forecasts are kept as they were issued. */
class LedgerTest {

  private static final String LINES =
      """
      # kept by hand for a test
      issued,place,pest,season_start,season_end,event,generation,share_percent,p05,p10,p25,p50,p75,\
      p90,p95,chance_not_reached,method,note
      2026-05-01,"Croft, upper",red moth,2026-03-01,2026-10-31,flight,2,50,2026-06-01,2026-06-02,\
      2026-06-04,2026-06-06,2026-06-09,2026-06-12,2026-06-14,0,"fit ""A"", four seasons",first
      2026-05-01,"Croft, upper",red moth,2026-03-01,2026-10-31,flight,3,50,2026-09-01,2026-09-10,\
      2026-10-01,2026-10-20,not this season,not this season,not this season,0.4,fit,
      """;

  private static GenerationForecast forecast;

  @TempDir private Path folder;

  @BeforeAll
  static void forecast() {
    var seasons = OsmereVale.of(OsmereVale.SEED).leekMoth(OsmereVale.ISSUE_DATE);
    var fit = FlightTiming.searching(seasons.pest().range()).fit(seasons.past().subList(0, 2));
    forecast = GenerationForecast.of(fit, seasons.ahead(1).underWay());
  }

  private Path file() {
    return folder.resolve("forecasts.csv");
  }

  private void write(String text) throws IOException {
    Files.writeString(file(), text);
  }

  @Test
  void aForecastIsKeptAndReadBack() {
    var kept = Ledger.read(folder).keep(forecast, "sent to the\ngrowers, by \"post\"");
    assertThat(kept.added()).isEqualTo(forecast.rows().size()).isPositive();
    assertThat(kept.alreadyKept()).isZero();
    var read = Ledger.read(folder);
    assertThat(read.entries()).hasSameSizeAs(forecast.rows());
    for (var i = 0; i < read.entries().size(); i++) {
      var entry = read.entries().get(i);
      var row = forecast.rows().get(i);
      assertThat(entry.saysTheSame(kept.ledger().entries().get(i))).isTrue();
      assertThat(entry.median()).isEqualTo(row.dates().median());
      assertThat(entry.quantiles().get(0)).isEqualTo(row.dates().quantile(0.05));
      assertThat(entry.chanceNotReached())
          .isEqualTo(row.dates().chanceNotThisSeason(), within(5e-5));
      assertThat(entry.note()).isEqualTo("sent to the growers, by \"post\"");
      assertThat(entry.method()).contains("seasons 2022 2023");
      assertThat(entry.location().line()).isEqualTo(i + 3);
    }
  }

  @Test
  void whatWasIssuedStays() throws IOException {
    write(LINES.stripTrailing());
    var first = Ledger.read(folder).keep(forecast, "");
    var afterOne = SmallFolder.textOf(file());
    assertThat(afterOne).startsWith(LINES);
    assertThat(first.ledger().entries()).hasSize(2 + forecast.rows().size());
    var again = Ledger.read(folder).keep(forecast, "another note");
    assertThat(again.added()).isZero();
    assertThat(again.alreadyKept()).isEqualTo(forecast.rows().size());
    assertThat(again.words()).contains("0 dates added").contains("stood there already");
    assertThat(SmallFolder.textOf(file())).isEqualTo(afterOne);
  }

  @Test
  void anotherAnswerToTheSameQuestionIsRefused() throws IOException {
    Ledger.read(folder).keep(forecast, "");
    var text = SmallFolder.textOf(file());
    var median = forecast.rows().get(1).dates().median().orElseThrow();
    write(text.replace("," + median + ",", "," + median.plusDays(1) + ","));
    var changed = SmallFolder.textOf(file());
    assertThat(changed).isNotEqualTo(text);
    assertThatThrownBy(() -> Ledger.read(folder).keep(forecast, ""))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("forecasts.csv")
        .hasMessageContaining("what was issued stays as it was")
        .hasMessageContaining("as of another day");
    assertThat(SmallFolder.textOf(file())).isEqualTo(changed);
  }

  @Test
  void columnsMayStandInAnotherOrderWithMoreOfThem() throws IOException {
    write(
        "extra,method,note,chance_not_reached,p95,p90,p75,p50,p25,p10,p05,share_percent,generation,"
            + "event,season_end,season_start,pest,place,issued\n");
    Ledger.read(folder).keep(forecast, "x");
    var read = Ledger.read(folder);
    assertThat(read.entries()).hasSameSizeAs(forecast.rows());
    assertThat(read.entries().get(0).note()).isEqualTo("x");
    assertThat(SmallFolder.textOf(file()).lines().skip(1)).allMatch(line -> line.startsWith(","));
  }

  @Test
  void linesThatCannotBeReadAreNamed() throws IOException {
    for (var spoilt :
        Map.of(
                "2026-06-06,2026-06-09", "2026-06-06,2026-06-01",
                "flight,2,50", "flight,2,40",
                "flight,3", "flight,0",
                "0.4,fit", "4,fit",
                "2026-09-10", "10.9.2026",
                "not this season,not this season,not this season",
                    "not this season,2026-10-30,not this season")
            .entrySet()) {
      assertThat(LINES).contains(spoilt.getKey());
      write(LINES.replace(spoilt.getKey(), spoilt.getValue()));
      assertThatThrownBy(() -> Ledger.read(folder))
          .as(spoilt.getValue())
          .isInstanceOf(InputProblem.class)
          .hasMessageContaining("forecasts.csv, line");
    }
  }

  @Test
  void keptForecastsAreScoredAsTheyWere() throws IOException {
    write(LINES);
    var dates = new TreeMap<FlightEvent, ObservedDate>();
    var two = new FlightEvent(2, FlightShare.HALF);
    var three = new FlightEvent(3, FlightShare.HALF);
    // 9 June at noon: 100.5 days after the start of 1 March
    dates.put(two, new ObservedDate(ObservedDate.Kind.CAME, 100.5, 0.4, ""));
    dates.put(
        three,
        new ObservedDate(
            ObservedDate.Kind.DID_NOT_COME, Double.POSITIVE_INFINITY, Double.NaN, "not"));
    var observed = List.of(new SeasonDates(2026, LocalDate.of(2026, 3, 1), dates));
    var scores = Ledger.read(folder).score("red moth", "Croft, upper", observed);
    assertThat(scores.scored()).hasSize(2);
    var came = scores.scored().get(0);
    assertThat(came.errorDays()).isEqualTo(-3);
    assertThat(came.inside(0.5)).isTrue();
    assertThat(scores.scored().get(1).errorDays()).isEqualTo(-11.5);
    assertThat(scores.scored().get(1).inside(0.5)).isTrue();
    assertThat(scores.coverage(0.8).inside()).isEqualTo(2);
    assertThat(scores.meanAbsoluteErrorDays()).isEqualTo(7.25);
    assertThat(scores.biasDays()).isEqualTo(-7.25);
    assertThat(scores.rankedProbabilityDays()).isBetween(1.0, 20.0);
    assertThat(scores.presentation().toText())
        .contains("as they were issued")
        .contains("too few to judge")
        .contains("not this season");
    assertThatThrownBy(() -> came.inside(0.7)).hasMessageContaining("0.7");
    var none = Ledger.read(folder).score("red moth", "Croft, upper", List.of());
    assertThat(none.notYet()).isEqualTo(2);
    assertThat(none.biasDays()).isNaN();
    assertThat(none.presentation().toText()).containsPattern("season not over: +2");
  }

  @Test
  void aDateThatHadPassedIsNoForecast() throws IOException {
    write(LINES.replace("2026-05-01", "2026-06-20"));
    var dates = new TreeMap<FlightEvent, ObservedDate>();
    dates.put(
        new FlightEvent(2, FlightShare.HALF),
        new ObservedDate(ObservedDate.Kind.CAME, 100.5, 0.4, ""));
    var observed = List.of(new SeasonDates(2026, LocalDate.of(2026, 3, 1), dates));
    var scores = Ledger.read(folder).score("red moth", "Croft, upper", observed);
    assertThat(scores.scored()).isEmpty();
    assertThat(scores.afterTheEvent()).isEqualTo(1);
    assertThat(scores.notIdentified()).isEqualTo(1);
  }

  @Test
  void theExampleOfTheTemplateIsALedger() throws IOException {
    SeasonFolder.template(folder);
    assertThat(Ledger.read(folder).entries()).isEmpty();
    assertThat(SmallFolder.textOf(folder.resolve("README.md"))).contains("## `forecasts.csv`");
    var lines = SmallFolder.textOf(file()).lines().toList();
    write(lines.get(1) + "\n" + lines.get(2).substring(2) + "\n");
    var entry = Ledger.read(folder).entries().get(0);
    assertThat(entry.median()).isEqualTo(Optional.of(LocalDate.of(2026, 6, 23)));
    assertThat(entry.method()).isEqualTo("normal flights, 4 seasons, invented");
  }
}
