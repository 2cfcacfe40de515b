package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.Speed;
import agro.units.VolumePerArea;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Spray volume per area from the flow, the speed and the width of a sprayer: L/ha = 600 × L/min ÷
 * (km/h × m), US gal/ac = 5940 × US gal/min ÷ (mph × in).
 *
 * @param layout nozzles and widths
 * @param flow flow of all nozzles together, as caught
 * @param speed speed over ground, above zero
 * @param liquid density of the liquid to be sprayed, if the flow was caught with water and the
 *     liquid is not like water
 * @param uncertainties relative uncertainties of flow and speed, as far as they are known
 * @param units units of print
 * @param remarks what the reader should know of the readings, one sentence each
 */
public record SprayCalibration(
    SprayLayout layout,
    SprayerFlow flow,
    Speed speed,
    Optional<LiquidDensity> liquid,
    List<RelativeUncertainty> uncertainties,
    SprayUnits units,
    List<String> remarks) {

  /** Refuses a sprayer that stands still. */
  public SprayCalibration {
    Objects.requireNonNull(layout, "layout");
    Objects.requireNonNull(flow, "flow");
    SprayerChecks.aboveZero(
        speed,
        "speed",
        "a sprayer that stands still empties itself on one spot",
        "time a measured course at spraying speed");
    Objects.requireNonNull(liquid, "liquid");
    uncertainties = List.copyOf(uncertainties);
    Objects.requireNonNull(units, "units");
    remarks = List.copyOf(remarks);
  }

  /**
   * A calibration from the flow of one nozzle, in metric print.
   *
   * @param layout nozzles and widths
   * @param flow flow of one nozzle
   * @param speed speed over ground
   * @return the calibration
   */
  public static SprayCalibration ofNozzle(SprayLayout layout, NozzleFlow flow, Speed speed) {
    return ofSprayer(layout, flow.through(layout.nozzles()), speed);
  }

  /**
   * A calibration from the flow of all nozzles together, in metric print.
   *
   * @param layout nozzles and widths
   * @param flow flow of the sprayer
   * @param speed speed over ground
   * @return the calibration
   */
  public static SprayCalibration ofSprayer(SprayLayout layout, SprayerFlow flow, Speed speed) {
    return new SprayCalibration(
        layout, flow, speed, Optional.empty(), List.of(), SprayUnits.METRIC, List.of());
  }

  /**
   * A calibration from a catch test and a timed course, with the uncertainty of both. Blocked
   * nozzles count as mended, with the mean flow of the others, and the result says so.
   *
   * @param layout nozzles and widths
   * @param caught catch test of the nozzles of this layout
   * @param timed timed course
   * @return the calibration
   * @throws InputProblem if more nozzles were caught than the layout has
   */
  public static SprayCalibration ofMeasured(
      SprayLayout layout, CatchTestResult caught, CourseSpeed timed) {
    int nozzles = caught.findings().size();
    if (nozzles > layout.nozzles()) {
      throw InputProblem.of(
              nozzles + " nozzles were caught, but the layout has " + layout.nozzles())
          .expected("a catch test of the nozzles of this layout")
          .because("the flow of the sprayer is the mean of the catch times its nozzles")
          .mend("count the nozzles of the boom, lance or rows that spray at the same time");
    }
    var known = new ArrayList<RelativeUncertainty>();
    caught.uncertainty().ifPresent(known::add);
    timed.uncertainty().ifPresent(known::add);
    var flow = caught.meanFlow().through(layout.nozzles());
    return new SprayCalibration(
        layout,
        flow,
        timed.speed(),
        Optional.empty(),
        known,
        caught.units(),
        caught.forCalibration());
  }

  /**
   * The same calibration for a liquid that is heavier or lighter than the water it was caught with.
   *
   * @param density density of the liquid
   * @return a new calibration
   */
  public SprayCalibration spraying(LiquidDensity density) {
    return new SprayCalibration(
        layout, flow, speed, Optional.of(density), uncertainties, units, remarks);
  }

  /**
   * The same calibration with one more uncertainty, of a flow or speed measured repeatedly.
   *
   * @param more relative uncertainty, independent of those already given
   * @return a new calibration
   */
  public SprayCalibration with(RelativeUncertainty more) {
    var all = new ArrayList<>(uncertainties);
    all.add(more);
    return new SprayCalibration(layout, flow, speed, liquid, all, units, remarks);
  }

  /**
   * The same calibration in other units.
   *
   * @param other units of print
   * @return a new calibration
   */
  public SprayCalibration printedIn(SprayUnits other) {
    return new SprayCalibration(layout, flow, speed, liquid, uncertainties, other, remarks);
  }

  /**
   * The spray volume per area.
   *
   * @return volume per treated area and per area of field, with uncertainty and steps
   */
  public CalibratedVolume evaluate() {
    var steps = new CalibrationWorking(layout.treatedShare(), units);
    var working = Working.of("Spray volume of a sprayer: " + layout.words(units));
    var real = flow.flow();
    if (liquid.isPresent()) {
      real = liquid.get().flowOf(flow.flow());
      working =
          working.step(
              "flow of this liquid",
              "Q = Q(water) / √SG",
              units.flow(flow.flow()) + " / " + liquid.get().printedRoot(),
              units.flow(real),
              SprayerSources.LIQUID_DENSITY);
    }
    var treated =
        new TreatedVolume(
            new VolumePerArea(
                CalibrationEquation.litresPerHectare(
                    real.litresPerMinute(),
                    speed.metresPerSecond(),
                    layout.treatedWidth().metres())));
    working = steps.volume(working, real, speed, layout.treatedWidth(), treated);
    return steps.finish(working, treated, uncertainties, remarks);
  }
}
