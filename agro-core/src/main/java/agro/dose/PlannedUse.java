package agro.dose;

import agro.report.InputProblem;
import agro.units.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * An application as it is planned, with as much as is stated about it. What is not stated cannot be
 * checked, and the check says so.
 *
 * @param dose dose per ground area, a range where the label states one
 * @param strength strength of the product, needed where plan and limit differ in product and active
 *     ingredient
 * @param spray spray volume
 * @param day day of the application
 * @param harvest first day of harvest
 * @param earlier applications before this one
 * @param circumstances conditions of the label that are known to hold (true) or not to hold (false)
 * @param distances distance kept to what a buffer protects
 */
public record PlannedUse(
    DosePerArea dose,
    Optional<Strength> strength,
    Optional<SprayVolume> spray,
    Optional<LocalDate> day,
    Optional<LocalDate> harvest,
    List<PastUse> earlier,
    Map<UseCondition, Boolean> circumstances,
    Map<String, Length> distances) {

  /** Copies lists and maps and refuses days out of order. */
  public PlannedUse {
    Objects.requireNonNull(dose, "dose");
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(spray, "spray");
    earlier = List.copyOf(earlier);
    circumstances = Map.copyOf(circumstances);
    distances = Map.copyOf(distances);
    if (day.isPresent() && harvest.isPresent() && harvest.get().isBefore(day.get())) {
      throw InputProblem.of("harvest on " + harvest.get() + " before spraying on " + day.get())
          .expected("a first day of harvest on or after the day of the application")
          .because("the pre-harvest interval runs from application to harvest")
          .mend("look at year and month of both days");
    }
    for (var use : earlier) {
      if (day.isPresent() && use.day().isAfter(day.get())) {
        throw InputProblem.of(
                "an earlier application on " + use.day() + " after the planned one on " + day.get())
            .expected("applications before the planned one")
            .because("number and interval are counted from those that were made before")
            .mend("look at the days, or plan the applications one after the other");
      }
    }
  }

  /**
   * A plan of which only the dose is stated.
   *
   * @param dose dose per ground area
   * @return the plan
   */
  public static PlannedUse of(DosePerArea dose) {
    var nothing = Optional.<LocalDate>empty();
    return new PlannedUse(
        dose, Optional.empty(), Optional.empty(), nothing, nothing, List.of(), Map.of(), Map.of());
  }

  /**
   * States the strength of the product.
   *
   * @param stated the strength
   * @return the plan with it
   */
  public PlannedUse withStrength(Strength stated) {
    return new PlannedUse(
        dose, Optional.of(stated), spray, day, harvest, earlier, circumstances, distances);
  }

  /**
   * States the spray volume.
   *
   * @param stated spray volume of the sprayer
   * @return the plan with it
   */
  public PlannedUse sprayedAt(SprayVolume stated) {
    return new PlannedUse(
        dose, strength, Optional.of(stated), day, harvest, earlier, circumstances, distances);
  }

  /**
   * States the day.
   *
   * @param stated day of the application
   * @return the plan with it
   * @throws InputProblem if an earlier application lies after it, or harvest before it
   */
  public PlannedUse on(LocalDate stated) {
    return new PlannedUse(
        dose, strength, spray, Optional.of(stated), harvest, earlier, circumstances, distances);
  }

  /**
   * States the day of harvest.
   *
   * @param stated first day of harvest
   * @return the plan with it
   * @throws InputProblem if it lies before the application
   */
  public PlannedUse harvestedOn(LocalDate stated) {
    return new PlannedUse(
        dose, strength, spray, day, Optional.of(stated), earlier, circumstances, distances);
  }

  /**
   * States one more application that was made before.
   *
   * @param use the application
   * @return the plan with it
   * @throws InputProblem if it lies after the planned one
   */
  public PlannedUse after(PastUse use) {
    var more = new ArrayList<>(earlier);
    more.add(use);
    return new PlannedUse(dose, strength, spray, day, harvest, more, circumstances, distances);
  }

  /**
   * States that a condition of the label holds.
   *
   * @param words words of the label, for example {@code "small larvae"}
   * @return the plan with it
   */
  public PlannedUse holding(String words) {
    return circumstance(words, true);
  }

  /**
   * States that a condition of the label does not hold.
   *
   * @param words words of the label
   * @return the plan with it
   */
  public PlannedUse notHolding(String words) {
    return circumstance(words, false);
  }

  private PlannedUse circumstance(String words, boolean holds) {
    var more = new HashMap<>(circumstances);
    more.put(new UseCondition(words), holds);
    return new PlannedUse(dose, strength, spray, day, harvest, earlier, more, distances);
  }

  /**
   * States the distance that is kept to something.
   *
   * @param toward what the label protects, in its words
   * @param distance unsprayed distance
   * @return the plan with it
   */
  public PlannedUse keeping(String toward, Length distance) {
    var more = new TreeMap<>(distances);
    more.put(toward, distance);
    return new PlannedUse(dose, strength, spray, day, harvest, earlier, circumstances, more);
  }
}
