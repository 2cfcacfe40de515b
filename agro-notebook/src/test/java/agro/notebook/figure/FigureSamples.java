package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.development.DegreeDayModel;
import agro.development.ThermalTimeScale;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.generation.DateDistribution;
import agro.generation.FlightCurve;
import agro.generation.FlightShape;
import agro.generation.FlightShare;
import agro.generation.FlightTiming;
import agro.generation.FlightTimingFit;
import agro.generation.ForecastRow;
import agro.generation.GenerationForecast;
import agro.generation.IntervalEstimate;
import agro.generation.IntervalRange;
import agro.generation.IntervalVerdict;
import agro.generation.ObservedSeason;
import agro.generation.SeasonTiming;
import agro.generation.SeasonUnderWay;
import agro.generation.TrapSeason;
import agro.generation.VisitFit;
import agro.report.ReadReport;
import agro.source.Reference;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;

/** Small results made by hand; every number is invented. */
final class FigureSamples {

  static final LocalDate FIRST_DAY = LocalDate.of(2026, 3, 1);
  static final LocalDate LAST_DAY = LocalDate.of(2026, 10, 31);
  static final LocalDate AS_OF = LocalDate.of(2026, 6, 16);
  static final DegreeDayModel MODEL =
      DegreeDayModel.singleSine(Thresholds.above(Temperature.ofCelsius(7)), UpperCutoff.NONE);

  private FigureSamples() {}

  static ReadReport report() {
    return new ReadReport.Collector("samples").report();
  }

  /** Days that all have one temperature, so that each adds the same degree-days. */
  static DailyTemperatures steady(LocalDate from, LocalDate to, double celsius, DayOrigin origin) {
    var days = new ArrayList<DailyExtremes>();
    for (var day = from; !day.isAfter(to); day = day.plusDays(1)) {
      days.add(new DailyExtremes(day, celsius, celsius));
    }
    return DailyTemperatures.of("Upper Croft", Medium.shelterAir(), days, origin);
  }

  /** 10 °C·d a day observed, 8 from a neighbour, 6 forecast; then past years of 1, 2 ... 11. */
  static SeasonUnderWay season() {
    var known =
        steady(FIRST_DAY, AS_OF.minusDays(11), 17, DayOrigin.OBSERVED)
            .followedBy(steady(AS_OF.minusDays(10), AS_OF.minusDays(1), 15, DayOrigin.NEIGHBOUR))
            .followedBy(steady(AS_OF, AS_OF.plusDays(4), 13, DayOrigin.FORECAST));
    var members = new ArrayList<DailyTemperatures>();
    for (var m = 1; m <= 11; m++) {
      members.add(steady(AS_OF.plusDays(5), LAST_DAY, 7 + m, DayOrigin.PAST_YEAR));
    }
    return new SeasonUnderWay(
        "leek moth",
        MODEL,
        new TrapSeason(2026, List.of()),
        FIRST_DAY,
        LAST_DAY,
        AS_OF,
        known,
        members);
  }

  static ObservedSeason past(int year, double celsius) {
    var from = LocalDate.of(year, 3, 1);
    var days = steady(from, LocalDate.of(year, 10, 31), celsius, DayOrigin.OBSERVED);
    return new ObservedSeason(
        new TrapSeason(year, List.of()), ThermalTimeScale.of(MODEL, days, from));
  }

  static VisitFit visit(int year, double from, int count, double mean, boolean full) {
    return new VisitFit(year, from, from + 50, 4, count, full, mean, (count - mean) / 3);
  }

  static SeasonTiming timing(int year, double start, Optional<ThermalTime> interval) {
    return new SeasonTiming(
        year,
        ThermalTime.ofDegreeDaysC(start),
        Optional.empty(),
        interval,
        List.of(40.0, Double.NaN),
        Optional.empty(),
        4,
        33,
        Double.NaN);
  }

  /** A fit of so many seasons from 2022 on; the second visit of each follows a gap. */
  static FlightTimingFit fit(int seasons, double sizePerNight) {
    var timings = new ArrayList<SeasonTiming>();
    var visits = new ArrayList<VisitFit>();
    var intervals = new ArrayList<Double>();
    for (var s = 0; s < seasons; s++) {
      var year = 2022 + s;
      var interval = 500.0 + 10 * s;
      timings.add(timing(year, 200, Optional.of(ThermalTime.ofDegreeDaysC(interval))));
      intervals.add(interval);
      visits.add(visit(year, 100, 3, 2, false));
      visits.add(visit(year, 200, 30, 12, true));
      visits.add(visit(year, 250, 0, 4, false));
      visits.add(visit(year, 650, 8, 9.5, false));
    }
    return fit(
        timings,
        visits,
        intervals.isEmpty() ? Optional.empty() : Optional.of(new IntervalEstimate(intervals)),
        sizePerNight);
  }

  private static FlightTimingFit fit(
      List<SeasonTiming> timings,
      List<VisitFit> visits,
      Optional<IntervalEstimate> interval,
      double sizePerNight) {
    var range =
        IntervalRange.about(
            ThermalTime.ofDegreeDaysC(500), List.of(Reference.invented("for a test")));
    return new FlightTimingFit(
        FlightTiming.searching(range),
        Optional.of(MODEL),
        timings.isEmpty() ? IntervalVerdict.NOT_IDENTIFIED : IntervalVerdict.SEVERAL_SEASONS,
        2,
        interval,
        Optional.empty(),
        new FlightShape(FlightCurve.NORMAL, 50, 10),
        sizePerNight,
        timings,
        List.of(),
        visits,
        report());
  }

  /** Ten outcomes: so many that do not come, the others on running days from a day on. */
  static ForecastRow row(int generation, FlightShare share, LocalDate from, int never) {
    var days = new double[10];
    for (var i = 0; i < days.length; i++) {
      days[i] =
          i >= days.length - never
              ? Double.POSITIVE_INFINITY
              : from.toEpochDay() - FIRST_DAY.toEpochDay() + i + 0.5;
    }
    return new ForecastRow(
        generation,
        "flight",
        share,
        DateDistribution.ofOutcomes(FIRST_DAY, days),
        Optional.empty());
  }

  static GenerationForecast forecast(List<ForecastRow> rows) {
    return new GenerationForecast(fit(2, 2), season(), rows, report());
  }

  /** Reads the picture back and checks that it has two dots for a point and is not blank. */
  static BufferedImage picture(DrawnFigure figure) {
    try {
      var image = ImageIO.read(new ByteArrayInputStream(figure.png()));
      assertThat(image.getWidth()).isEqualTo(2 * figure.widthPoints());
      assertThat(image.getHeight()).isEqualTo(2 * figure.heightPoints());
      assertThat(colours(image)).isGreaterThan(3);
      return image;
    } catch (IOException unreadable) {
      throw new AssertionError(unreadable);
    }
  }

  private static long colours(BufferedImage image) {
    return dots(image).distinct().count();
  }

  /**
   * Whether a picture has an area of a colour, and not only the odd dot at the edge of a letter.
   */
  static boolean holds(BufferedImage image, Color colour) {
    return dots(image).filter(dot -> dot == colour.getRGB()).count() > 50;
  }

  private static IntStream dots(BufferedImage image) {
    var width = image.getWidth();
    return Arrays.stream(image.getRGB(0, 0, width, image.getHeight(), null, 0, width));
  }

  /** What a row of a figure's data says in a column. */
  static String cell(DrawnFigure figure, int row, String column) {
    var columns = figure.data().columns();
    for (var c = 0; c < columns.size(); c++) {
      if (columns.get(c).name().equals(column)) {
        return figure.data().rows().get(row).get(c).printed();
      }
    }
    throw new AssertionError("no column " + column + " in " + columns);
  }
}
