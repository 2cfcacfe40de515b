package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.Area;
import agro.units.Numbers;
import agro.units.WorkTime;
import agro.units.WorkTimeUnit;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * Spots that are sprayed for a number of seconds each. The volume per treated area (the spots
 * alone) stands beside the volume per area of field; a label's maximum per hectare refers to
 * treated ground unless it says otherwise.
 *
 * @param flow flow of all nozzles that spray a spot
 * @param perSpot spraying time of one spot, above zero
 * @param spot area of one spot, above zero
 * @param spots number of spots in the field, 1 or more
 * @param field area of the field, not below that of all spots
 * @param units units of print
 */
public record SpotSpraying(
    SprayerFlow flow, WorkTime perSpot, Area spot, int spots, Area field, SprayUnits units) {

  /** Refuses spots that do not fit the field. */
  public SpotSpraying {
    Objects.requireNonNull(flow, "flow");
    SprayerChecks.aboveZero(
        perSpot,
        "time for one spot",
        "the volume of a spot is flow × time",
        "count the seconds for ten spots and divide by ten");
    SprayerChecks.aboveZero(
        spot,
        "area of one spot",
        "the volume per treated area is the volume of a spot divided by its area",
        "measure what gets wet");
    SprayerChecks.oneOrMore(spots, "spots", "without spots nothing is sprayed", "count the spots");
    Objects.requireNonNull(units, "units");
    if (field.compareTo(spot.times(spots).times(1 - 1e-9)) < 0) {
      throw InputProblem.of(spots + " spots of " + spot + " in a field of " + field)
          .expected("spots that together are at most as large as the field")
          .because("ground that is wetted twice gets the dose twice")
          .mend("check the size of a spot, the number of spots and the unit of the field");
    }
  }

  /**
   * The spray volume per area.
   *
   * @return volume per treated area and per area of field, with the steps
   */
  public CalibratedVolume evaluate() {
    var each = flow.flow().times(perSpot);
    var treated = spot.times(spots);
    double share = Math.min(1, treated.ratioTo(field));
    var volume = new TreatedVolume(each.dividedBy(spot));
    var working =
        Working.of("Spray volume on spots")
            .step(
                "volume of one spot",
                "flow × time",
                units.flow(flow.flow()) + " × " + SprayUnits.print(perSpot, WorkTimeUnit.SECOND),
                units.caught(each),
                SprayerSources.MASS_BALANCE)
            .step(
                "volume per treated area",
                "volume of one spot / area of one spot",
                units.caught(each) + " / " + SprayUnits.print(spot, units.smallArea()),
                units.volume(volume.perArea()),
                SprayerSources.MASS_BALANCE)
            .step(
                "treated share of the field",
                "spots × area of one spot / field",
                spots
                    + " × "
                    + SprayUnits.print(spot, units.smallArea())
                    + " / "
                    + SprayUnits.print(field, units.smallArea()),
                Numbers.significant(100 * share, 4) + " %");
    return new CalibrationWorking(share, units).finish(working, volume, List.of());
  }
}
