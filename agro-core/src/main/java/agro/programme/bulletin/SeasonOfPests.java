package agro.programme.bulletin;

import agro.generation.GenerationForecast;
import agro.report.InputProblem;
import agro.season.BatchForecast;
import agro.season.Ledger;
import agro.season.LedgerEntry;
import agro.season.LedgerScores;
import agro.season.PlaceForecast;
import agro.season.SeasonFolder;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Forecasts of a folder with the pages that were kept before. */
final class SeasonOfPests {

  private final Path folder;
  private final BatchForecast batch;
  private final LocalDate asOf;
  private final Ledger earlier;

  SeasonOfPests(Path folder, BatchForecast batch, LocalDate asOf, Ledger ledger) {
    this.folder = folder;
    this.batch = batch;
    this.asOf = asOf;
    // A page that was kept later, or today, is no last page.
    earlier =
        new Ledger(
            folder,
            ledger.entries().stream().filter(each -> each.issued().isBefore(asOf)).toList());
  }

  /** The pests that are trapped at a place. */
  List<String> pests(String place) {
    return batch.places().stream()
        .filter(each -> each.place().equals(place))
        .map(PlaceForecast::pest)
        .toList();
  }

  PestBulletin pest(String pest, String place, List<CountVerdict> counts) {
    var entry =
        batch.places().stream()
            .filter(each -> each.pest().equals(pest) && each.place().equals(place))
            .findFirst();
    var forecast = entry.flatMap(PlaceForecast::forecast);
    return new PestBulletin(
        pest,
        forecast,
        entry.map(PlaceForecast::problem).orElse(""),
        forecast.map(each -> CatchSpan.of(each.season().traps().upTo(asOf))).orElse(List.of()),
        counts,
        forecast.map(each -> changes(each, place)).orElse(List.of()),
        scores(pest, place));
  }

  /** Dates of the newest page of this season beside today's. */
  private List<DateChange> changes(GenerationForecast forecast, String place) {
    var season = forecast.season();
    var own =
        earlier.entries().stream()
            .filter(each -> each.pest().equals(season.pest()) && each.place().equals(place))
            .filter(each -> each.seasonStart().equals(season.firstDay()))
            .toList();
    var last = own.stream().map(LedgerEntry::issued).max(Comparator.naturalOrder());
    var changes = new ArrayList<DateChange>();
    for (var entry : own) {
      if (entry.issued().equals(last.orElseThrow())) {
        forecast.rows().stream()
            .filter(row -> row.event().equals(entry.event()))
            .filter(row -> row.generation() == entry.generation() && row.share() == entry.share())
            .forEach(row -> changes.add(new DateChange(entry, row)));
      }
    }
    return changes;
  }

  private Optional<LedgerScores> scores(String pest, String place) {
    boolean over =
        earlier.entries().stream()
            .anyMatch(
                each ->
                    each.pest().equals(pest)
                        && each.place().equals(place)
                        && each.seasonEnd().isBefore(asOf));
    if (!over) {
      return Optional.empty();
    }
    try {
      var archive = SeasonFolder.read(folder, asOf).archive(pest, place);
      return Optional.of(earlier.score(archive));
    } catch (InputProblem problem) {
      // The page of the place says what is wrong with its tables or logs.
      return Optional.empty();
    }
  }
}
