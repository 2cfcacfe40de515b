package agro.weather.sun;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DayLengthTest {

  private static final LocalDate JUNE = LocalDate.of(2001, 6, 21);
  private static final LocalDate DECEMBER = LocalDate.of(2001, 12, 21);

  static List<NamedCsvRecord> lengths() {
    return ReferenceTable.read(DayLengthTest.class, "day-length.csv");
  }

  @ParameterizedTest
  @MethodSource("lengths")
  void agreesWithTheTable(NamedCsvRecord line) {
    var rule =
        new DayLength(
            new Latitude(number(line, "latitude")),
            DeclinationFormula.valueOf(line.getField("formula")),
            number(line, "degrees_below"));
    assertThat(rule.hours(whole(line, "day"))).isCloseTo(number(line, "hours"), within(1e-4));
  }

  @Test
  void polarDaysAndNightsAreHeldAtTheirBounds() {
    var far = DayLength.at(Latitude.north(78));
    assertThat(far.hours(JUNE)).isEqualTo(24);
    assertThat(far.hours(DECEMBER)).isZero();
    assertThat(far.daylight(JUNE).state()).isEqualTo(Daylight.State.SUN_STAYS_UP);
    assertThat(far.daylight(DECEMBER).state()).isEqualTo(Daylight.State.SUN_STAYS_DOWN);
    assertThat(far.daylight(JUNE)).hasToString("2001-06-21: the sun does not set");
    assertThat(DayLength.at(Latitude.south(78)).hours(DECEMBER)).isEqualTo(24);
    assertThat(DayLength.at(new Latitude(90)).hours(172)).isEqualTo(24);
    assertThat(DayLength.at(new Latitude(-90)).hours(172)).isZero();
  }

  @Property(seed = "1995")
  void northAndSouthShareTheDay(
      @ForAll @DoubleRange(min = -90, max = 90) double latitude,
      @ForAll @IntRange(min = 1, max = 366) int day) {
    var north = DayLength.at(new Latitude(latitude)).with(SunHeight.CENTRE);
    var south = DayLength.at(new Latitude(-latitude)).with(SunHeight.CENTRE);
    assertThat(north.hours(day)).isBetween(0.0, 24.0);
    assertThat(north.hours(day) + south.hours(day)).isCloseTo(24, within(1e-9));
  }

  @Property(seed = "1995")
  void lowerSunsMakeLongerDays(
      @ForAll @DoubleRange(min = -90, max = 90) double latitude,
      @ForAll @IntRange(min = 1, max = 366) int day) {
    double shorter = 0;
    var rule = DayLength.at(new Latitude(latitude));
    for (var height :
        new SunHeight[] {
          SunHeight.CENTRE,
          SunHeight.UPPER_EDGE_SEEN,
          SunHeight.CIVIL_TWILIGHT,
          SunHeight.NAUTICAL_TWILIGHT,
          SunHeight.ASTRONOMICAL_TWILIGHT
        }) {
      double hours = rule.with(height).hours(day);
      assertThat(hours).as("%s", height).isGreaterThanOrEqualTo(shorter);
      shorter = hours;
    }
  }

  @Test
  void sunriseAndSunsetStandAroundNoon() {
    var light = DayLength.at(Latitude.north(46)).daylight(JUNE);
    assertThat(light.sunriseHour() + light.sunsetHour()).isCloseTo(24, within(1e-12));
    assertThat(light.hours()).isCloseTo(DayLength.at(Latitude.north(46)).hours(172), within(1e-12));
  }

  /**
   * At 15° east on the clock of UTC+1 solar noon is at 12 less the equation of time: on 3 November,
   * when a sundial is 16.4 minutes ahead, at 11:43:36.
   */
  @Test
  void clockTimesFollowLongitudeAndEquationOfTime() {
    var light = DayLength.at(Latitude.north(46)).daylight(LocalDate.of(2001, 11, 3));
    var clock = ZoneOffset.ofHours(1);
    double noon = 0.5 * (light.sunriseOnClock(15, clock) + light.sunsetOnClock(15, clock));
    assertThat(noon).isCloseTo(12 - 16.4 / 60, within(0.01));
    assertThat(light.sunriseOnClock(16, clock) - light.sunriseOnClock(15, clock))
        .isCloseTo(-4 / 60.0, within(1e-12));
    assertThat(light.sunsetOnClock(15, ZoneOffset.ofHoursMinutes(5, 45)))
        .isCloseTo(light.sunsetOnClock(15, clock) + 4.75, within(1e-12));
    assertThatThrownBy(() -> light.sunriseOnClock(181, clock)).isInstanceOf(InputProblem.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {90.1, -91, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesLatitudesBeyondThePoles(double degrees) {
    assertThatThrownBy(() -> new Latitude(degrees))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("-90 to 90");
  }

  @Test
  void latitudesAreNamedBySide() {
    assertThat(Latitude.south(35)).isEqualTo(new Latitude(-35)).hasToString("35° S");
    assertThat(Latitude.north(46.4)).hasToString("46.4° N");
    assertThatThrownBy(() -> Latitude.south(-35)).hasMessageContaining("without its sign");
    assertThatThrownBy(() -> new DayLength(Latitude.north(46), DeclinationFormula.SPENCER_1971, 91))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void workingShowsTheSteps() {
    var working = DayLength.at(Latitude.north(40)).working(JUNE);
    assertThat(working.toText()).contains("23.4466°", "15.0160 h", "acos q");
    assertThat(working.references()).contains(DeclinationFormula.FORSYTHE_1995.source());
    assertThat(DayLength.at(Latitude.north(78)).working(JUNE).toText()).contains("does not set");
  }
}
