package agro.dose.tank;

import agro.report.InputProblem;
import java.util.List;
import java.util.Optional;

/**
 * One step of an order of mixing.
 *
 * @param words what is done, in the words of this library
 * @param classes what is put in at this step, in the order of the source; empty for water and
 *     agitation
 * @param fillTo share of the load to which the tank is filled before; nothing where the source says
 *     nothing
 */
public record MixingStep(String words, List<MixClass> classes, Optional<WaterShare> fillTo) {

  /**
   * How full the tank is made, as a share of the load.
   *
   * @param low low end, above 0
   * @param high high end, at most 1
   */
  public record WaterShare(double low, double high) {
    /** Refuses shares that no tank has. */
    public WaterShare {
      if (!(low > 0 && low <= high && high <= 1)) {
        throw InputProblem.of("a tank filled from " + low + " to " + high + " of the load")
            .expected("shares above 0 and at most 1, low before high")
            .because("the water that is in the tank first is counted from them")
            .mend("write a half as 0.5");
      }
    }
  }

  /** Copies the list and refuses a step without words. */
  public MixingStep {
    classes = List.copyOf(classes);
    if (words.isBlank()) {
      throw InputProblem.of("a step of mixing without words")
          .expected("what is done at this step")
          .because("the person at the tank reads it")
          .mend("say in a few words what is put in or done");
    }
  }
}
