package agro.dose.tank;

import agro.dose.DoseSources;
import agro.dose.ProductPerSprayVolume;
import agro.dose.ProductPerTreatedArea;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.working.Caution;
import agro.working.Working;
import java.util.stream.Collectors;

/** The steps of a tank mix as on a blackboard. */
final class TankMixWorking {

  private final TankMix mix;
  private final TankMixPlan plan;
  private final QuantityStyle style;

  private TankMixWorking(TankMix mix) {
    this.mix = mix;
    this.plan = mix.plan();
    this.style = TankTables.style(mix);
  }

  static Working of(TankMix mix) {
    return new TankMixWorking(mix).steps();
  }

  private Working steps() {
    var working = loads(Working.of("Loads and amounts for " + plan.field().name()));
    for (var partner : plan.partners()) {
      working = amounts(working, partner);
    }
    working = water(working);
    working = leftover(working);
    for (var purchase : mix.purchases()) {
      working = working.followedBy(purchase.working(plan.style()));
    }
    return working.withCautions(Caution.all());
  }

  private Working loads(Working start) {
    var spray = plan.spray().print(style);
    var working =
        start.step(
            "Spray for the field",
            "spray = area × spray volume",
            style.print(plan.field().area()) + " × " + spray,
            print(mix.sprayed()),
            TankSources.LOADS);
    if (plan.tank().deadVolume().isPresent()) {
      working =
          working.step(
              "What a full tank brings out",
              "usable = capacity − dead volume",
              print(plan.tank().capacity()) + " − " + print(plan.tank().counted()),
              print(plan.tank().usable()),
              TankSources.LOADS);
    }
    return working
        .step(
            "Area of a full tank",
            "area = usable ÷ spray volume",
            print(plan.tank().usable()) + " ÷ " + spray,
            style.print(mix.areaPerFullLoad()),
            TankSources.LOADS)
        .step(
            "Number of " + plan.tank().kind().loads(),
            "number = spray ÷ usable",
            print(mix.sprayed()) + " ÷ " + print(plan.tank().usable()),
            loadWords(),
            TankSources.LOADS)
        .step(
            "Refills",
            "refills = " + plan.tank().kind().loads() + " − 1",
            mix.numberOfLoads() + " − 1",
            String.valueOf(mix.refills()));
  }

  private String loadWords() {
    double number = mix.sprayed().ratioTo(plan.tank().usable());
    var kinds =
        mix.loads().stream()
            .map(l -> l.count() + " " + l.kind().words() + " of " + print(l.made()))
            .collect(Collectors.joining(" and "));
    return Numbers.significant(number, 4) + ", that is " + kinds;
  }

  private Working amounts(Working start, TankPartner partner) {
    var working = onBands(start, partner);
    var counted = plan.overField(partner);
    boolean perVolume = partner.rate() instanceof ProductPerSprayVolume;
    for (var each : mix.loads()) {
      var carrier = perVolume ? print(each.made()) : style.print(plan.spray().areaOf(each.made()));
      working =
          working.step(
              partner.product() + " in " + which(each),
              perVolume ? "amount = rate × spray in the tank" : "amount = rate × area of the spray",
              rate(counted) + " × " + carrier,
              each.amountOf(partner.product()).print(style),
              DoseSources.DOSE_AND_VOLUME);
    }
    var sum =
        mix.loads().stream()
            .map(l -> l.count() + " × " + bracketed(l.amountOf(partner.product()).print(style)))
            .collect(Collectors.joining(" + "));
    var whole = counted.in(mix.made(), plan.spray()).print(style);
    return working
        .step(
            partner.product() + " in all",
            "total = sum over all " + plan.tank().kind().loads(),
            sum,
            sum(partner))
        .step(
            "Check of the sum",
            perVolume ? "rate × all spray made up" : "rate × area of all spray made up",
            rate(counted)
                + " × "
                + (perVolume ? print(mix.made()) : style.print(plan.spray().areaOf(mix.made()))),
            whole + (whole.equals(sum(partner)) ? ", the same" : ", not the same"));
  }

  private Working onBands(Working start, TankPartner partner) {
    if (!(partner.rate() instanceof ProductPerTreatedArea)) {
      return start;
    }
    var ground = new TreatedGround(plan);
    return start.step(
        partner.product() + " per area of field",
        "rate per treated area × treated share",
        partner.rate() + " × " + Numbers.significant(ground.share(), 6),
        rate(plan.overField(partner)));
  }

  /** A rate as the label writes it, or as it was computed. */
  private String rate(TankPartner counted) {
    return plan.partners().contains(counted)
        ? counted.rate().toString()
        : counted.rate().print(style);
  }

  private String which(TankLoad each) {
    return each.count() == 1
        ? plan.tank().kind().load() + " " + each.numbers()
        : "each of the " + plan.tank().kind().loads() + " " + each.numbers();
  }

  private String sum(TankPartner partner) {
    return mix.totalOf(partner.product()).print(style);
  }

  private static String bracketed(String range) {
    return range.contains(" to ") ? "(" + range + ")" : range;
  }

  private Working water(Working working) {
    return working.step(
        "Water in all",
        "water = spray made up − liquid products",
        "",
        TankTables.range(mix.water(), style),
        TankSources.LOADS);
  }

  private Working leftover(Working working) {
    var left = mix.leftover();
    if (!(left.volume().litres() > 0)) {
      return working;
    }
    var holds =
        left.holds().stream()
            .map(p -> p.amount().print(style) + " " + p.product())
            .collect(Collectors.joining(", "));
    return working.step(
        "Left over",
        "left = spray made up − spray for the field",
        print(mix.made()) + " − " + print(mix.sprayed()),
        print(left.volume()) + ", which holds " + holds,
        TankSources.LOADS);
  }

  private String print(Volume volume) {
    return style.print(volume);
  }
}
