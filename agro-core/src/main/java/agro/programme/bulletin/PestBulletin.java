package agro.programme.bulletin;

import agro.generation.ForecastRow;
import agro.generation.GenerationForecast;
import agro.season.LedgerScores;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What is known of one pest of a field.
 *
 * @param pest the pest
 * @param forecast the forecast; nothing where there is none
 * @param problem why there is no forecast; empty where there is one
 * @param catches catch of the season so far; empty without traps
 * @param counts the newest counts in the field and its parts; empty without scouting
 * @param changes dates of the last page beside those of today; empty where none was kept
 * @param scores kept forecasts of seasons that are over, beside what came; nothing where none was
 *     kept
 */
public record PestBulletin(
    String pest,
    Optional<GenerationForecast> forecast,
    String problem,
    List<CatchSpan> catches,
    List<CountVerdict> counts,
    List<DateChange> changes,
    Optional<LedgerScores> scores) {

  private static final double LIKELY = 0.9;

  /** Copies the lists. */
  public PestBulletin {
    Objects.requireNonNull(pest, "pest");
    Objects.requireNonNull(forecast, "forecast");
    Objects.requireNonNull(problem, "problem");
    catches = List.copyOf(catches);
    counts = List.copyOf(counts);
    changes = List.copyOf(changes);
    Objects.requireNonNull(scores, "scores");
  }

  /**
   * The dates that may still lie ahead, by their medians, those that most likely do not come this
   * season last.
   *
   * @param asOf day of issue
   * @return lines of the forecast
   */
  public List<ForecastRow> ahead(LocalDate asOf) {
    return forecast.stream()
        .flatMap(each -> each.rows().stream())
        .filter(row -> row.dates().quantile(LIKELY).map(day -> !day.isBefore(asOf)).orElse(true))
        .sorted(
            (a, b) ->
                a.dates()
                    .median()
                    .orElse(LocalDate.MAX)
                    .compareTo(b.dates().median().orElse(LocalDate.MAX)))
        .toList();
  }

  /**
   * The next date that more likely comes than not.
   *
   * @param asOf day of issue
   * @return the line with the earliest median that is not before the day of issue
   */
  public Optional<ForecastRow> next(LocalDate asOf) {
    return ahead(asOf).stream()
        .filter(row -> row.dates().median().map(day -> !day.isBefore(asOf)).orElse(false))
        .findFirst();
  }
}
