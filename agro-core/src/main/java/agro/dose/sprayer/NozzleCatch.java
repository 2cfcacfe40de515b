package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.Volume;
import java.util.ArrayList;
import java.util.List;

/**
 * What was caught under one nozzle, once or several times, each time for the same number of
 * seconds.
 *
 * @param nozzle name or number of the nozzle
 * @param volumes the catches; one of 0 says that the nozzle is blocked
 */
public record NozzleCatch(String nozzle, List<Volume> volumes) {

  /** Refuses a nozzle without name or catch. */
  public NozzleCatch {
    nozzle = SprayerChecks.named(nozzle, "nozzle");
    volumes = List.copyOf(volumes);
    if (volumes.isEmpty()) {
      throw InputProblem.of("nozzle " + nozzle + " has no catch")
          .expected("one catch or more; 0 for a nozzle that gave nothing")
          .because("a nozzle that was not caught is not the same as a blocked one")
          .mend("catch it for the same time as the others, or leave the nozzle out");
    }
  }

  /**
   * The catches of one nozzle.
   *
   * @param nozzle name or number of the nozzle
   * @param first first catch
   * @param others further catches
   * @return the record
   */
  public static NozzleCatch of(String nozzle, Volume first, Volume... others) {
    var all = new ArrayList<Volume>();
    all.add(first);
    all.addAll(List.of(others));
    return new NozzleCatch(nozzle, all);
  }

  /** Mean of the catches. */
  Volume mean() {
    Volume sum = volumes.get(0);
    for (var volume : volumes.subList(1, volumes.size())) {
      sum = sum.plus(volume);
    }
    return sum.dividedBy(volumes.size());
  }

  /** Sum of the squared deviations from the mean, in square litres. */
  double squares() {
    double mean = mean().litres();
    double sum = 0;
    for (var volume : volumes) {
      sum += (volume.litres() - mean) * (volume.litres() - mean);
    }
    return sum;
  }
}
