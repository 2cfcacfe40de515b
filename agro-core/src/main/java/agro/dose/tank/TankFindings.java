package agro.dose.tank;

import agro.dose.DoseFinding;
import agro.dose.LimitCheck;
import agro.dose.PerLitreDose;
import agro.dose.ProductPerSprayVolume;
import agro.dose.Severity;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What there is to say about a mix before the sprayer is filled. */
final class TankFindings {

  /** More partners than this are more than a few. */
  private static final int FEW_PARTNERS = 4;

  /** A share of liquid product in the spray from which a slip of the decimal point is likely. */
  private static final double MUCH_PRODUCT = 0.1;

  private TankFindings() {}

  static List<DoseFinding> of(TankMixPlan plan, List<TankLoad> loads) {
    var findings = new ArrayList<DoseFinding>();
    plan.partners().forEach(partner -> label(partner, plan, findings));
    new TreatedGround(plan).spray().finding().ifPresent(findings::add);
    partners(plan, findings);
    shares(loads.get(0), findings);
    partLoad(plan, loads, findings);
    surplus(plan, loads, findings);
    MeasuringFindings.add(plan, loads, findings);
    if (plan.tank().deadVolume().isEmpty()) {
      findings.add(
          new DoseFinding(
              Severity.NOTE,
              "dead volume",
              "The dead volume of the "
                  + plan.tank().kind().words()
                  + " is not recorded, so the last "
                  + plan.tank().kind().load()
                  + " comes out short by what stays in tank, pump and hoses."));
    }
    findings.sort(Comparator.comparing(DoseFinding::severity).reversed());
    return List.copyOf(findings);
  }

  private static void label(TankPartner partner, TankMixPlan plan, List<DoseFinding> findings) {
    var ground = new TreatedGround(plan);
    findings.addAll(ground.remarks(partner));
    if (partner.label().isEmpty()) {
      findings.add(
          new DoseFinding(
              Severity.WARNING,
              partner.product() + ": limits of the label",
              "Not recorded. That does not mean that there is no limit: look the maximum dose, the"
                  + " number of applications, the intervals and the buffers up on the label."));
      return;
    }
    var label = partner.label().get();
    var use = label.planned(ground.dose(partner), ground.spray());
    var found = new LinkedHashSet<>(LimitCheck.check(label.limits(), use).findings());
    if (partner.rate() instanceof ProductPerSprayVolume rate) {
      var dose =
          new PerLitreDose(rate, label.assumed(), ground.spray(), label.crop(), label.limits());
      found.addAll(dose.evaluate().findings());
    }
    ground.spray().finding().ifPresent(found::remove);
    var named = new LinkedHashSet<DoseFinding>();
    found.forEach(finding -> named.add(ground.named(finding)));
    findings.addAll(joined(partner.product(), named));
  }

  /** Findings of one product with the same sentence become one that names all the rules. */
  private static List<DoseFinding> joined(String product, Set<DoseFinding> found) {
    record Said(Severity severity, String sentence) {}
    var rules = new LinkedHashMap<Said, String>();
    for (var finding : found) {
      rules.merge(
          new Said(finding.severity(), finding.sentence()),
          finding.rule(),
          (first, second) -> first + ", " + second);
    }
    var joined = new ArrayList<DoseFinding>();
    rules.forEach(
        (said, rule) ->
            joined.add(new DoseFinding(said.severity(), product + ": " + rule, said.sentence())));
    return joined;
  }

  private static void partners(TankMixPlan plan, List<DoseFinding> findings) {
    var partners = plan.partners();
    if (partners.size() > FEW_PARTNERS) {
      findings.add(
          new DoseFinding(
              Severity.WARNING,
              "number of partners",
              partners.size()
                  + " partners in one tank. Mix no more than a few; nobody has tested this mix."));
    }
    if (partners.size() < 2) {
      return;
    }
    for (var partner : partners) {
      if (partner.mixClass().isEmpty()) {
        findings.add(
            new DoseFinding(
                Severity.WARNING,
                partner.product() + ": order of mixing",
                "The formulation is not stated, so its place in the order of mixing is not known."
                    + " Take the code behind the name on the label, such as EC or WG."));
      }
    }
  }

  private static void shares(TankLoad load, List<DoseFinding> findings) {
    double share = 1 - load.water().low().ratioTo(load.made());
    if (share > MUCH_PRODUCT) {
      findings.add(
          new DoseFinding(
              Severity.WARNING,
              "share of product",
              VesselRefusals.percent(share)
                  + " of the spray is product. Look at the decimal point of the rates and at the"
                  + " units."));
    }
  }

  private static void partLoad(TankMixPlan plan, List<TankLoad> loads, List<DoseFinding> findings) {
    var last = loads.get(loads.size() - 1);
    if (last.kind() != TankLoad.LoadKind.PART) {
      return;
    }
    double factor = plan.tank().capacity().ratioTo(last.made());
    findings.add(
        new DoseFinding(
            Severity.NOTE,
            "part " + plan.tank().kind().load(),
            "Number "
                + last.numbers()
                + " is a part "
                + plan.tank().kind().load()
                + " of "
                + plan.style().print(last.made())
                + ". The product for a full tank in it would be "
                + Numbers.significant(factor, 3)
                + " times the dose."));
  }

  private static void surplus(TankMixPlan plan, List<TankLoad> loads, List<DoseFinding> findings) {
    if (plan.lastLoad() != LastLoad.FULL_LOAD) {
      return;
    }
    var surplus = plan.tank().usable().minus(loads.get(loads.size() - 1).sprayed());
    if (surplus.litres() > 0) {
      findings.add(
          new DoseFinding(
              Severity.WARNING,
              "surplus",
              plan.style().print(surplus)
                  + " of spray is made up that the field does not need. It must not be poured out;"
                  + " a second pass on sprayed ground gives the dose twice. Make a part load"
                  + " instead."));
    }
  }
}
