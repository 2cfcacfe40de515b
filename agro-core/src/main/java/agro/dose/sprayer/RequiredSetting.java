package agro.dose.sprayer;

import agro.dose.SprayVolume;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.Speed;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Objects;

/** What has to be set so that a sprayer puts out a wanted volume per treated area. */
public sealed interface RequiredSetting extends Presentable
    permits RequiredSetting.OfFlow, RequiredSetting.OfSpeed, RequiredSetting.OfSwath {

  /**
   * The steps, with cautions.
   *
   * @return the working
   */
  Working working();

  @Override
  default Presentation presentation() {
    return working().presentation();
  }

  /**
   * The flow needed for a volume at a speed.
   *
   * @param layout nozzles and widths
   * @param volume wanted volume per treated area
   * @param speed speed over ground, above zero
   * @param units units of print
   * @return flow of one nozzle and of all
   */
  static OfFlow flow(SprayLayout layout, TreatedVolume volume, Speed speed, SprayUnits units) {
    checked(speed);
    double width = layout.treatedWidth().metres();
    var flow =
        new SprayerFlow(
            new FlowRate(
                CalibrationEquation.litresPerMinute(
                    volume.perArea().litresPerHectare(), speed.metresPerSecond(), width)));
    var nozzle = flow.perNozzle(layout.nozzles());
    var working =
        Working.of("Flow needed: " + layout.words(units))
            .step(
                "flow of all nozzles",
                units.flow().symbol() + " = volume × speed × swath / constant",
                product(units, volume, speed, layout.treatedWidth()),
                units.flow(flow.flow()),
                SprayerSources.VOLUME_EQUATION)
            .step(
                "flow of one nozzle",
                "q = Q / n",
                units.flow(flow.flow()) + " / " + layout.nozzles(),
                units.flow(nozzle.flow()))
            .withCautions(Caution.all());
    return new OfFlow(flow, nozzle, working);
  }

  /**
   * The flow needed for a volume per area of field at a speed.
   *
   * @param layout nozzles and widths
   * @param volume wanted volume per ground area, dry strips counted
   * @param speed speed over ground, above zero
   * @param units units of print
   * @return flow of one nozzle and of all
   */
  static OfFlow flow(SprayLayout layout, SprayVolume volume, Speed speed, SprayUnits units) {
    return flow(layout, TreatedVolume.ofField(volume, layout), speed, units);
  }

  /**
   * The speed needed for a volume per area of field with a flow.
   *
   * @param layout nozzles and widths
   * @param volume wanted volume per ground area, dry strips counted
   * @param flow flow of all nozzles
   * @param units units of print
   * @return the speed
   */
  static OfSpeed speed(SprayLayout layout, SprayVolume volume, SprayerFlow flow, SprayUnits units) {
    return speed(layout, TreatedVolume.ofField(volume, layout), flow, units);
  }

  /**
   * The speed needed for a volume with a flow.
   *
   * @param layout nozzles and widths
   * @param volume wanted volume per treated area
   * @param flow flow of all nozzles
   * @param units units of print
   * @return the speed
   */
  static OfSpeed speed(
      SprayLayout layout, TreatedVolume volume, SprayerFlow flow, SprayUnits units) {
    var speed =
        new Speed(
            CalibrationEquation.metresPerSecond(
                volume.perArea().litresPerHectare(),
                flow.flow().litresPerMinute(),
                layout.treatedWidth().metres()));
    var working =
        Working.of("Speed needed: " + layout.words(units))
            .step(
                "speed",
                units.speed().symbol() + " = constant × flow / (volume × swath)",
                quotient(units, flow)
                    + units.volume(volume.perArea())
                    + " × "
                    + units.width(layout.treatedWidth())
                    + ")",
                units.speed(speed),
                SprayerSources.VOLUME_EQUATION)
            .withCautions(Caution.all());
    return new OfSpeed(speed, working);
  }

  /**
   * The width that a flow covers at a speed with a wanted volume.
   *
   * @param volume wanted volume per area, above zero
   * @param flow flow over that width
   * @param speed speed over ground, above zero
   * @param units units of print
   * @return the width
   */
  static OfSwath swath(TreatedVolume volume, SprayerFlow flow, Speed speed, SprayUnits units) {
    checked(speed);
    var swath =
        new Length(
            CalibrationEquation.swathMetres(
                volume.perArea().litresPerHectare(),
                flow.flow().litresPerMinute(),
                speed.metresPerSecond()));
    var working =
        Working.of("Swath that this flow covers")
            .step(
                "swath",
                units.width().symbol() + " = constant × flow / (volume × speed)",
                quotient(units, flow)
                    + units.volume(volume.perArea())
                    + " × "
                    + units.speed(speed)
                    + ")",
                units.width(swath),
                SprayerSources.VOLUME_EQUATION)
            .withCautions(Caution.all());
    return new OfSwath(swath, working);
  }

  private static String product(SprayUnits units, TreatedVolume volume, Speed speed, Length width) {
    return units.volume(volume.perArea())
        + " × "
        + units.speed(speed)
        + " × "
        + units.width(width)
        + " / "
        + CalibrationWorking.constant(units);
  }

  private static String quotient(SprayUnits units, SprayerFlow flow) {
    return CalibrationWorking.constant(units) + " × " + units.flow(flow.flow()) + " / (";
  }

  private static void checked(Speed speed) {
    SprayerChecks.aboveZero(
        speed,
        "speed",
        "a sprayer that stands still empties itself on one spot",
        "time a measured course at spraying speed");
  }

  /**
   * The flow that is needed.
   *
   * @param sprayer flow of all nozzles
   * @param nozzle flow of one nozzle
   * @param working the steps, with cautions
   */
  record OfFlow(SprayerFlow sprayer, NozzleFlow nozzle, Working working)
      implements RequiredSetting {
    /** Refuses nulls. */
    public OfFlow {
      Objects.requireNonNull(working, "working");
    }
  }

  /**
   * The speed that is needed.
   *
   * @param speed speed over ground
   * @param working the steps, with cautions
   */
  record OfSpeed(Speed speed, Working working) implements RequiredSetting {
    /** Refuses nulls. */
    public OfSpeed {
      Objects.requireNonNull(working, "working");
    }
  }

  /**
   * The width that is covered.
   *
   * @param swath width
   * @param working the steps, with cautions
   */
  record OfSwath(Length swath, Working working) implements RequiredSetting {
    /** Refuses nulls. */
    public OfSwath {
      Objects.requireNonNull(working, "working");
    }
  }
}
