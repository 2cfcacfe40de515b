package agro.dose;

import java.time.LocalDate;
import java.util.Objects;

/** How a label states the time before harvest. */
public sealed interface PreHarvest {

  /**
   * Whole days from the last application to harvest.
   *
   * @param days zero or more
   */
  record Days(int days) implements PreHarvest {
    /** Refuses days below zero. */
    public Days {
      LimitNumbers.require(days, 0, "days before harvest");
    }

    /**
     * The first day of harvest after an application. It is counted on dates, not in hours.
     *
     * @param applied day of the application
     * @return that day plus the interval
     */
    public LocalDate earliestHarvest(LocalDate applied) {
      return applied.plusDays(days);
    }

    @Override
    public String toString() {
      return days + (days == 1 ? " day" : " days");
    }
  }

  /**
   * The last growth stage at which the product may be used.
   *
   * @param stage the words of the label
   */
  record UntilStage(String stage) implements PreHarvest {
    /** Refuses null. */
    public UntilStage {
      Objects.requireNonNull(stage, "stage");
    }

    @Override
    public String toString() {
      return "not after " + stage;
    }
  }
}
