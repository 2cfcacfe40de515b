package agro.weather.climate;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Extreme;
import agro.weather.InventedWeather;
import agro.weather.SeattleDays;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClimateNormalsTest {

  private static final ClimateNormals SEATTLE = ClimateNormals.of(SeattleDays.all());

  /** Against lm and glm of base R on open data; the script lies beside the table. */
  @Test
  void agreesWithLeastSquaresInR() {
    var lines = ReferenceTable.read(ClimateNormalsTest.class, "seattle-normals.csv");
    assertThat(lines).hasSize(55);
    for (var line : lines) {
      double expected = number(line, "value");
      double ours =
          line.getField("extreme").equals("both")
              ? SEATTLE.minToMaxCorrelation()
              : value(
                  Extreme.valueOf(line.getField("extreme").toUpperCase(Locale.ROOT)),
                  line.getField("what"),
                  line.getField("key"));
      assertThat(ours)
          .as("line %d", line.getStartingLineNumber())
          .isCloseTo(expected, within(1e-8 * Math.max(1, Math.abs(expected))));
    }
  }

  private static double value(Extreme extreme, String what, String key) {
    var curve = SEATTLE.curve(extreme);
    return switch (what) {
      case "criterion" -> curve.criteria().get(Integer.parseInt(key));
      case "harmonics" -> curve.harmonics();
      case "coefficient" -> curve.coefficients().get(Integer.parseInt(key));
      case "lag1" -> curve.lag1();
      case "normal" -> SEATTLE.normalCelsius(extreme, LocalDate.parse(key));
      case "spread" -> SEATTLE.spreadCelsius(extreme, LocalDate.parse(key));
      case "error" -> SEATTLE.normalErrorCelsius(extreme, LocalDate.parse(key));
      default -> throw new IllegalArgumentException(what);
    };
  }

  @Test
  void tellsWhatItRestsOnAndWhatIsShort() {
    assertThat(SEATTLE.years()).containsExactly(2012, 2013, 2014, 2015);
    var text = SEATTLE.presentation().toText();
    assertThat(text).contains("4.0 years", "usually rest on 30 years", "15 August");
    assertThat(text).doesNotContain("No normals");
  }

  /** From 30 invented years the wave, its spread and its persistence come back. */
  @ParameterizedTest
  @ValueSource(doubles = {1, -1})
  void findsTheKnownProcessOnBothHemispheres(double sign) {
    var history = InventedWeather.days("1981-01-01", "2010-12-31", sign, 0.7, 3, 11);
    var normals = ClimateNormals.of(history);
    assertThat(normals.curve(Extreme.MINIMUM).harmonics()).isEqualTo(1);
    assertThat(normals.curve(Extreme.MINIMUM).lag1()).isCloseTo(0.7, within(0.02));
    assertThat(normals.minToMaxCorrelation()).isCloseTo(0.6, within(0.02));
    for (var day = LocalDate.of(2011, 12, 1);
        day.isBefore(LocalDate.of(2012, 4, 1));
        day = day.plusDays(1)) {
      double usual = InventedWeather.usualMinimum(day, sign);
      assertThat(normals.normalCelsius(Extreme.MINIMUM, day)).isCloseTo(usual, within(0.35));
      assertThat(normals.spreadCelsius(Extreme.MINIMUM, day)).isCloseTo(3, within(0.25));
      assertThat(normals.normalErrorCelsius(Extreme.MINIMUM, day)).isBetween(0.05, 0.15);
    }
    assertThat(normals.presentation().toText()).doesNotContain("usually rest on");
  }

  /** Leap day and New Year: no step anywhere. */
  @Test
  void isSmoothAcrossLeapDaysAndNewYear() {
    var series = SEATTLE.series(LocalDate.of(2015, 11, 1), LocalDate.of(2017, 3, 31));
    assertThat(series.missingDays()).isEmpty();
    assertThat(series.origin(LocalDate.of(2016, 2, 29))).isEqualTo(DayOrigin.CLIMATE_NORMAL);
    var minima = series.minimaCelsius();
    for (int i = 1; i < minima.length; i++) {
      assertThat(Math.abs(minima[i] - minima[i - 1])).isLessThan(0.15);
    }
    var day = LocalDate.of(2016, 2, 29);
    assertThat(series.minStandardErrorCelsius(day))
        .isCloseTo(Math.hypot(3.03922839908, 0.367128711738), within(1e-6));
  }

  @Test
  void seasonsAcrossNewYearHaveNormalsWithinAloneAndSaySo() {
    var history = InventedWeather.days("2001-10-01", "2002-03-31", -1, 0.5, 3, 3);
    var second = InventedWeather.days("2002-10-01", "2003-03-31", -1, 0.5, 3, 4);
    var normals = NormalsFit.withDefaults().harmonics(1).fit(history.followedBy(second));
    assertThat(normals.knows(LocalDate.of(2010, 1, 1))).isTrue();
    assertThat(normals.knows(LocalDate.of(2010, 7, 1))).isFalse();
    assertThat(normals.normalCelsius(Extreme.MAXIMUM, LocalDate.of(2010, 7, 1))).isNaN();
    assertThat(normals.notes()).anyMatch(note -> note.contains("from 12 April to 19 September"));
    var series = normals.series(LocalDate.of(2010, 12, 1), LocalDate.of(2011, 6, 30));
    assertThat(series.missingDays()).hasSize(80).contains(LocalDate.of(2011, 6, 30));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 1e6})
  void asOfADayNothingLaterCounts(double nonsense) {
    var day = LocalDate.of(2014, 6, 15);
    var spoilt = SeattleDays.spoiltAfter(SeattleDays.all(), day, nonsense);
    var known = SEATTLE.asOf(day);
    // The fit on spoilt days is never asked for: only what is known as of the day.
    var other = NormalsFit.withDefaults().fit(spoilt).asOf(day);
    assertThat(other.curve(Extreme.MAXIMUM).coefficients())
        .isEqualTo(known.curve(Extreme.MAXIMUM).coefficients());
    assertThat(other.series(day, day.plusDays(20))).isEqualTo(known.series(day, day.plusDays(20)));
    assertThat(known.days()).isEqualTo(897);
    assertThatThrownBy(() -> SEATTLE.asOf(LocalDate.of(2011, 12, 31)))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void filledDaysDoNotCount() {
    DailyTemperatures half = SeattleDays.all().upTo(LocalDate.of(2013, 12, 31));
    var padded =
        half.followedBy(SEATTLE.series(LocalDate.of(2014, 1, 1), LocalDate.of(2015, 1, 1)));
    assertThat(ClimateNormals.of(padded).curve(Extreme.MINIMUM).coefficients())
        .isEqualTo(ClimateNormals.of(half).curve(Extreme.MINIMUM).coefficients());
    assertThat(ClimateNormals.of(padded).days()).isEqualTo(731);
  }

  @Test
  void refusesTooFewDaysAndTooManyHarmonics() {
    assertThatThrownBy(() -> ClimateNormals.of(SeattleDays.all().upTo(LocalDate.of(2012, 3, 29))))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("89 observed days");
    assertThatThrownBy(() -> NormalsFit.withDefaults().harmonics(5))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> SEATTLE.series(LocalDate.of(2012, 3, 2), LocalDate.of(2012, 3, 1)))
        .isInstanceOf(InputProblem.class);
  }
}
