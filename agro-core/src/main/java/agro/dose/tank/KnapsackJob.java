package agro.dose.tank;

import agro.dose.ProductPerArea;
import agro.units.Area;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.units.WorkTime;
import agro.units.WorkTimeUnit;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Objects;

/**
 * Pumps and hours of a job with a knapsack.
 *
 * @param plan what was asked
 * @param pumps pumps for the field, not rounded
 * @param fillings how often the knapsack is filled
 * @param time time for the field; a part of a pump takes its part of the time
 */
public record KnapsackJob(KnapsackJobPlan plan, double pumps, long fillings, WorkTime time)
    implements Presentable {

  /** Refuses nulls. */
  public KnapsackJob {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(time, "time");
  }

  /**
   * The hours of the job.
   *
   * @return hours, not rounded
   */
  public double hours() {
    return time.in(WorkTimeUnit.HOUR);
  }

  /**
   * The steps with their units.
   *
   * @return the steps, with the cautions
   */
  public Working working() {
    var land = QuantityStyle.METRIC.per(plan.field().land());
    var number = Numbers.significant(pumps, 4);
    return Working.of("Pumps and hours for " + plan.field().name())
        .step(
            "Area of one pump",
            "area = land ÷ pumps",
            land.print(new Area(plan.pumps().per().inBaseUnit()))
                + " ÷ "
                + Numbers.significant(plan.pumps().number(), 4),
            land.print(plan.pumps().areaPerPump()))
        .step(
            "Pumps for the field",
            "pumps = area × pumps per area",
            land.print(plan.field().area()) + " × " + plan.pumps(),
            number + ", filled " + fillings + (fillings == 1 ? " time" : " times"),
            TankSources.LOADS)
        .step(
            "Hours",
            "hours = pumps × minutes per pump ÷ 60",
            number
                + " × "
                + Numbers.significant(plan.perPump().in(WorkTimeUnit.MINUTE), 4)
                + " min ÷ 60",
            Numbers.significant(hours(), 3) + " h",
            TankSources.LOADS)
        .withCautions(Caution.all());
  }

  /**
   * The dose per pump with its step.
   *
   * @param product name of the product
   * @param dose product per area
   * @return the steps, with the cautions
   */
  public Working dosePerPump(String product, ProductPerArea dose) {
    var land = QuantityStyle.METRIC.per(plan.field().land());
    return Working.of(product + " in each pump")
        .step(
            "Dose per pump",
            "amount = dose × area of one pump",
            dose + " × " + land.print(plan.pumps().areaPerPump()),
            plan.pumps().dosePerPump(dose).print(QuantityStyle.METRIC),
            TankSources.COCOA_MANUAL)
        .withCautions(Caution.all());
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Work with the knapsack on " + plan.field().name())
        .fact("Field", plan.field().printArea(QuantityStyle.METRIC))
        .fact("Pumps", plan.pumps().toString())
        .fact("Pumps for the field", Numbers.significant(pumps, 4))
        .fact("Fillings", String.valueOf(fillings))
        .fact("Hours", Numbers.significant(hours(), 3) + " h")
        .working(working())
        .build();
  }
}
