package agro.course.topic.rotation;

import agro.course.Mistake;

/** Mistakes with rotation and with the limits of labels. */
public enum RotationMistake implements Mistake {
  /** The first day was counted as one of the interval. */
  FIRST_DAY_COUNTED,
  /** The interval was taken for the free days between two sprays. */
  FREE_DAYS_BETWEEN,
  /** The pre-harvest interval was taken for the interval between sprays. */
  PRE_HARVEST_FOR_INTERVAL,
  /** The interval between sprays was taken for the pre-harvest interval. */
  INTERVAL_FOR_PRE_HARVEST,
  /** The day of harvest was counted as one of the interval. */
  HARVEST_DAY_COUNTED,
  /** The pre-harvest interval was counted from the harvest onward. */
  COUNTED_FORWARD,
  /** The harvest was left on its day although the spray came later. */
  HARVEST_AS_PLANNED,
  /** The field was entered on the day of the spray. */
  ENTRY_ON_DRY_SPRAY,
  /** The pre-harvest interval was taken for the re-entry interval. */
  PRE_HARVEST_FOR_RE_ENTRY,
  /** A limit that is not recorded was taken for none. */
  MISSING_AS_NONE,
  /** A limit that is not recorded was taken for a ban. */
  MISSING_AS_BAN,
  /** A broken limit was overlooked. */
  BREACH_OVERLOOKED,
  /** A broken limit was left open because another one is not recorded. */
  BREACH_LEFT_OPEN,
  /** A limit that the label denies was taken for one that is not recorded. */
  NONE_AS_MISSING,
  /** A limit that the label denies was taken for a ban. */
  NONE_AS_BAN,
  /** Products were compared by their names. */
  NAMES_FOR_GROUPS,
  /** A group that had rested for a window was called a breach. */
  RESTED_GROUP,
  /** Two sprays of a group in one window were called a breach. */
  SAME_WINDOW,
  /** The window before the last one was looked at. */
  WINDOW_BEFORE_LAST,
  /** A sub-group was taken for another mode of action. */
  SUB_GROUP_AS_ANOTHER,
  /** Each group was allowed once in a season. */
  ONCE_A_SEASON,
  /** A mixture was judged by one of its groups. */
  MIXTURE_BY_ONE_GROUP,
  /** Sprays with another product were counted. */
  OTHER_PRODUCT_COUNTED,
  /** Sprays of the last year were counted. */
  LAST_YEAR_COUNTED,
  /** The maximum itself was given as what is left. */
  MAXIMUM_AS_LEFT,
  /** What was used was given as what is left. */
  USED_FOR_LEFT,
  /** Reduced doses were counted as full ones. */
  FULL_DOSES_COUNTED,
  /** Only the maximum number was looked at. */
  ONLY_THE_NUMBER,
  /** A part of a dose was rounded up. */
  ROUNDED_UP,
  /** Amounts of product were taken for amounts of active ingredient. */
  ACTIVE_FOR_PRODUCT,
  /** Only the use of the product itself was counted. */
  ONLY_OWN_PRODUCT,
  /** One content was used for both products. */
  ONE_CONTENT_FOR_BOTH,
  /** The maximum was held against each product alone. */
  MAXIMUM_FOR_EACH_PRODUCT,
  /** The active ingredient was multiplied by the content. */
  MULTIPLIED_BY_CONTENT,
  /** The first spray of a window was left out. */
  FIRST_SPRAY_FORGOTTEN,
  /** One spray too many was counted. */
  ONE_SPRAY_TOO_MANY,
  /** The maximum number of the label was not looked at. */
  MAXIMUM_IGNORED,
  /** The maximum of a crop was granted in each window. */
  MAXIMUM_PER_WINDOW,
  /** The product was used in every window. */
  ROTATION_IGNORED,
  /** The other product was left out. */
  OTHER_PRODUCT_FORGOTTEN;

  @Override
  public String bundle() {
    return "rotation";
  }
}
