package agro.trial;

import agro.reading.DelimitedFormat;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Unit;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * What the columns of a plot table hold. Columns with the usual names ({@code site}, {@code year},
 * {@code block}, {@code main plot}, {@code plot}, {@code row}, {@code column}, {@code area}, {@code
 * date}, {@code who}, {@code treatment}, {@code plant}) are taken when they are there; a column
 * that is declared has to be there. Names are compared without regard to case. Variables are always
 * declared, because their kind decides which values can be. Immutable.
 */
public final class PlotColumns {

  /** What a column can hold besides treatments, sub-samples and variables. */
  public enum Role {
    /** Place of the trial. */
    SITE("site"),
    /** Year of the trial. */
    YEAR("year"),
    /** Block. */
    BLOCK("block"),
    /** Main plot of a split-plot trial. */
    MAIN_PLOT("main plot"),
    /** Name or number of the plot. */
    PLOT("plot"),
    /** Row of the plot. */
    ROW("row"),
    /** Column of the plot in the field. */
    COLUMN("column"),
    /** Area of the plot. */
    AREA("area"),
    /** Day of the assessment. */
    DATE("date"),
    /** Who assessed. */
    WHO("who");

    private final String usual;

    Role(String usual) {
      this.usual = usual;
    }

    /**
     * The name under which such a column is looked for when none is declared.
     *
     * @return the heading
     */
    public String usualName() {
      return usual;
    }
  }

  private static final PlotColumns DEFAULTS = new PlotColumns(new Draft());

  private final Draft draft;

  private PlotColumns(Draft draft) {
    this.draft = draft;
  }

  /**
   * The usual names, without variables.
   *
   * @return columns to be continued with the variables
   */
  public static PlotColumns withDefaults() {
    return DEFAULTS;
  }

  /**
   * The usual names with some counts as variables.
   *
   * @param names columns of counts
   * @return the columns
   */
  public static PlotColumns ofCounts(String... names) {
    var columns = DEFAULTS;
    for (var name : names) {
      columns = columns.withResponse(TrialResponse.count(name));
    }
    return columns;
  }

  /**
   * These columns with one named differently.
   *
   * @param role what it holds
   * @param name heading of the column
   * @return new columns
   */
  public PlotColumns withColumn(Role role, String name) {
    return changed(copy -> copy.roles.put(role, name));
  }

  /**
   * These columns with one treatment factor more. Without any, the column {@code treatment} is
   * taken.
   *
   * @param name heading of the column, and name of the factor
   * @return new columns
   */
  public PlotColumns withFactor(String name) {
    return changed(copy -> copy.factors.add(name));
  }

  /**
   * These columns with one that names the sub-sample. Several are joined, the outer one first.
   *
   * @param name heading of the column
   * @return new columns
   */
  public PlotColumns withSubSample(String name) {
    return changed(copy -> copy.subSamples.add(name));
  }

  /**
   * These columns with one variable more.
   *
   * @param response the variable
   * @return new columns
   */
  public PlotColumns withResponse(TrialResponse response) {
    return changed(copy -> copy.responses.add(response));
  }

  /**
   * These columns with the only day of assessment, for tables without a column of dates.
   *
   * @param date the day
   * @return new columns
   */
  public PlotColumns withOnlyDay(LocalDate date) {
    return changed(copy -> copy.onlyDay = Optional.of(date));
  }

  /**
   * These columns with dates in another form than year-month-day.
   *
   * @param pattern pattern of {@link DateTimeFormatter}, for example {@code "d.M.uuuu"}
   * @return new columns
   */
  public PlotColumns withDatePattern(String pattern) {
    var formatter =
        DateTimeFormatter.ofPattern(pattern, Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    return changed(copy -> copy.datePattern = Optional.of(new DatePattern(pattern, formatter)));
  }

  /**
   * These columns for a table that is wide: dates are headings. A heading is a date alone when one
   * variable is declared, or the variable with the date behind it, as {@code "larvae 2026-06-03"}.
   *
   * @return new columns
   */
  public PlotColumns withDatesAsHeadings() {
    return changed(copy -> copy.wide = true);
  }

  /**
   * These columns with words that stand for a missing value, instead of {@code NA}, a point and a
   * dash. An empty cell is always missing.
   *
   * @param words the words, compared without regard to case
   * @return new columns
   */
  public PlotColumns withMissingWords(String... words) {
    return changed(copy -> copy.missing = folded(words));
  }

  /**
   * These columns for a table without names of plots, in which each line is declared to be a plot
   * of its own. Without this, repeated lines of one treatment in one block are sub-samples.
   *
   * @return new columns
   */
  public PlotColumns withEachLineAPlot() {
    return changed(copy -> copy.eachLineAPlot = true);
  }

  /**
   * These columns with areas in another unit than square metres.
   *
   * @param unit unit of the column of areas
   * @return new columns
   */
  public PlotColumns withAreaUnit(Unit<Area> unit) {
    return changed(copy -> copy.areaUnit = unit);
  }

  /**
   * These columns in a file that is written differently.
   *
   * @param format separator, decimal mark and character set
   * @return new columns
   */
  public PlotColumns withFormat(DelimitedFormat format) {
    return changed(copy -> copy.format = format);
  }

  private PlotColumns changed(Consumer<Draft> change) {
    var copy = new Draft(draft);
    change.accept(copy);
    return new PlotColumns(copy);
  }

  private static Set<String> folded(String... words) {
    var set = new TreeSet<String>();
    for (var word : words) {
      set.add(word.trim().toLowerCase(Locale.ROOT));
    }
    return set;
  }

  Optional<String> declared(Role role) {
    return Optional.ofNullable(draft.roles.get(role));
  }

  String nameOf(Role role) {
    return draft.roles.getOrDefault(role, role.usualName());
  }

  List<String> factors() {
    return List.copyOf(draft.factors);
  }

  List<String> subSampleColumns() {
    return List.copyOf(draft.subSamples);
  }

  /**
   * The declared variables.
   *
   * @return variables in the order of declaration
   */
  public List<TrialResponse> responses() {
    return List.copyOf(draft.responses);
  }

  Optional<LocalDate> onlyDay() {
    return draft.onlyDay;
  }

  Optional<DatePattern> datePattern() {
    return draft.datePattern;
  }

  boolean wide() {
    return draft.wide;
  }

  boolean isMissing(String cell) {
    return draft.missing.contains(cell.toLowerCase(Locale.ROOT));
  }

  boolean eachLineAPlot() {
    return draft.eachLineAPlot;
  }

  Unit<Area> areaUnit() {
    return draft.areaUnit;
  }

  DelimitedFormat format() {
    return draft.format;
  }

  @Override
  public String toString() {
    return "plot table with " + draft.responses.stream().map(TrialResponse::name).toList();
  }

  /**
   * A form of dates.
   *
   * @param pattern as declared
   * @param formatter reads it
   */
  record DatePattern(String pattern, DateTimeFormatter formatter) {}

  /** The declarations while they are put together; never changed after that. */
  private static final class Draft {
    private final Map<Role, String> roles = new EnumMap<>(Role.class);
    private final List<String> factors = new ArrayList<>();
    private final List<String> subSamples = new ArrayList<>();
    private final List<TrialResponse> responses = new ArrayList<>();
    private Optional<LocalDate> onlyDay = Optional.empty();
    private Optional<DatePattern> datePattern = Optional.empty();
    private boolean wide;
    private boolean eachLineAPlot;
    private Set<String> missing = folded("NA", ".", "-", "–", "—");
    private Unit<Area> areaUnit = AreaUnit.SQUARE_METRE;
    private DelimitedFormat format = DelimitedFormat.COMMA;

    private Draft() {}

    private Draft(Draft other) {
      roles.putAll(other.roles);
      factors.addAll(other.factors);
      subSamples.addAll(other.subSamples);
      responses.addAll(other.responses);
      onlyDay = other.onlyDay;
      datePattern = other.datePattern;
      wide = other.wide;
      eachLineAPlot = other.eachLineAPlot;
      missing = other.missing;
      areaUnit = other.areaUnit;
      format = other.format;
    }
  }
}
