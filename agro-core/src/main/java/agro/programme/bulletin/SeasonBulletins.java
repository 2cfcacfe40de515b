package agro.programme.bulletin;

import agro.programme.Programme;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.season.BatchForecast;
import agro.season.ForecastBatch;
import agro.season.SeasonFolder;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The bulletins of a season folder, one for each field. Without a table of fields there is one for
 * each place with traps. What the folder does not hold is said on the page. Immutable.
 */
public final class SeasonBulletins {

  private static final long SEED = 1;

  private final Path folder;
  private final Optional<LocalDate> day;
  private final long seed;

  private SeasonBulletins(Path folder, Optional<LocalDate> day, long seed) {
    this.folder = Objects.requireNonNull(folder, "folder");
    this.day = day;
    this.seed = seed;
  }

  /**
   * The bulletins of a folder on the newest day of a visit or a log in it.
   *
   * @param folder the season folder
   * @return what can be made
   */
  public static SeasonBulletins of(Path folder) {
    return new SeasonBulletins(folder, Optional.empty(), SEED);
  }

  /**
   * The same on another day of issue.
   *
   * @param other day after which nothing is known
   * @return the changed choice
   */
  public SeasonBulletins asOf(LocalDate other) {
    return new SeasonBulletins(folder, Optional.of(other), seed);
  }

  /**
   * The same with another seed of what is left to chance.
   *
   * @param other the seed
   * @return the changed choice
   */
  public SeasonBulletins withSeed(long other) {
    return new SeasonBulletins(folder, day, other);
  }

  /**
   * Makes the bulletins.
   *
   * @return one for each field, in the order of the tables
   * @throws InputProblem when a table of the folder cannot be read; a place that cannot be forecast
   *     is told of on its page instead
   */
  public List<FieldBulletin> make() {
    return make(Progress.ofThread());
  }

  /**
   * Makes the bulletins.
   *
   * @param progress hears of the steps and may cancel
   * @return one for each field, in the order of the tables
   * @throws InputProblem when a table of the folder cannot be read
   */
  public List<FieldBulletin> make(Progress progress) {
    var tables = FolderTables.read(folder);
    var asked = ForecastBatch.ofFolders(List.of(folder)).withSeed(seed);
    var batch = day.map(asked::asOf).orElse(asked).run(progress);
    var asOf = dayOf(batch);
    var season = new SeasonOfPests(folder, batch, asOf, tables.ledger());
    var programme = tables.programmeUpTo(asOf);
    var bulletins = new ArrayList<FieldBulletin>();
    for (var each : fields(programme, batch, tables)) {
      bulletins.add(new FieldAssembly(each, asOf, tables, programme, season).bulletin());
    }
    return List.copyOf(bulletins);
  }

  private LocalDate dayOf(BatchForecast batch) {
    if (batch.places().stream().anyMatch(each -> each.pest().isEmpty())) {
      // The folder itself could not be read; this says why.
      var read = day.isPresent() ? SeasonFolder.read(folder, day.get()) : SeasonFolder.read(folder);
      return read.issueDate();
    }
    return day.orElseGet(
        () ->
            batch.forecasts().stream()
                .map(each -> each.season().asOf())
                .findFirst()
                .orElseGet(() -> SeasonFolder.read(folder).issueDate()));
  }

  /** A field with the place that stands for it; the place is empty where there is none. */
  record FieldAtPlace(String field, String place) {}

  private static List<FieldAtPlace> fields(
      Optional<Programme> programme, BatchForecast batch, FolderTables tables) {
    var places = new LinkedHashSet<String>();
    batch.places().forEach(each -> places.add(each.place()));
    var found = new ArrayList<FieldAtPlace>();
    var open = new LinkedHashSet<>(places);
    programme.stream()
        .flatMap(each -> each.fields().stream())
        .forEach(
            field -> {
              var place =
                  tables
                      .placeOf(field.name())
                      .or(() -> NamePrefix.longest(field.name(), places))
                      .orElse("");
              found.add(new FieldAtPlace(field.name(), place));
              open.remove(place);
            });
    open.forEach(place -> found.add(new FieldAtPlace(place, place)));
    return found;
  }
}
