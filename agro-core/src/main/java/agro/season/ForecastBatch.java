package agro.season;

import agro.generation.FlightTiming;
import agro.generation.GenerationForecast;
import agro.generation.skill.OrderedWork;
import agro.report.InputProblem;
import agro.report.Progress;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/**
 * Forecasts for every pest and place with traps, of one season folder or of many, several at a
 * time. The result does not depend on how many. A place that cannot be forecast, such as one with a
 * bad log, is reported and does not keep the others from theirs. Immutable.
 */
public final class ForecastBatch {

  private static final String READING = "season folders";
  private static final String FORECASTS = "forecasts";
  private static final long SEED = 1;

  private final List<Path> paths;
  private final Optional<SeasonFolder> open;
  private final Choices choices;

  private record Choices(
      Optional<LocalDate> day, String pest, String place, long seed, int atATime) {}

  private ForecastBatch(List<Path> paths, Optional<SeasonFolder> open, Choices choices) {
    this.paths = List.copyOf(paths);
    this.open = open;
    this.choices = choices;
  }

  private static Choices usual() {
    return new Choices(
        Optional.empty(), "", "", SEED, Math.max(1, Runtime.getRuntime().availableProcessors()));
  }

  /**
   * All pests and places of a folder that has been read.
   *
   * @param folder the folder with its day of issue
   * @return the batch
   */
  public static ForecastBatch of(SeasonFolder folder) {
    return new ForecastBatch(List.of(), Optional.of(folder), usual());
  }

  /**
   * All pests and places of several folders, which are read when the batch runs.
   *
   * @param folders the folders
   * @return the batch
   * @throws InputProblem when there is no folder
   */
  public static ForecastBatch ofFolders(List<Path> folders) {
    if (folders.isEmpty()) {
      throw InputProblem.of("a batch of no folder")
          .expected("at least one season folder")
          .because("there is nothing to forecast")
          .mend("name the folders");
    }
    return new ForecastBatch(folders, Optional.empty(), usual());
  }

  /**
   * The same on another day of issue.
   *
   * @param day day after which nothing is known, in every folder
   * @return the changed batch
   */
  public ForecastBatch asOf(LocalDate day) {
    return new ForecastBatch(
        paths,
        open,
        new Choices(Optional.of(day), choices.pest, choices.place, choices.seed, choices.atATime));
  }

  /**
   * The same for one pest or one place alone.
   *
   * @param pest name of the pest; blank for all
   * @param place name of the place; blank for all
   * @return the changed batch
   */
  public ForecastBatch only(String pest, String place) {
    return new ForecastBatch(
        paths,
        open,
        new Choices(
            choices.day,
            Objects.requireNonNull(pest, "pest"),
            Objects.requireNonNull(place, "place"),
            choices.seed,
            choices.atATime));
  }

  /**
   * The same with another seed of what is left to chance.
   *
   * @param seed seed of the order in which the errors of a station's offset are dealt out
   * @return the changed batch
   */
  public ForecastBatch withSeed(long seed) {
    return new ForecastBatch(
        paths, open, new Choices(choices.day, choices.pest, choices.place, seed, choices.atATime));
  }

  /**
   * The same with so many forecasts at a time.
   *
   * @param number at least 1
   * @return the changed batch
   * @throws InputProblem for a number below 1
   */
  public ForecastBatch atATime(int number) {
    if (number < 1) {
      throw InputProblem.of(number + " forecasts at a time")
          .expected("at least 1")
          .because("with none at work the batch would never end")
          .mend("leave it out to use all processors");
    }
    return new ForecastBatch(
        paths, open, new Choices(choices.day, choices.pest, choices.place, choices.seed, number));
  }

  /**
   * Makes the forecasts.
   *
   * @return one entry a pest and place
   * @throws InputProblem when a pest or place was asked for that no folder has
   * @throws CancellationException when whoever listens on this thread cancels
   */
  public BatchForecast run() {
    return run(Progress.ofThread());
  }

  /**
   * Makes the forecasts.
   *
   * @param progress hears of every forecast that is done, and may cancel
   * @return one entry a pest and place
   * @throws InputProblem when a pest or place was asked for that no folder has
   * @throws CancellationException when the progress cancels or the thread is interrupted
   */
  public BatchForecast run(Progress progress) {
    var entries = new ArrayList<Piece>();
    open.ifPresent(folder -> add(folder.toString().split(": ", 2)[0], day(folder), entries));
    for (var i = 0; i < paths.size(); i++) {
      progress.step(READING, i, paths.size());
      read(paths.get(i), entries);
    }
    if (entries.isEmpty()) {
      throw nothing();
    }
    return new BatchForecast(
        new OrderedWork(FORECASTS, Math.min(choices.atATime, entries.size()), progress)
            .run(entries, this::forecast));
  }

  private SeasonFolder day(SeasonFolder folder) {
    return choices.day.map(folder::upTo).orElse(folder);
  }

  private InputProblem nothing() {
    return InputProblem.of(
            "the pest \"" + choices.pest + "\" and the place \"" + choices.place + "\"")
        .expected("a pest with traps at a place, or blank for all")
        .because("no folder has such a pair, so there is nothing to forecast")
        .mend("look how traps.csv writes the two; capitals and spaces count");
  }

  /** A pest at a place, or a folder that could not be read. */
  private record Piece(
      String name, Optional<SeasonFolder> folder, String pest, String place, String problem) {}

  private void read(Path path, List<Piece> entries) {
    try {
      add(path.toString(), SeasonFolder.readSoundLogs(path, choices.day), entries);
    } catch (InputProblem problem) {
      entries.add(new Piece(path.toString(), Optional.empty(), "", "", problem.getMessage()));
    }
  }

  private void add(String name, SeasonFolder folder, List<Piece> entries) {
    var pairs = new LinkedHashSet<List<String>>();
    for (var trap : folder.traps()) {
      var wanted =
          (choices.pest.isBlank() || choices.pest.equals(trap.pest()))
              && (choices.place.isBlank() || choices.place.equals(trap.place()));
      if (wanted) {
        pairs.add(List.of(trap.pest(), trap.place()));
      }
    }
    pairs.forEach(
        pair -> entries.add(new Piece(name, Optional.of(folder), pair.get(0), pair.get(1), "")));
  }

  private PlaceForecast forecast(Piece piece) {
    if (piece.folder.isEmpty()) {
      return failed(piece, piece.problem);
    }
    try {
      var seasons = piece.folder.get().pestAt(piece.pest, piece.place);
      var ahead = seasons.ahead(choices.seed).underWay();
      var fit =
          FlightTiming.searching(seasons.pest().range()).fit(seasons.past(), Progress.silent());
      var forecast = GenerationForecast.of(fit, ahead, seasons.pest().stages(), Progress.silent());
      return new PlaceForecast(piece.name, piece.pest, piece.place, Optional.of(forecast), "");
    } catch (InputProblem problem) {
      return failed(piece, problem.getMessage());
    }
  }

  private static PlaceForecast failed(Piece piece, String why) {
    return new PlaceForecast(piece.name, piece.pest, piece.place, Optional.empty(), why);
  }
}
