package agro.development.cycle;

import agro.development.DegreeDayMethod;
import agro.development.DegreeDayModel;
import agro.development.ThermalRequirement;
import agro.development.UpperCutoff;
import agro.units.ThermalTime;
import agro.weather.DailyTemperatures;
import agro.weather.MediumKind;
import java.util.Objects;

/**
 * Degree-days over a requirement.
 *
 * @param model rule for the degree-days of a day
 * @param requirement thermal time that makes age 1
 * @param medium whether the thresholds are of air or of soil
 */
public record DegreeDayClock(DegreeDayModel model, ThermalTime requirement, MediumKind medium)
    implements DevelopmentClock {

  /**
   * Checks the requirement.
   *
   * @throws agro.report.InputProblem when it is not above zero
   */
  public DegreeDayClock {
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(medium, "medium");
    DistributionInput.requirePositive(requirement.degreeDaysC(), "thermal requirement");
  }

  /**
   * The clock of a published requirement, by the single sine without upper cutoff.
   *
   * @param requirement threshold and requirement of a stage
   * @return the clock
   */
  public static DegreeDayClock of(ThermalRequirement requirement) {
    return new DegreeDayClock(
        requirement.model(DegreeDayMethod.SINGLE_SINE, UpperCutoff.NONE),
        requirement.requirement(),
        requirement.medium());
  }

  /**
   * A clock that counts degree-days themselves, for distributions over degree-days.
   *
   * @param model rule for the degree-days of a day
   * @return a clock whose age is in °C·d, of air
   */
  public static DegreeDayClock ofDegreeDays(DegreeDayModel model) {
    return new DegreeDayClock(model, new ThermalTime(1), MediumKind.AIR);
  }

  @Override
  public double[] dailyAges(DailyTemperatures temperatures) {
    temperatures.medium().require(medium, "the clock of this stage");
    DevelopmentClock.requireWhole(temperatures);
    var ages = model.degreeDaysC(temperatures.minimaCelsius(), temperatures.maximaCelsius());
    for (int i = 0; i < ages.length; i++) {
      ages[i] /= requirement.degreeDaysC();
    }
    return ages;
  }

  @Override
  public String words() {
    return requirement.degreeDaysC() == 1 ? "degree-days, " + model : requirement + " by " + model;
  }
}
