package agro.dose.tank;

import agro.dose.DoseFinding;
import agro.dose.LimitCheck;
import agro.dose.Severity;
import java.util.List;

/** What there is to say about measuring: no vessel fine enough, and marks beyond a limit. */
final class MeasuringFindings {

  private MeasuringFindings() {}

  static void add(TankMixPlan plan, List<TankLoad> loads, List<DoseFinding> findings) {
    for (var load : loads) {
      for (int i = 0; i < plan.partners().size(); i++) {
        var partner = plan.partners().get(i);
        var amount = load.amounts().get(i).amount();
        var suggestion = plan.kit().suggest(amount, partner.bulkDensity());
        if (suggestion instanceof VesselSuggestion.NoneSuits none) {
          var sentence = amount.print(plan.style()) + " for " + words(plan, load) + none.why();
          findings.add(finding(partner, sentence));
        } else if (suggestion instanceof VesselSuggestion.Suits suits
            && passesALimit(plan, partner, suits.reading().rounding())) {
          findings.add(finding(partner, overTheMark(plan, load, suits.reading())));
        }
      }
    }
  }

  private static String words(TankMixPlan plan, TankLoad load) {
    return plan.tank().kind().load() + " " + load.numbers() + ". ";
  }

  private static DoseFinding finding(TankPartner partner, String sentence) {
    return new DoseFinding(Severity.WARNING, partner.product() + ": measuring", sentence);
  }

  /** Whether the dose keeps the limits of the label and the nearest mark above it does not. */
  private static boolean passesALimit(TankMixPlan plan, TankPartner partner, double rounding) {
    if (!(rounding > 0) || partner.label().isEmpty()) {
      return false;
    }
    return !isOver(plan, partner, 1) && isOver(plan, partner, 1 + rounding);
  }

  private static boolean isOver(TankMixPlan plan, TankPartner partner, double factor) {
    var label = partner.label().orElseThrow();
    var ground = new TreatedGround(plan);
    var dose = ground.dose(partner);
    var use = label.planned(dose.withAmount(dose.amount().times(factor)), ground.spray());
    return LimitCheck.check(label.limits(), use).worst() == Severity.ERROR;
  }

  private static String overTheMark(TankMixPlan plan, TankLoad load, VesselReading reading) {
    return reading.printMeasured(plan.style())
        + " at the nearest mark for "
        + plan.tank().kind().load()
        + " "
        + load.numbers()
        + " is more than the label allows. Read the mark below it, or take a finer vessel.";
  }
}
