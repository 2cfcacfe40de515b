package agro.trial.efficacy;

import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which formula fits the data, with the reason, from the data themselves.
 *
 * @param formula the formula that fits
 * @param reason why, in a sentence or two
 * @param fits what speaks for and against each formula
 * @param evenness how even the pest stood before the treatment, where it was counted
 * @param controlChangePercent change of the control from before to after, where both were counted
 */
public record EfficacyAdvice(
    EfficacyFormula formula,
    String reason,
    List<FormulaFit> fits,
    Optional<Evenness> evenness,
    OptionalDouble controlChangePercent)
    implements Presentable {

  /**
   * One formula against the data.
   *
   * @param formula the formula
   * @param fits whether it may be taken
   * @param reason why, or why not
   */
  public record FormulaFit(EfficacyFormula formula, boolean fits, String reason) {
    /** Refuses null. */
    public FormulaFit {
      Objects.requireNonNull(formula, "formula");
      Objects.requireNonNull(reason, "reason");
    }
  }

  /** Copies the list. */
  public EfficacyAdvice {
    Objects.requireNonNull(formula, "formula");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(evenness, "evenness");
    Objects.requireNonNull(controlChangePercent, "controlChangePercent");
    fits = List.copyOf(fits);
  }

  /**
   * Looks at the data.
   *
   * @param data plots with their counts
   * @return the advice
   */
  public static EfficacyAdvice of(EfficacyData data) {
    if (data.isMortality()) {
      return advise(
          EfficacyFormula.SCHNEIDER_ORELLI,
          "The data are dead out of a known total, so the total itself is the count before; the"
              + " mortality of the control is taken out. Abbott's formula on the living gives the"
              + " same value.",
          data,
          Optional.empty());
    }
    if (!data.hasBefore()) {
      return advise(
          EfficacyFormula.ABBOTT,
          "There are live counts after the treatment alone. Abbott's formula presumes that the"
              + " pest stood as densely on all plots of a block; these data cannot show whether it"
              + " did.",
          data,
          Optional.empty());
    }
    var evenness = Evenness.of(data);
    return evenness.isEven()
        ? advise(
            EfficacyFormula.ABBOTT,
            "There are live counts, and before the treatment the pest stood evenly: "
                + evenness.words()
                + ". Counts before would add their own scatter and mend nothing.",
            data,
            Optional.of(evenness))
        : advise(
            EfficacyFormula.HENDERSON_TILTON,
            "There are live counts before and after, and the pest did not stand evenly before: "
                + evenness.words()
                + ". The formula holds each plot against its own start and takes the change of the"
                + " control out.",
            data,
            Optional.of(evenness));
  }

  private static EfficacyAdvice advise(
      EfficacyFormula formula, String reason, EfficacyData data, Optional<Evenness> evenness) {
    var change = data.isMortality() || !data.hasBefore() ? OptionalDouble.empty() : change(data);
    return new EfficacyAdvice(
        formula,
        reason + controlWords(change),
        Arrays.stream(EfficacyFormula.values()).map(one -> fit(one, data, evenness)).toList(),
        evenness,
        change);
  }

  private static OptionalDouble change(EfficacyData data) {
    var control =
        data.of(data.control()).stream().filter(plot -> plot.before().isPresent()).toList();
    var four = new FourCounts(control, control, true);
    double before = four.controlBefore();
    return before > 0
        ? OptionalDouble.of(100 * (four.controlAfter() - before) / before)
        : OptionalDouble.empty();
  }

  private static String controlWords(OptionalDouble change) {
    if (change.isEmpty()) {
      return "";
    }
    double percent = change.getAsDouble();
    var size = Numbers.fixed(Math.abs(percent), 0) + " %";
    if (percent < 0) {
      return " The control declined by "
          + size
          + " by itself: the plain loss on the treated would count that decline as efficacy.";
    }
    return " The control grew by "
        + size
        + ": the plain loss on the treated would hide what the treatment held back.";
  }

  private static FormulaFit fit(
      EfficacyFormula formula, EfficacyData data, Optional<Evenness> evenness) {
    if (formula == EfficacyFormula.SCHNEIDER_ORELLI && !data.isMortality()) {
      return new FormulaFit(formula, false, "needs dead out of a total; these are live counts");
    }
    if (formula.needsBefore() && data.isMortality()) {
      return new FormulaFit(formula, false, "needs live counts; these are mortalities");
    }
    if (formula.needsBefore() && !data.hasBefore()) {
      return new FormulaFit(formula, false, "needs counts before the treatment");
    }
    return new FormulaFit(formula, true, speaksFor(formula, data, evenness));
  }

  private static String speaksFor(
      EfficacyFormula formula, EfficacyData data, Optional<Evenness> evenness) {
    return switch (formula) {
      case SCHNEIDER_ORELLI -> "made for mortality";
      case HENDERSON_TILTON ->
          evenness.orElseThrow().isEven()
              ? "holds too, with the added scatter of the counts before"
              : "made for counts where the pest did not stand evenly";
      case SUN_SHEPARD ->
          "the value of Henderson-Tilton, by way of mortality and the change of the control";
      case ABBOTT -> {
        if (data.isMortality()) {
          yield "the value of Schneider-Orelli, from the living";
        }
        yield evenness.isEmpty()
            ? "presumes an even pest, which cannot be seen here"
            : evenness.orElseThrow().isEven()
                ? "the pest stood evenly"
                : "presumes an even pest; here plots that began with more look worse";
      }
    };
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Which formula of efficacy")
        .fact("Formula", formula.title() + ": " + formula.form())
        .paragraph(reason)
        .table(
            ResultTable.of(
                "The four formulas and these data",
                List.of(Column.of("Formula"), Column.of("Fits"), Column.of("Reason")),
                fits.stream()
                    .map(
                        fit ->
                            List.of(
                                Cell.text(fit.formula().title()),
                                Cell.text(fit.fits() ? "yes" : "no"),
                                Cell.text(fit.reason())))
                    .toList()))
        .sources(
            evenness.isPresent()
                ? List.of(formula.source(), Evenness.RULE)
                : List.of(formula.source()))
        .build();
  }
}
