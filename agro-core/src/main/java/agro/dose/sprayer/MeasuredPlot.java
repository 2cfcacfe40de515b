package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.Area;
import agro.units.Numbers;
import agro.units.Volume;
import agro.working.Working;
import java.util.Objects;

/**
 * The measured-area method: a plot of known size is sprayed, and what was used is measured by
 * filling up again. L/ha = L used ÷ m² × 10 000.
 *
 * @param field area of the plot, dry strips counted, above zero
 * @param treatedShare share of the plot that got wet: 1, or less for bands and spots
 * @param used volumes used on the plot, once or repeated
 * @param units units of print
 */
public record MeasuredPlot(
    Area field, double treatedShare, RepeatedReadings<Volume> used, SprayUnits units) {

  /** Refuses a plot without area and shares that are none. */
  public MeasuredPlot {
    SprayerChecks.aboveZero(
        field,
        "area of the plot",
        "the volume per area is the volume used divided by the area",
        "measure length and width of the plot");
    if (!(treatedShare > 0 && treatedShare <= 1)) {
      throw InputProblem.of("the share of the plot that got wet is " + Numbers.plain(treatedShare))
          .expected("a share above 0 and up to 1")
          .because("more than the whole plot cannot be treated")
          .mend("divide the band width by the row spacing; write 25 % as 0.25");
    }
    Objects.requireNonNull(used, "used");
    Objects.requireNonNull(units, "units");
  }

  /**
   * A plot sprayed all over, in metric print.
   *
   * @param field area of the plot
   * @param first volume used
   * @param others volumes used when the plot was sprayed again
   * @return the plot
   */
  public static MeasuredPlot of(Area field, Volume first, Volume... others) {
    return new MeasuredPlot(field, 1, RepeatedReadings.of(first, others), SprayUnits.METRIC);
  }

  /**
   * The same plot sprayed in bands.
   *
   * @param layout bands and rows
   * @return a new plot
   */
  public MeasuredPlot inBands(SprayLayout.Band layout) {
    return new MeasuredPlot(field, layout.treatedShare(), used, units);
  }

  /**
   * The same plot in other units.
   *
   * @param other units of print
   * @return a new plot
   */
  public MeasuredPlot printedIn(SprayUnits other) {
    return new MeasuredPlot(field, treatedShare, used, other);
  }

  /**
   * The spray volume per area.
   *
   * @return volume per treated area and per area of field, with uncertainty and steps
   */
  public CalibratedVolume evaluate() {
    var working = Working.of("Spray volume from a measured plot");
    var treated = field.times(treatedShare);
    if (treatedShare < 1) {
      working =
          working.step(
              "treated area",
              "plot × treated share",
              SprayUnits.print(field, units.smallArea())
                  + " × "
                  + Numbers.significant(treatedShare, 5),
              SprayUnits.print(treated, units.smallArea()));
    }
    return AreaCatch.finish(working, treated, used, treatedShare, units, SprayerSources.IRRI);
  }
}
