package agro.trial;

import agro.units.Area;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * One plot of a trial: the piece of ground that got a treatment of its own, and so the replicate.
 *
 * @param site place of the trial, empty when there is only one
 * @param year year of the trial, if it is written down
 * @param block block, empty when the trial has none
 * @param mainPlot main plot of a split-plot trial, empty when there is none or it is not written
 * @param name name or number, unique within site and year
 * @param place row and column, if written down
 * @param levels level of each treatment factor, in the order of the factors
 * @param area area of the plot, if written down
 */
public record TrialPlot(
    String site,
    OptionalInt year,
    String block,
    String mainPlot,
    String name,
    Optional<PlotPlace> place,
    Map<String, String> levels,
    Optional<Area> area) {

  /** Name of the treatment factor where a trial has one factor without a name of its own. */
  public static final String TREATMENT = "treatment";

  /** Plots by site, year, block and name, with numbers in names taken as numbers. */
  public static final Comparator<TrialPlot> IN_ORDER =
      Comparator.comparing(TrialPlot::site, NaturalOrder.ofNames())
          .thenComparingInt(plot -> plot.year().orElse(Integer.MIN_VALUE))
          .thenComparing(TrialPlot::block, NaturalOrder.ofNames())
          .thenComparing(TrialPlot::name, NaturalOrder.ofNames());

  /** Refuses a plot without a name or without a treatment and makes the levels immutable. */
  public TrialPlot {
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(year, "year");
    Objects.requireNonNull(block, "block");
    Objects.requireNonNull(mainPlot, "mainPlot");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(area, "area");
    levels = Collections.unmodifiableMap(new LinkedHashMap<>(levels));
    if (name.isBlank()) {
      throw new IllegalArgumentException("a plot needs a name");
    }
    if (levels.isEmpty() || levels.containsValue("") || levels.containsKey("")) {
      throw new IllegalArgumentException(
          "plot \"" + name + "\" needs a level of each treatment factor, but got " + levels);
    }
  }

  /**
   * A plot of a trial with one treatment factor.
   *
   * @param name name or number
   * @param block block, or empty
   * @param treatment the treatment
   * @return the plot
   */
  public static TrialPlot of(String name, String block, String treatment) {
    return of(name, block, Map.of(TREATMENT, treatment));
  }

  /**
   * A plot of a trial with any number of treatment factors.
   *
   * @param name name or number
   * @param block block, or empty
   * @param levels level of each factor
   * @return the plot
   */
  public static TrialPlot of(String name, String block, Map<String, String> levels) {
    return new TrialPlot(
        "", OptionalInt.empty(), block, "", name, Optional.empty(), levels, Optional.empty());
  }

  /**
   * This plot at a place of the grid.
   *
   * @param row row, counted from 1
   * @param column column, counted from 1
   * @return a new plot
   */
  public TrialPlot at(int row, int column) {
    return new TrialPlot(
        site, year, block, mainPlot, name, Optional.of(new PlotPlace(row, column)), levels, area);
  }

  /**
   * This plot at a site in a year.
   *
   * @param newSite the site
   * @param newYear the year
   * @return a new plot
   */
  public TrialPlot inSite(String newSite, int newYear) {
    return new TrialPlot(
        newSite, OptionalInt.of(newYear), block, mainPlot, name, place, levels, area);
  }

  /**
   * This plot within a main plot.
   *
   * @param newMainPlot name of the main plot
   * @return a new plot
   */
  public TrialPlot inMainPlot(String newMainPlot) {
    return new TrialPlot(site, year, block, newMainPlot, name, place, levels, area);
  }

  /**
   * This plot with other levels of its factors.
   *
   * @param newLevels level of each factor
   * @return a new plot
   */
  public TrialPlot withLevels(Map<String, String> newLevels) {
    return new TrialPlot(site, year, block, mainPlot, name, place, newLevels, area);
  }

  /**
   * The treatment in words: the level itself when there is one factor, else each factor with its
   * level.
   *
   * @return for example {@code "soap"} or {@code "nitrogen 0, phosphate 1"}
   */
  public String treatment() {
    if (levels.size() == 1) {
      return levels.values().iterator().next();
    }
    return levels.entrySet().stream()
        .map(level -> level.getKey() + " " + level.getValue())
        .collect(Collectors.joining(", "));
  }

  /**
   * The level of one factor.
   *
   * @param factor name of the factor
   * @return the level, or empty when the trial has no such factor
   */
  public Optional<String> level(String factor) {
    return Optional.ofNullable(levels.get(factor));
  }

  /**
   * Site and year in words.
   *
   * @return for example {@code "North field 2026"}, empty when neither is written down
   */
  public String environment() {
    var words = site + (year.isPresent() ? " " + year.getAsInt() : "");
    return words.trim();
  }

  /**
   * The plot in words.
   *
   * @return for example {@code "plot 7"} or {@code "plot 7 (North field 2026)"}
   */
  public String label() {
    return "plot " + name + (environment().isEmpty() ? "" : " (" + environment() + ")");
  }

  /**
   * Whether another record is of the same piece of ground.
   *
   * @param other a plot
   * @return true when site, year and name are equal, whatever else is written
   */
  public boolean isSamePlot(TrialPlot other) {
    return site.equals(other.site) && year.equals(other.year) && name.equals(other.name);
  }

  @Override
  public String toString() {
    return label() + (block.isEmpty() ? "" : " in block " + block) + ": " + treatment();
  }
}
