package agro.dose.tank;

import agro.dose.PumpsPerArea;
import agro.dose.SprayVolume;
import agro.report.InputProblem;
import agro.units.WorkTime;
import java.util.Objects;

/**
 * A job with a knapsack; {@link #evaluate()} works out pumps and hours.
 *
 * @param field the field
 * @param pumps pumps per area
 * @param perPump time for one pump with filling and walking, above zero
 */
public record KnapsackJobPlan(SprayedField field, PumpsPerArea pumps, WorkTime perPump) {

  /** Refuses work that takes no time. */
  public KnapsackJobPlan {
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(pumps, "pumps");
    if (!(perPump.seconds() > 0)) {
      throw InputProblem.of(perPump + " for a pump")
          .expected("a time above zero")
          .because("the hours of the job are the pumps times this time")
          .mend("take the time from one filling to the next, walking and mixing included");
    }
  }

  /**
   * A job whose pumps follow from spray volume and knapsack, counted per unit of land of the field.
   *
   * @param field the field
   * @param spray spray volume
   * @param tank the knapsack
   * @param perPump time for one pump with filling and walking, above zero
   * @return the plan
   */
  public static KnapsackJobPlan of(
      SprayedField field, SprayVolume spray, SprayTank tank, WorkTime perPump) {
    return new KnapsackJobPlan(
        field, PumpsPerArea.from(spray, tank.usable(), field.land()), perPump);
  }

  /**
   * Works out pumps and hours.
   *
   * @return the job
   */
  public KnapsackJob evaluate() {
    double number = pumps.on(field.area());
    double nearest = Math.rint(number);
    boolean exact = nearest > 0 && Math.abs(number - nearest) <= LoadArithmetic.ROUNDING;
    double fillings = exact ? nearest : Math.ceil(number);
    return new KnapsackJob(this, number, (long) fillings, perPump.times(number));
  }
}
