package agro.season;

import agro.generation.ForecastRow;
import agro.generation.GenerationForecast;
import agro.generation.skill.SeasonArchive;
import agro.generation.skill.SeasonDates;
import agro.report.InputProblem;
import agro.report.SourceLocation;
import agro.units.Numbers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Objects;

/**
 * The forecasts of a season folder as they were issued, in {@code forecasts.csv}. What was issued
 * is never written anew: lines are only added. So they can be scored later as they were, which a
 * hindcast with today's program and today's fit cannot. Immutable.
 *
 * @param folder the season folder
 * @param entries the lines in the order of the file
 */
public record Ledger(Path folder, List<LedgerEntry> entries) {

  /** Copies the list. */
  public Ledger {
    Objects.requireNonNull(folder, "folder");
    entries = List.copyOf(entries);
  }

  /**
   * Reads the ledger of a season folder.
   *
   * @param folder the folder
   * @return the ledger, without a line when there is no file yet
   * @throws InputProblem when a line cannot be read, with its number and column
   */
  public static Ledger read(Path folder) {
    return new Ledger(folder, LedgerFile.read(folder));
  }

  /**
   * What came of keeping a forecast.
   *
   * @param ledger the ledger with it
   * @param added lines that were added
   * @param alreadyKept lines that stood there already, word for word
   */
  public record Kept(Ledger ledger, int added, int alreadyKept) {
    /** Refuses null. */
    public Kept {
      Objects.requireNonNull(ledger, "ledger");
    }

    /**
     * What was done, in words.
     *
     * @return a sentence
     */
    public String words() {
      return added
          + (added == 1 ? " date" : " dates")
          + " added to "
          + FolderLayout.FORECASTS.fileName()
          + (alreadyKept == 0 ? "" : "; " + alreadyKept + " stood there already")
          + ".";
    }
  }

  /**
   * Adds a forecast to the file. Lines that say the same as one that was kept are not added again.
   *
   * @param forecast the forecast as issued
   * @param note anything; line breaks become spaces
   * @return the ledger with the forecast, and how many lines were added
   * @throws InputProblem when another forecast of the same event with the same day of issue was
   *     kept before; nothing is written then
   */
  public Kept keep(GenerationForecast forecast, String note) {
    var kept = new HashMap<String, LedgerEntry>();
    entries.forEach(entry -> kept.put(entry.subject(), entry));
    var added = new ArrayList<LedgerEntry>();
    for (var row : forecast.rows()) {
      var entry = entry(forecast, row, note);
      var before = kept.get(entry.subject());
      if (before == null) {
        added.add(entry);
      } else if (!before.saysTheSame(entry)) {
        throw contradiction(before);
      }
    }
    LedgerFile.append(folder, added);
    var all = new ArrayList<>(entries);
    all.addAll(added);
    return new Kept(new Ledger(folder, all), added.size(), forecast.rows().size() - added.size());
  }

  private static InputProblem contradiction(LedgerEntry before) {
    return InputProblem.at(before.location(), "another forecast of " + before.subject())
        .expected("one forecast for a day of issue")
        .because("what was issued stays as it was, or its score would mean nothing")
        .mend(
            "issue the forecast as of another day; the data may have changed since the first one");
  }

  private static LedgerEntry entry(GenerationForecast forecast, ForecastRow row, String note) {
    var season = forecast.season();
    var dates = row.dates();
    return new LedgerEntry(
        season.asOf(),
        season.known().place(),
        season.pest(),
        season.firstDay(),
        season.lastDay(),
        row.event(),
        row.generation(),
        row.share(),
        LedgerEntry.CHANCES.stream().map(chance -> dates.quantile(chance / 100.0)).toList(),
        Math.rint(dates.chanceNotThisSeason() * 1e4) / 1e4,
        method(forecast),
        note.strip().replaceAll("\\s+", " "),
        SourceLocation.NONE);
  }

  /** What a later reader needs to know of the way the forecast was made. */
  private static String method(GenerationForecast forecast) {
    var fit = forecast.fit();
    var season = forecast.season();
    return fit.shape().curve().words()
        + " flights; interval "
        + Numbers.fixed(fit.workingInterval().degreeDaysC(), 1)
        + " °C·d, "
        + fit.verdict().words()
        + "; seasons "
        + (fit.seasons().isEmpty()
            ? "none"
            : String.join(
                " ", fit.seasons().stream().map(past -> Integer.toString(past.year())).toList()))
        + "; "
        + season.model()
        + "; temperatures to "
        + season.known().lastDay()
        + "; "
        + season.members().size()
        + " past years";
  }

  /**
   * Scores the kept forecasts of one pest at one place as they were issued.
   *
   * @param archive the seasons that are over
   * @return the scores
   */
  public LedgerScores score(SeasonArchive archive) {
    return score(archive.pest(), archive.place(), SeasonDates.of(archive));
  }

  /**
   * Scores the kept forecasts of one pest at one place by dates that were observed.
   *
   * @param pest the pest
   * @param place the place
   * @param observed when the flights of each season came
   * @return the scores
   */
  public LedgerScores score(String pest, String place, List<SeasonDates> observed) {
    return LedgerScores.of(this, pest, place, observed);
  }
}
