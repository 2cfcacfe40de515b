package agro.programme.window;

import agro.development.DegreeDayModel;
import agro.generation.FlightMembers;
import agro.generation.GenerationForecast;
import agro.report.InputProblem;
import agro.report.Progress;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Equally likely courses of one generation: when its flight flies and how the degree-days of its
 * stages add up.
 */
public final class StageCourses {

  private static final int STEPS_A_DAY = 6;

  /** One course. Days are counted from the start of the first day. */
  interface Course {
    /** Share of the flight that has flown. */
    double flownBy(double days);

    /** Degree-days on the scale of the stages. */
    double sumAfter(double days);

    /** Whether the stage comes, when half of it would have begun after these days. */
    boolean comes(double halfBegun);
  }

  private final String pest;
  private final int generation;
  private final LocalDate firstDay;
  private final LocalDate asOf;
  private final int days;
  private final List<Course> courses;
  private final Optional<GenerationForecast> forecast;

  private StageCourses(
      String pest,
      int generation,
      LocalDate firstDay,
      LocalDate asOf,
      int days,
      List<Course> courses,
      Optional<GenerationForecast> forecast) {
    this.pest = pest;
    this.generation = generation;
    this.firstDay = firstDay;
    this.asOf = asOf;
    this.days = days;
    this.courses = List.copyOf(courses);
    this.forecast = forecast;
  }

  /**
   * The courses of a generation that a forecast holds open.
   *
   * @param forecast the forecast
   * @param generation number of the flight
   * @param structure the stages that follow it
   * @return courses that share flight and weather with the forecast
   * @throws InputProblem when the forecast has left the flight out, or when the thresholds of the
   *     stages cannot be counted by the rule of the flights
   */
  public static StageCourses of(
      GenerationForecast forecast, int generation, StageStructure structure) {
    return of(forecast, generation, structure, Progress.ofThread());
  }

  /**
   * The courses of a generation that a forecast holds open.
   *
   * @param forecast the forecast
   * @param generation number of the flight
   * @param structure the stages that follow it
   * @param progress hears of the steps and may cancel
   * @return courses that share flight and weather with the forecast
   * @throws InputProblem when the forecast has left the flight out, or when the thresholds of the
   *     stages cannot be counted by the rule of the flights
   */
  public static StageCourses of(
      GenerationForecast forecast, int generation, StageStructure structure, Progress progress) {
    var members = FlightMembers.of(forecast, generation, FlightMembers.USUAL, progress);
    DegreeDayModel flights = forecast.season().model();
    var clock = members.clock(structure.thresholds().map(flights::with).orElse(flights));
    var courses = new ArrayList<Course>();
    for (int i = 0; i < members.size(); i++) {
      courses.add(new Member(members, clock, i));
    }
    var season = forecast.season();
    return new StageCourses(
        season.pest(),
        generation,
        season.firstDay(),
        season.asOf(),
        members.days(),
        courses,
        Optional.of(forecast));
  }

  /**
   * Courses that are given, each as likely as the others. The stages count on the scale of the
   * flights.
   *
   * @param pest the pest, as it is printed
   * @param generation number of the flight, from 1
   * @param firstDay first day of all courses
   * @param flights the flights, all with as many days
   * @return the courses, known on the first day
   * @throws InputProblem when there is none, or when their days differ
   */
  public static StageCourses given(
      String pest, int generation, LocalDate firstDay, List<KnownFlight> flights) {
    Objects.requireNonNull(firstDay, "firstDay");
    var lengths = flights.stream().map(each -> each.dailyDegreeDaysC().size()).distinct().toList();
    if (lengths.size() != 1) {
      throw InputProblem.of(flights.size() + " flights with days " + lengths)
          .expected("at least one flight, and as many days in each")
          .because("their days are set beside each other")
          .mend("cut all of them to the same last day");
    }
    var courses = flights.stream().map(StageCourses::known).toList();
    return new StageCourses(
        pest, generation, firstDay, firstDay, lengths.get(0), courses, Optional.empty());
  }

  private static Course known(KnownFlight flight) {
    var sums = new double[flight.dailyDegreeDaysC().size() + 1];
    for (int i = 1; i < sums.length; i++) {
      sums[i] = sums[i - 1] + flight.dailyDegreeDaysC().get(i - 1);
    }
    return new Course() {
      @Override
      public double flownBy(double days) {
        double from = sumAfter(days) - flight.middle().degreeDaysC();
        return flight.curve().cumulative(from / flight.scale().degreeDaysC());
      }

      @Override
      public double sumAfter(double days) {
        int whole = (int) Math.min(days, sums.length - 2.0);
        return sums[whole] + (days - whole) * (sums[whole + 1] - sums[whole]);
      }

      @Override
      public boolean comes(double halfBegun) {
        return Double.isFinite(halfBegun);
      }
    };
  }

  /** A course of a forecast. */
  private record Member(FlightMembers members, FlightMembers.Clock clock, int index)
      implements Course {
    @Override
    public double flownBy(double days) {
      return members.flownBy(index, days);
    }

    @Override
    public double sumAfter(double days) {
      return clock.sumAfter(index, days);
    }

    @Override
    public boolean comes(double halfBegun) {
      return members.end(index, halfBegun).isEmpty();
    }
  }

  /**
   * Number of courses.
   *
   * @return at least 1
   */
  public int size() {
    return courses.size();
  }

  /**
   * The pest.
   *
   * @return as it is printed
   */
  public String pest() {
    return pest;
  }

  /**
   * Number of the generation.
   *
   * @return 1 for the first of the season
   */
  public int generation() {
    return generation;
  }

  /**
   * The day on which the courses were foreseen.
   *
   * @return day of issue
   */
  public LocalDate asOf() {
    return asOf;
  }

  /**
   * First day of the courses.
   *
   * @return the day from whose start days are counted
   */
  public LocalDate firstDay() {
    return firstDay;
  }

  /**
   * Last day of the courses; what happens later is not this season.
   *
   * @return the day
   */
  public LocalDate lastDay() {
    return firstDay.plusDays(days - 1L);
  }

  /**
   * The forecast behind the courses.
   *
   * @return nothing when they were given
   */
  public Optional<GenerationForecast> forecast() {
    return forecast;
  }

  int days() {
    return days;
  }

  Course course(int index) {
    return courses.get(index);
  }

  static int stepsADay() {
    return STEPS_A_DAY;
  }
}
