package agro.trial.load;

import agro.sampling.injury.InsectDays;
import agro.working.Working;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * The load of one plot.
 *
 * @param plot name of the plot
 * @param block its block
 * @param treatment its treatment
 * @param insectDays counts and curve
 * @param value the load by the chosen measure
 * @param bridged days that were missing and bridged
 */
public record PlotLoad(
    String plot,
    String block,
    String treatment,
    InsectDays insectDays,
    double value,
    List<LocalDate> bridged) {

  /** Copies the list. */
  public PlotLoad {
    Objects.requireNonNull(plot, "plot");
    Objects.requireNonNull(block, "block");
    Objects.requireNonNull(treatment, "treatment");
    Objects.requireNonNull(insectDays, "insectDays");
    bridged = List.copyOf(bridged);
  }

  /**
   * The steps from count to count.
   *
   * @return the steps of the area
   */
  public Working working() {
    return insectDays.working();
  }
}
