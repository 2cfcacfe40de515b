package agro.dose.tank;

import agro.dose.ProductAmount;
import agro.dose.tank.TankLoad.LoadKind;
import agro.report.InputProblem;
import agro.units.QuantityRange;
import agro.units.Volume;
import java.util.ArrayList;
import java.util.List;

/** Divides the spray for a field into loads. */
final class LoadArithmetic {

  /**
   * A part load below this share of a full one is rounding of binary fractions. It stands for less
   * than a drop in any tank.
   */
  static final double ROUNDING = 1e-9;

  /** More loads than this come from a slip of a unit. */
  private static final int MOST_LOADS = 100_000;

  private LoadArithmetic() {}

  /** Numbers of full loads and the share of a full one that is still needed, from 0 to below 1. */
  record Division(int full, double rest) {
    int loads() {
      return rest > 0 ? full + 1 : full;
    }
  }

  static Division divide(Volume spray, Volume usable) {
    double loads = spray.litres() / usable.litres();
    if (!(loads <= MOST_LOADS)) {
      throw InputProblem.of(spray + " of spray from a tank that brings out " + usable)
          .expected("at most " + MOST_LOADS + " loads")
          .because("a job of more loads comes from a wrong unit of area or volume")
          .mend("look at the units of the field, of the spray volume and of the tank");
    }
    double nearest = Math.rint(loads);
    boolean exact = nearest > 0 && Math.abs(loads - nearest) <= ROUNDING;
    double full = exact ? nearest : Math.floor(loads);
    return new Division((int) full, exact ? 0 : loads - full);
  }

  static List<TankLoad> loads(TankMixPlan plan) {
    var spray = plan.spray().on(plan.field().area());
    var tank = plan.tank();
    var usable = tank.usable();
    var division = divide(spray, usable);
    var loads = new ArrayList<TankLoad>();
    if (plan.lastLoad() == LastLoad.EQUAL_LOADS) {
      equal(plan, spray, division.loads(), loads);
      return List.copyOf(loads);
    }
    boolean fillLast = plan.lastLoad() == LastLoad.FULL_LOAD && division.rest() > 0;
    full(plan, division.full(), loads);
    if (division.rest() > 0) {
      var rest = division.full() == 0 ? spray : usable.times(division.rest());
      var kind = !fillLast ? LoadKind.PART : loads.isEmpty() ? LoadKind.FULL : LoadKind.REFILL;
      var made = fillLast ? usable : rest;
      boolean first = loads.isEmpty();
      int number = division.full() + 1;
      loads.add(load(plan, kind, number, 1, first ? made.plus(tank.counted()) : made, rest));
    }
    return List.copyOf(loads);
  }

  /** The first full load fills the dead volume too; later ones are filled up on top of it. */
  private static void full(TankMixPlan plan, int full, List<TankLoad> loads) {
    var tank = plan.tank();
    var usable = tank.usable();
    if (full == 0) {
      return;
    }
    boolean alike = !(tank.counted().litres() > 0);
    int first = alike ? full : 1;
    loads.add(load(plan, LoadKind.FULL, 1, first, tank.capacity(), usable));
    if (full > first) {
      loads.add(load(plan, LoadKind.REFILL, 2, full - 1, usable, usable));
    }
  }

  private static void equal(TankMixPlan plan, Volume spray, int count, List<TankLoad> loads) {
    var dead = plan.tank().counted();
    var share = spray.dividedBy(count);
    boolean alike = !(dead.litres() > 0);
    int first = alike ? count : 1;
    loads.add(load(plan, LoadKind.EQUAL, 1, first, share.plus(dead), share));
    if (count > first) {
      loads.add(load(plan, LoadKind.EQUAL, 2, count - 1, share, share));
    }
  }

  private static TankLoad load(
      TankMixPlan plan, LoadKind kind, int first, int count, Volume made, Volume sprayed) {
    var amounts = amounts(plan, made);
    var water = water(plan, made, amounts);
    return new TankLoad(
        kind, first, count, made, sprayed, plan.spray().areaOf(sprayed), amounts, water);
  }

  static List<PartnerAmount> amounts(TankMixPlan plan, Volume spray) {
    return plan.partners().stream()
        .map(p -> new PartnerAmount(p.product(), plan.overField(p).in(spray, plan.spray())))
        .toList();
  }

  /** Most product leaves least water, so the ends change sides. */
  private static QuantityRange<Volume> water(
      TankMixPlan plan, Volume made, List<PartnerAmount> amounts) {
    double low = 0;
    double high = 0;
    for (var partner : amounts) {
      if (partner.amount() instanceof ProductAmount.Liquid liquid) {
        low += liquid.lowNumber();
        high += liquid.highNumber();
        if (high > made.litres()) {
          throw TankRefusals.mixOf(partner.product(), liquid, made + " in " + plan.tank());
        }
      }
    }
    return new QuantityRange<>(new Volume(made.litres() - high), new Volume(made.litres() - low));
  }

  /** The sum over all loads of what goes into each. */
  static List<PartnerAmount> totals(List<TankLoad> loads, List<TankPartner> partners) {
    var totals = new ArrayList<PartnerAmount>();
    for (int i = 0; i < partners.size(); i++) {
      int place = i;
      var sum =
          loads.stream()
              .map(load -> load.amounts().get(place).amount().times(load.count()))
              .reduce(ProductAmount::plus)
              .orElseThrow();
      totals.add(new PartnerAmount(partners.get(i).product(), sum));
    }
    return List.copyOf(totals);
  }

  /**
   * How far the sum over all loads is from rate times all spray made up, and the spray of all loads
   * from that of the field; the largest share.
   */
  static double departureOfSums(TankMix mix) {
    double worst = Math.abs(sprayed(mix.loads()).ratioTo(mix.sprayed()) - 1);
    for (int i = 0; i < mix.totals().size(); i++) {
      var sum = mix.totals().get(i).amount();
      var plan = mix.plan();
      var whole = plan.overField(plan.partners().get(i)).in(mix.made(), plan.spray());
      worst = Math.max(worst, Math.abs(sum.highNumber() / whole.highNumber() - 1));
      if (whole.lowNumber() > 0) {
        worst = Math.max(worst, Math.abs(sum.lowNumber() / whole.lowNumber() - 1));
      }
    }
    return worst;
  }

  private static Volume sprayed(List<TankLoad> loads) {
    return loads.stream()
        .map(load -> load.sprayed().times(load.count()))
        .reduce(Volume::plus)
        .orElseThrow();
  }

  static Volume made(List<TankLoad> loads) {
    return loads.stream()
        .map(load -> load.made().times(load.count()))
        .reduce(Volume::plus)
        .orElseThrow();
  }

  static QuantityRange<Volume> water(List<TankLoad> loads) {
    return loads.stream()
        .map(load -> load.water().times(load.count()))
        .reduce(QuantityRange::plus)
        .orElseThrow();
  }
}
