package agro.programme.interval;

import agro.dose.LabelLimit;

/**
 * A limit that is stated and may hold.
 *
 * @param record the label record or local rule that it stands in
 * @param limit the limit
 * @param certain whether its condition is known to hold
 * @param <L> kind of limit
 */
record ApplicableLimit<L extends LabelLimit>(String record, L limit, boolean certain) {

  String words() {
    var condition = limit.condition().map(each -> ", when " + each).orElse("");
    return limit.words() + ": " + limit.value() + condition;
  }

  /** A breach of a limit whose condition is not known is not certain. */
  RuleFinding judged(RuleFinding finding) {
    return certain || finding.permission() != Permission.REFUSED
        ? finding
        : finding.as(
            Permission.NOT_RECORDED,
            "Whether it is \"" + limit.condition().orElseThrow() + "\" is not stated.");
  }
}
