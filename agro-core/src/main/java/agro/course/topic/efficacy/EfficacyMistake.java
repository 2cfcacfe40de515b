package agro.course.topic.efficacy;

import agro.course.Mistake;

/** Mistakes with efficacy. */
public enum EfficacyMistake implements Mistake {
  /** The share that lives was given in place of the share that is gone. */
  SURVIVORS_GIVEN,
  /** The difference was divided by the count of the treated. */
  DIVIDED_BY_TREATED,
  /** The difference of two counts was taken as per cent. */
  DIFFERENCE_AS_PERCENT,
  /** Mortality was not corrected for the control. */
  NOT_CORRECTED,
  /** The control's mortality was subtracted, but not divided out. */
  ONLY_SUBTRACTED,
  /** Dead was divided by the living. */
  DEAD_PER_LIVING,
  /** The counts before the treatment were left out. */
  BEFORE_LEFT_OUT,
  /** The control was left out. */
  CONTROL_LEFT_OUT,
  /** A ratio was taken upside down. */
  RATIO_UPSIDE_DOWN,
  /** A fall of the control was entered as a rise, or the reverse. */
  SIGN_OF_CHANGE,
  /** The share that is gone was given in place of the share that is left. */
  GONE_FOR_LEFT,
  /** The treated plot was compared with the other plot, not with its own count before. */
  OTHER_PLOT,
  /** A change was divided by the later count. */
  DIVIDED_BY_LATER,
  /** Percentages of blocks were averaged. */
  MEAN_OF_PERCENTS,
  /** The efficacy of the means was given in place of the mean of the blocks' efficacies. */
  MEANS_FOR_PERCENTS,
  /** The other column of the table was read. */
  OTHER_COLUMN,
  /** The sum was given in place of the mean. */
  SUM_FOR_MEAN,
  /** A formula was chosen that needs even plots. */
  NEEDS_EVEN_PLOTS,
  /** A formula was chosen that needs counts before the treatment, which are not there. */
  NEEDS_BEFORE,
  /** A formula was chosen that takes mortality where survivors were counted, or the reverse. */
  WRONG_MEASURE;

  @Override
  public String bundle() {
    return "efficacy";
  }
}
