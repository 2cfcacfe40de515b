package agro.generation.skill;

import agro.report.ReadReport.Deed;
import agro.source.Bibliography;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Presentation;
import java.util.List;

/** A hindcast as a person reads it. */
final class HindcastPages {

  private static final String CLAIM =
      "Skill on invented data is a demonstration, never proof. Skill at one place in a few seasons"
          + " says little of other places and of seasons to come.";

  private HindcastPages() {}

  static Presentation page(Hindcast hindcast) {
    var page =
        Presentation.titled(
                "How good the forecasts would have been: "
                    + hindcast.pest()
                    + ", "
                    + hindcast.place())
            .paragraph(CLAIM)
            .paragraph(method(hindcast));
    for (var scheme : hindcast.plan().schemes()) {
      page.table(hindcast.byLead(scheme)).table(hindcast.skillByLead(scheme));
    }
    for (var scheme : hindcast.plan().schemes()) {
      page.table(hindcast.byEvent(scheme));
    }
    return page.table(hindcast.observedTable())
        .paragraph(scoring())
        .part(Presentation.of(hindcast.report()))
        .sources(
            List.of(
                Bibliography.GNEITING_RAFTERY_2007,
                Bibliography.GNEITING_RANJAN_2011,
                Bibliography.HERSBACH_2000,
                Bibliography.BRIER_1950,
                Bibliography.CLOPPER_PEARSON_1934))
        .cautions(List.of(Caution.LABEL_FIRST, Caution.LICENSED_ADVISER))
        .build();
  }

  private static String method(Hindcast hindcast) {
    var text = new StringBuilder();
    text.append(hindcast.observed().size())
        .append(hindcast.observed().size() == 1 ? " season" : " seasons")
        .append(
            ". Each was forecast anew, as of so many days before each event and as of its first day,"
                + " from what was known on that day: later counts, later temperatures of the place"
                + " and of its neighbour were left out before anything was computed, and the weather"
                + " ahead was never that of the season itself.");
    if (hindcast.plan().schemes().contains(HindcastScheme.LEAVE_ONE_OUT)) {
      text.append(
          " \"Leave one season out\" learns from later seasons as well, which shows what a longer"
              + " record is worth; \"only earlier seasons\" is what would have been issued.");
    }
    text.append(
        " The days of issue are counted back from the observed date, so that a forecast that missed"
            + " is issued early or late with it; events that did not come are forecast before the"
            + " season's last day.");
    var refused = hindcast.report().entries(Deed.DROPPED).size();
    if (refused > 0) {
      text.append(" On ")
          .append(refused)
          .append(refused == 1 ? " day" : " days")
          .append(" of issue too little was known for a forecast; the report lists them.");
    }
    return text.toString();
  }

  private static String scoring() {
    return "\"Not this season\" is scored as the end of the season's last day: an outcome there"
        + " costs nothing when the event did not come, and otherwise its distance to the date that"
        + " came. CRPS is integrated up to that day, which keeps it proper. Nothing is left out"
        + " because a date did not come. Observed dates are taken as exact; a date whose standard"
        + " error is above "
        + Numbers.fixed(SeasonDates.MOST_ERROR_DAYS, 0)
        + " days, or whose flight gave fewer than "
        + Numbers.fixed(SeasonDates.LEAST_ANIMALS, 0)
        + " animals, is not identified and not scored.";
  }
}
