package agro.generation;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The flights to come, and the stages that follow them, with the chance of every date.
 *
 * @param fit the fit that the forecast rests on
 * @param season the season under way as it was known on the day of issue
 * @param rows the lines, by generation, then flight before stages, then share
 * @param flown how much of each flight had flown already; flights that lie ahead are left out
 * @param report what was assumed, and what a reader should know
 */
public record GenerationForecast(
    FlightTimingFit fit,
    SeasonUnderWay season,
    List<ForecastRow> rows,
    List<FlownShare> flown,
    ReadReport report)
    implements Presentable {

  /** Copies the lists. */
  public GenerationForecast {
    Objects.requireNonNull(fit, "fit");
    Objects.requireNonNull(season, "season");
    Objects.requireNonNull(report, "report");
    rows = List.copyOf(rows);
    flown = List.copyOf(flown);
  }

  /**
   * A forecast that does not tell how much has flown already.
   *
   * @param fit the fit that the forecast rests on
   * @param season the season under way as it was known on the day of issue
   * @param rows the lines, by generation, then flight before stages, then share
   * @param report what was assumed, and what a reader should know
   */
  public GenerationForecast(
      FlightTimingFit fit, SeasonUnderWay season, List<ForecastRow> rows, ReadReport report) {
    this(fit, season, rows, List.of(), report);
  }

  /**
   * Forecasts the flights of the season under way.
   *
   * @param fit fitted timing of past seasons
   * @param season the season under way
   * @return the forecast
   * @throws InputProblem when nothing is known of the start of the season, or when the season
   *     counts its degree-days in another way than the fit
   */
  public static GenerationForecast of(FlightTimingFit fit, SeasonUnderWay season) {
    return of(fit, season, List.of(), Progress.ofThread());
  }

  /**
   * Forecasts the flights of the season under way and the stages that follow them.
   *
   * @param fit fitted timing of past seasons
   * @param season the season under way
   * @param stages stages that follow each flight
   * @param progress hears of the steps and may cancel
   * @return the forecast
   * @throws InputProblem when nothing is known of the start of the season, when the season counts
   *     its degree-days in another way than the fit, or when a stage stands on thresholds by which
   *     the rule of the flights cannot add up
   */
  public static GenerationForecast of(
      FlightTimingFit fit, SeasonUnderWay season, List<StageOffset> stages, Progress progress) {
    return new ForecastProcedure(fit, season, stages, progress).run();
  }

  /**
   * One line of the forecast.
   *
   * @param generation number of the flight
   * @param share how much of the flight
   * @return the line of the flight itself, or nothing when the flight is not among those to come
   */
  public Optional<ForecastRow> flight(int generation, FlightShare share) {
    return rows.stream()
        .filter(row -> row.isFlight() && row.generation() == generation && row.share() == share)
        .findFirst();
  }

  /**
   * The forecast as a table: generation and share of the flight by median date, days until it, 50,
   * 80 and 90 % interval and the chance that it does not come this season, with its causes.
   *
   * @return the table
   */
  public ResultTable table() {
    return ForecastPages.table(this);
  }

  /**
   * How much of each flight had flown at the beginning of the day of issue.
   *
   * @return the table: the share that is as likely more as less, and 8 in 10
   */
  public ResultTable flownTable() {
    return ForecastPages.flown(this);
  }

  /**
   * What the dates rest on: temperatures, interval, where the spread comes from, what was assumed,
   * sources and cautions.
   *
   * @return everything of the forecast but its table
   */
  public Presentation details() {
    return ForecastPages.details(this);
  }

  @Override
  public Presentation presentation() {
    return ForecastPages.page(this);
  }

  @Override
  public String toString() {
    return table().toText();
  }
}
