package agro.season;

import agro.generation.FlightTiming;
import agro.generation.ObservedSeason;
import agro.generation.skill.HindcastScheme;
import agro.generation.skill.SeasonArchive;
import java.time.LocalDate;
import java.util.List;

/**
 * The past seasons of a pest at a place of a season folder, and what the folder would have known of
 * them on any day. What is known is worked out anew for each day, from the lines of the logs on.
 */
public final class FolderArchive implements SeasonArchive {

  private static final long SEED = 1;

  private final SeasonFolder folder;
  private final PestSeasons whole;
  private final FlightTiming timing;
  private final long seed;

  FolderArchive(SeasonFolder folder, PestSeasons whole) {
    this(folder, whole, FlightTiming.searching(whole.pest().range()), SEED);
  }

  private FolderArchive(SeasonFolder folder, PestSeasons whole, FlightTiming timing, long seed) {
    this.folder = folder;
    this.whole = whole;
    this.timing = timing;
    this.seed = seed;
  }

  /**
   * The same with another fit of flight timing.
   *
   * @param other the choices of the fit; a threshold is not among them, it comes from its source
   * @return the changed archive
   */
  public FolderArchive with(FlightTiming other) {
    return new FolderArchive(folder, whole, other, seed);
  }

  /**
   * The same with another seed of what is left to chance.
   *
   * @param other seed of the order in which the errors of a station's offset are dealt out
   * @return the changed archive
   */
  public FolderArchive withSeed(long other) {
    return new FolderArchive(folder, whole, timing, other);
  }

  @Override
  public String pest() {
    return whole.pest().name();
  }

  @Override
  public String place() {
    return whole.place().name();
  }

  @Override
  public FlightTiming timing() {
    return timing;
  }

  @Override
  public List<ObservedSeason> seasons() {
    return whole.seasons().stream()
        .filter(season -> season.temperatures().lastDay().equals(season.end()))
        .map(season -> season.observed(whole.pest().model()))
        .toList();
  }

  @Override
  public LocalDate firstDay(int year) {
    return whole.pest().season().start(year);
  }

  @Override
  public LocalDate lastDay(int year) {
    return whole.pest().season().end(year);
  }

  @Override
  public Known known(int year, LocalDate issueDate, HindcastScheme scheme) {
    var then =
        (scheme == HindcastScheme.ONLY_EARLIER
                ? folder.upTo(issueDate)
                : folder.withoutRest(whole.pest().season(), year, issueDate))
            .pestAt(pest(), place());
    return new Known(then.past(), then.ahead(seed).underWay());
  }
}
