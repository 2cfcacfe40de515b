package agro.trial.efficacy;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.working.Working;
import java.util.Optional;

/**
 * A published formula of efficacy. Values are per cent of what the control shows; an efficacy below
 * zero, where more is left on the treated than on the control, is kept as it is.
 */
public enum EfficacyFormula {
  /** Survivors on the treated against survivors on the control. */
  ABBOTT(
      "Abbott",
      "E = (1 − Ta / Ca) · 100",
      Measure.COUNTS_OR_MORTALITY,
      false,
      Infestation.UNIFORM,
      EfficacySources.ABBOTT_1925),
  /** Mortality of the treated less that of the control, of those that the control left alive. */
  SCHNEIDER_ORELLI(
      "Schneider-Orelli",
      "E = (b − k) / (100 − k) · 100",
      Measure.MORTALITY,
      false,
      Infestation.UNIFORM,
      EfficacySources.SCHNEIDER_ORELLI_1947),
  /** Change on the treated against change on the control. */
  HENDERSON_TILTON(
      "Henderson-Tilton",
      "E = (1 − (Ta · Cb) / (Tb · Ca)) · 100",
      Measure.LIVE_COUNTS,
      true,
      Infestation.NOT_UNIFORM,
      EfficacySources.HENDERSON_TILTON_1955),
  /** Loss on the treated corrected by the change of the control in per cent. */
  SUN_SHEPARD(
      "Sun-Shepard",
      "E = (M + Δ) / (100 + Δ) · 100, M = (Tb − Ta) / Tb · 100, Δ = (Ca − Cb) / Cb · 100",
      Measure.LIVE_COUNTS,
      true,
      Infestation.NOT_UNIFORM,
      EfficacySources.SUN_SHEPARD_1947);

  /** What a formula is fed with. */
  public enum Measure {
    /** Numbers of live pests. */
    LIVE_COUNTS("live counts"),
    /** Dead out of a known total. */
    MORTALITY("mortality"),
    /** Either of them. */
    COUNTS_OR_MORTALITY("live counts or mortality");

    private final String words;

    Measure(String words) {
      this.words = words;
    }

    /**
     * The measure in words.
     *
     * @return a phrase
     */
    public String words() {
      return words;
    }
  }

  /** What a formula presumes about the pests before the treatment. */
  public enum Infestation {
    /** As many on every plot. */
    UNIFORM("the same on all plots before the treatment"),
    /** Not the same on every plot. */
    NOT_UNIFORM("may differ between plots before the treatment");

    private final String words;

    Infestation(String words) {
      this.words = words;
    }

    /**
     * The presumption in words.
     *
     * @return a phrase
     */
    public String words() {
      return words;
    }
  }

  private final String title;
  private final String form;
  private final Measure measure;
  private final boolean before;
  private final Infestation infestation;
  private final Reference source;

  EfficacyFormula(
      String title,
      String form,
      Measure measure,
      boolean before,
      Infestation infestation,
      Reference source) {
    this.title = title;
    this.form = form;
    this.measure = measure;
    this.before = before;
    this.infestation = infestation;
    this.source = source;
  }

  /**
   * Name of the formula.
   *
   * @return its authors
   */
  public String title() {
    return title;
  }

  /**
   * The formula as it is written.
   *
   * @return T treated, C control, b before, a after; b and k mortality of treated and control
   */
  public String form() {
    return form;
  }

  /**
   * What the formula is fed with.
   *
   * @return counts, mortality or either
   */
  public Measure measure() {
    return measure;
  }

  /**
   * Whether the formula needs counts before the treatment.
   *
   * @return true for Henderson-Tilton and Sun-Shepard
   */
  public boolean needsBefore() {
    return before;
  }

  /**
   * What the formula presumes about the infestation.
   *
   * @return uniform or not
   */
  public Infestation infestation() {
    return infestation;
  }

  /**
   * Where the formula comes from.
   *
   * @return the reference
   */
  public Reference source() {
    return source;
  }

  /**
   * Efficacy from live counts.
   *
   * @param counts the counts
   * @return per cent, below zero when the treated did worse than the control
   * @throws InputProblem when the formula does not take counts, lacks counts before the treatment,
   *     or has no value for these counts
   */
  public double percent(LiveCounts counts) {
    requireCounts(counts.hasBefore());
    undefined(counts)
        .ifPresent(
            why -> {
              throw why;
            });
    double ta = counts.treatedAfter();
    double ca = counts.controlAfter();
    if (!before) {
      return (1 - ta / ca) * 100;
    }
    double tb = counts.treatedBefore().orElseThrow();
    double cb = counts.controlBefore().orElseThrow();
    if (this == HENDERSON_TILTON) {
      return (1 - ta / tb * (cb / ca)) * 100;
    }
    double lost = (tb - ta) / tb * 100;
    double change = (ca - cb) / cb * 100;
    return (lost + change) / (100 + change) * 100;
  }

  /**
   * Efficacy from mortality.
   *
   * @param mortality mortality of treated and control
   * @return per cent, below zero when fewer died of the treated than of the control
   * @throws InputProblem when the formula does not take mortality, or all of the control died
   */
  public double percent(MortalityPair mortality) {
    requireMortality();
    double treated = mortality.treatedPercent();
    double control = mortality.controlPercent();
    if (control == 100) {
      throw EfficacyRefusals.allDead();
    }
    return this == ABBOTT
        ? (1 - (100 - treated) / (100 - control)) * 100
        : (treated - control) / (100 - control) * 100;
  }

  /**
   * Why the formula has no value for counts.
   *
   * @param counts the counts
   * @return the reason; empty when there is a value
   */
  Optional<InputProblem> undefined(LiveCounts counts) {
    if (counts.controlAfter() == 0) {
      return Optional.of(EfficacyRefusals.cleanControl());
    }
    if (before && counts.treatedBefore().orElse(0) == 0) {
      return Optional.of(EfficacyRefusals.noneBefore("treated"));
    }
    if (before && counts.controlBefore().orElse(0) == 0) {
      return Optional.of(EfficacyRefusals.noneBefore("control"));
    }
    return Optional.empty();
  }

  void requireCounts(boolean hasBefore) {
    if (measure == Measure.MORTALITY) {
      throw EfficacyRefusals.wrongMeasure(this, "live counts");
    }
    if (before && !hasBefore) {
      throw EfficacyRefusals.lacksBefore(this);
    }
  }

  void requireMortality() {
    if (measure == Measure.LIVE_COUNTS) {
      throw EfficacyRefusals.wrongMeasure(this, "mortality");
    }
  }

  /**
   * The steps from live counts, as on a blackboard.
   *
   * @param counts the counts
   * @return the steps
   * @throws InputProblem as {@link #percent(LiveCounts)} does
   */
  public Working working(LiveCounts counts) {
    return EfficacySteps.of(this, counts);
  }

  /**
   * The steps from mortality, as on a blackboard.
   *
   * @param mortality mortality of treated and control
   * @return the steps
   * @throws InputProblem as {@link #percent(MortalityPair)} does
   */
  public Working working(MortalityPair mortality) {
    return EfficacySteps.of(this, mortality);
  }

  @Override
  public String toString() {
    return title;
  }
}
