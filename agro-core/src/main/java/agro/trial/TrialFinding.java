package agro.trial;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * Something in a trial that a person should know before the analysis.
 *
 * @param kind what it is about
 * @param severity how bad it is
 * @param text one sentence that names plots and lines
 * @param cure how to mend it, or what to ask
 * @param plots the plots it is about, possibly none
 * @param lines lines of the table, possibly none
 */
public record TrialFinding(
    Kind kind,
    Severity severity,
    String text,
    String cure,
    List<TrialPlot> plots,
    List<Long> lines) {

  /** What a finding is about. */
  public enum Kind {
    /** The design that the data show. */
    DESIGN,
    /** The declared design and the data disagree. */
    DESIGN_DISAGREES,
    /** Plants within plots. */
    SUB_SAMPLES,
    /** Plots were looked at on several days. */
    REPEATED_DATES,
    /** One sub-sample has two lines on one day. */
    TWO_VALUES,
    /** A plot has no value, or is not in the table. */
    MISSING_PLOT,
    /** Treatments differ in their number of plots. */
    UNEQUAL_REPLICATION,
    /** A treatment has one plot only. */
    NO_REPLICATION,
    /** A treatment stands twice in a block. */
    TWICE_IN_BLOCK,
    /** A treatment is missing in a block. */
    MISSING_IN_BLOCK,
    /** Two names may be one treatment. */
    NEAR_NAMES,
    /** A plot changes its treatment, block or place between lines. */
    PLOT_CHANGES,
    /** A value cannot be. */
    OUT_OF_RANGE,
    /** Which treatment is the control. */
    CONTROL,
    /** Two plots have the same place. */
    SAME_PLACE
  }

  /** How bad a finding is. */
  public enum Severity {
    /** Good to know. */
    NOTE,
    /** The analysis runs, but the reader has to decide. */
    WARNING,
    /** The figures would be wrong until it is mended. */
    ERROR
  }

  /** Makes the lists immutable. */
  public TrialFinding {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(cure, "cure");
    plots = List.copyOf(plots);
    lines = List.copyOf(lines);
  }

  @Override
  public String toString() {
    return severity.name().toLowerCase(Locale.ROOT)
        + ": "
        + text
        + (cure.isEmpty() ? "" : " " + cure);
  }
}
