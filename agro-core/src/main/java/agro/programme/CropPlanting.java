package agro.programme;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * One crop in one field, from planting until it is cleared.
 *
 * @param name what this planting is called; unique
 * @param field the field
 * @param crop the crop, as the label records write it
 * @param planted day on which it came into the field
 * @param cleared last day in the field; nothing if it still stands
 * @param picking its picking days
 */
public record CropPlanting(
    String name,
    String field,
    String crop,
    LocalDate planted,
    Optional<LocalDate> cleared,
    PickingPlan picking) {

  /** Refuses days out of order. */
  public CropPlanting {
    name = name.strip();
    field = field.strip();
    crop = crop.strip();
    Objects.requireNonNull(planted, "planted");
    Objects.requireNonNull(picking, "picking");
    if (cleared.filter(day -> day.isBefore(planted)).isPresent()) {
      throw InputProblem.of(name + " cleared on " + cleared.get() + ", planted on " + planted)
          .expected("a day of clearing on or after planting")
          .because("applications are counted for the crop that stood on their day")
          .mend("look at year and month of both days");
    }
    if (picking.isStated() && picking.days().get(0).isBefore(planted)) {
      throw InputProblem.of(name + " picked on " + picking.days().get(0) + " before " + planted)
          .expected("picking days on or after the day of planting, " + planted)
          .because("the harvest belongs to the crop that was planted")
          .mend("look at year and month of the days");
    }
  }

  /**
   * A crop that still stands, without picking days.
   *
   * @param field the field
   * @param crop the crop
   * @param planted day of planting
   * @return the planting, named by crop, field and day
   */
  public static CropPlanting of(String field, String crop, LocalDate planted) {
    return new CropPlanting(
        crop + ", " + field + ", " + planted,
        field,
        crop,
        planted,
        Optional.empty(),
        PickingPlan.notStated());
  }

  /**
   * The same planting with picking days.
   *
   * @param plan the days
   * @return a new planting
   */
  public CropPlanting picked(PickingPlan plan) {
    return new CropPlanting(name, field, crop, planted, cleared, plan);
  }

  /**
   * The same planting with its last day.
   *
   * @param day last day in the field
   * @return a new planting
   */
  public CropPlanting clearedOn(LocalDate day) {
    return new CropPlanting(name, field, crop, planted, Optional.of(day), picking);
  }

  /**
   * Whether the crop stands in the field on a day.
   *
   * @param day the day
   * @return true from planting to the day of clearing, both included
   */
  public boolean standsOn(LocalDate day) {
    return !day.isBefore(planted) && cleared.map(last -> !day.isAfter(last)).orElse(true);
  }
}
