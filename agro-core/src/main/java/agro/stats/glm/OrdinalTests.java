package agro.stats.glm;

import agro.stats.linear.ModelTerm;
import java.util.ArrayList;
import java.util.List;

/** Likelihood ratio tests of the terms of an ordinal model. */
final class OrdinalTests {

  private OrdinalTests() {}

  static List<DevianceRow> terms(OrdinalFit fit) {
    var rows = new ArrayList<DevianceRow>();
    var terms = fit.design().terms();
    for (ModelTerm term : terms) {
      var others = new ArrayList<>(terms);
      others.removeIf(each -> each.equals(term) || each.contains(term));
      var without = fit.model().fit(fit.scores(), fit.design().withTerms(others));
      others.add(term);
      var with = fit.model().fit(fit.scores(), fit.design().withTerms(others));
      rows.add(
          DevianceRow.of(
              term.name(),
              with.parameters() - without.parameters(),
              without.deviance() - with.deviance(),
              with.deviance(),
              1,
              Double.POSITIVE_INFINITY));
    }
    return List.copyOf(rows);
  }
}
