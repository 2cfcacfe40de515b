package agro.dose.tank;

import agro.dose.DoseFinding;
import agro.dose.ProductAmount;
import agro.dose.SprayVolume;
import agro.report.InputProblem;
import agro.units.Area;
import agro.units.QuantityRange;
import agro.units.Volume;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.Working;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A tank mix worked out: loads, amounts, water, leftover, order of mixing, packs, and what the
 * limits of the labels say. Everything is unrounded; print rounds.
 *
 * @param plan what was asked
 * @param sprayed spray that the field gets
 * @param made spray that is made up in all loads: the field's, the dead volume, and any surplus
 * @param loads loads that are filled alike, in the order of the work
 * @param totals product in all loads together, in the order of the partners
 * @param water water in all loads together
 * @param leftover what is left after the field
 * @param sequence order of mixing
 * @param purchases packs to buy, for the low and the high end of a range
 * @param findings limits of the labels and other things to look at, the gravest first
 */
public record TankMix(
    TankMixPlan plan,
    Volume sprayed,
    Volume made,
    List<TankLoad> loads,
    List<PartnerAmount> totals,
    QuantityRange<Volume> water,
    Leftover leftover,
    MixingSequence sequence,
    List<Purchase> purchases,
    List<DoseFinding> findings)
    implements Presentable {

  /** Copies the lists. */
  public TankMix {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(leftover, "leftover");
    Objects.requireNonNull(sequence, "sequence");
    loads = List.copyOf(loads);
    totals = List.copyOf(totals);
    purchases = List.copyOf(purchases);
    findings = List.copyOf(findings);
  }

  static TankMix of(TankMixPlan plan) {
    var loads = LoadArithmetic.loads(plan);
    var sprayed = plan.spray().on(plan.field().area());
    var made = LoadArithmetic.made(loads);
    var totals = LoadArithmetic.totals(loads, plan.partners());
    var mix =
        new TankMix(
            plan,
            sprayed,
            made,
            loads,
            totals,
            LoadArithmetic.water(loads),
            leftover(plan, loads),
            MixingPlaces.sequence(plan.partners(), plan.order()),
            TankPurchases.of(plan.partners(), totals),
            TankFindings.of(plan, loads));
    if (!(mix.departureOfSums() <= LoadArithmetic.ROUNDING)) {
      throw new IllegalStateException(
          "the loads do not add up to the whole; they differ by a share of "
              + mix.departureOfSums());
    }
    return mix;
  }

  /**
   * The check that the loads add up: the largest share by which the sum over all loads departs from
   * the rate times all spray made up, over all products, and from the spray of the field.
   *
   * @return 0 but for rounding; a mix that departs by more than a billionth is never returned
   */
  public double departureOfSums() {
    return LoadArithmetic.departureOfSums(this);
  }

  private static Leftover leftover(TankMixPlan plan, List<TankLoad> loads) {
    var dead = plan.tank().counted();
    var last = loads.get(loads.size() - 1);
    boolean filled = plan.lastLoad() == LastLoad.FULL_LOAD;
    var extra = filled ? plan.tank().usable().minus(last.sprayed()) : new Volume(0);
    var left = dead.plus(extra);
    return new Leftover(dead, extra, LoadArithmetic.amounts(plan, left), plan.spray().areaOf(left));
  }

  /**
   * How many loads are filled.
   *
   * @return one or more
   */
  public int numberOfLoads() {
    return loads.get(loads.size() - 1).last();
  }

  /**
   * How often the sprayer is filled again after the first time.
   *
   * @return the loads less one
   */
  public int refills() {
    return numberOfLoads() - 1;
  }

  /**
   * The area that one full tank covers.
   *
   * @return what the tank brings out divided by the spray volume
   */
  public Area areaPerFullLoad() {
    return plan.spray().areaOf(plan.tank().usable());
  }

  /**
   * The amounts for a full tank, whether or not the field takes one.
   *
   * @return product in the capacity of the tank, in the order of the partners
   */
  public List<PartnerAmount> fullTank() {
    return LoadArithmetic.amounts(plan, plan.tank().capacity());
  }

  /**
   * The amounts in any volume of this spray, for a jar test or for one nozzle's tank.
   *
   * @param spray finished spray
   * @return product in it, in the order of the partners
   */
  public List<PartnerAmount> in(Volume spray) {
    return LoadArithmetic.amounts(plan, spray);
  }

  /**
   * The part load.
   *
   * @return the load; empty where all loads are full or equal
   */
  public Optional<TankLoad> partLoad() {
    return loads.stream().filter(load -> load.kind() == TankLoad.LoadKind.PART).findFirst();
  }

  /**
   * The amount of a product in all loads together.
   *
   * @param product name of the product
   * @return low and high amount
   * @throws java.util.NoSuchElementException if the mix has no such product
   */
  public ProductAmount totalOf(String product) {
    return totals.stream()
        .filter(total -> total.product().equals(product))
        .findFirst()
        .orElseThrow()
        .amount();
  }

  /**
   * How many times too strong the spray becomes, and how many times too high the dose, where the
   * product for a full tank goes into less spray.
   *
   * @param spray spray that is really made up, above zero and at most the capacity
   * @return capacity divided by that volume
   * @throws InputProblem if the tank cannot hold the volume, or if it is zero
   */
  public double strengthOfFullDoseIn(Volume spray) {
    var capacity = plan.tank().capacity();
    if (!(spray.litres() > 0) || spray.compareTo(capacity) > 0) {
      throw InputProblem.of(spray + " of spray in a tank of " + capacity)
          .expected("a volume above zero that the tank can hold")
          .because("the strength is the product divided by the spray")
          .mend("read the volume at the mark of the tank");
    }
    return capacity.ratioTo(spray);
  }

  /**
   * What the spray that is left after the field says: how much the field really got.
   *
   * @param left spray that is found in the sprayer, with what stays in pump and hoses
   * @return the spray volume that was reached and its departure from the plan
   * @throws InputProblem if as much is left as was made up, or more
   */
  public LeftoverCheck check(Volume left) {
    if (left.compareTo(made) >= 0) {
      throw InputProblem.of(left + " of spray left of " + made + " made up")
          .expected("less left than was made up")
          .because("otherwise nothing was sprayed")
          .mend("read the mark again; count only spray of this mix");
    }
    var out = made.minus(left);
    var reached = new SprayVolume(out.dividedBy(plan.field().area()));
    double departure = reached.perArea().ratioTo(plan.spray().perArea()) - 1;
    return new LeftoverCheck(
        this,
        left,
        LoadArithmetic.amounts(plan, left),
        reached,
        Math.abs(departure) < LoadArithmetic.ROUNDING ? 0 : departure);
  }

  /**
   * The table that goes to the tank: for each load what is made up, the area it covers, and what is
   * measured into it.
   *
   * @return one row a kind of load, the total last
   */
  public ResultTable loadTable() {
    return TankTables.loads(this);
  }

  /**
   * The steps of the calculation with their units.
   *
   * @return the steps, with the cautions
   */
  public Working working() {
    return TankMixWorking.of(this);
  }

  @Override
  public Presentation presentation() {
    return TankTables.page(this);
  }
}
