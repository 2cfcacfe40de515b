package agro.dose.tank;

import agro.report.InputProblem;
import agro.units.Volume;
import java.util.Objects;
import java.util.Optional;

/**
 * The tank of a sprayer.
 *
 * @param kind knapsack or tank of a larger sprayer
 * @param capacity volume up to the highest mark, above zero
 * @param deadVolume what the sprayer cannot spray out and stays in tank, pump and hoses; nothing
 *     where it has not been measured, which is not the same as zero
 */
public record SprayTank(TankKind kind, Volume capacity, Optional<Volume> deadVolume) {

  /** Refuses a tank that holds nothing or sprays out nothing. */
  public SprayTank {
    Objects.requireNonNull(kind, "kind");
    if (!(capacity.litres() > 0)) {
      throw InputProblem.of("a " + kind.words() + " of " + capacity)
          .expected("a capacity above zero")
          .because("the number of fillings is the spray divided by what one filling brings out")
          .mend("read the volume at the highest mark of the tank");
    }
    if (deadVolume.isPresent() && deadVolume.get().compareTo(capacity) >= 0) {
      throw InputProblem.of(
              "a dead volume of " + deadVolume.get() + " in a " + kind.words() + " of " + capacity)
          .expected("a dead volume below the capacity")
          .because("a sprayer that keeps back all that it holds sprays nothing")
          .mend(
              "measure the dead volume: spray water until the jet breaks and catch what can be"
                  + " drained then");
    }
  }

  /**
   * A knapsack whose dead volume is not recorded.
   *
   * @param capacity volume up to the highest mark
   * @return the tank
   */
  public static SprayTank knapsack(Volume capacity) {
    return new SprayTank(TankKind.KNAPSACK, capacity, Optional.empty());
  }

  /**
   * The tank of a larger sprayer whose dead volume is not recorded.
   *
   * @param capacity volume up to the highest mark
   * @return the tank
   */
  public static SprayTank mounted(Volume capacity) {
    return new SprayTank(TankKind.MOUNTED, capacity, Optional.empty());
  }

  /**
   * The same tank with a measured dead volume.
   *
   * @param volume what stays in the sprayer; zero only if that was measured
   * @return the tank
   */
  public SprayTank withDeadVolume(Volume volume) {
    return new SprayTank(kind, capacity, Optional.of(volume));
  }

  /**
   * What one full tank brings out: capacity less dead volume, where that is known.
   *
   * @return a volume above zero
   */
  public Volume usable() {
    return deadVolume.map(capacity::minus).orElse(capacity);
  }

  /**
   * The dead volume that is counted.
   *
   * @return the recorded one, or zero
   */
  Volume counted() {
    return deadVolume.orElse(new Volume(0));
  }

  @Override
  public String toString() {
    return kind.words() + " of " + capacity;
  }
}
