package agro.dose.sprayer;

import agro.units.FlowRate;
import agro.units.Length;
import agro.units.Numbers;
import agro.units.Speed;
import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Steps that all ways of calibration share, in the units of the reader. */
final class CalibrationWorking {

  private final double treatedShare;
  private final SprayUnits units;

  CalibrationWorking(double treatedShare, SprayUnits units) {
    this.treatedShare = treatedShare;
    this.units = units;
  }

  /** What the volume refers to. */
  String volumeName() {
    return treatedShare < 1 ? "volume per treated area" : "volume per area";
  }

  /** The formula of the volume per area with the constant of these units. */
  static String constant(SprayUnits units) {
    return Numbers.plain(units.constant().convert(1));
  }

  Working volume(Working working, FlowRate flow, Speed speed, Length swath, TreatedVolume volume) {
    return working.step(
        volumeName(),
        units.volume().symbol()
            + " = "
            + constant(units)
            + " × "
            + units.flow().symbol()
            + " / ("
            + units.speed().symbol()
            + " × "
            + units.width().symbol()
            + ")",
        constant(units)
            + " × "
            + units.flow(flow)
            + " / ("
            + units.speed(speed)
            + " × "
            + units.width(swath)
            + ")",
        units.volume(volume.perArea()),
        SprayerSources.VOLUME_EQUATION);
  }

  CalibratedVolume finish(Working start, TreatedVolume treated, List<RelativeUncertainty> parts) {
    return finish(start, treated, parts, List.of());
  }

  CalibratedVolume finish(
      Working start,
      TreatedVolume treated,
      List<RelativeUncertainty> parts,
      List<String> ofReadings) {
    var working = start;
    var field = treated.onField(treatedShare);
    var remarks = new ArrayList<String>(ofReadings);
    field.finding().ifPresent(much -> remarks.add(much.sentence()));
    if (treatedShare < 1) {
      working =
          working.step(
              "volume per area of field",
              "treated volume × treated share of the field",
              units.volume(treated.perArea()) + " × " + Numbers.significant(treatedShare, 5),
              units.volume(field.perArea()),
              SprayerSources.VOLUME_EQUATION);
      remarks.add(
          "The strength in the tank is that of the treated area; a rate per hectare of field put"
              + " into the treated strips or spots would be "
              + Numbers.significant(1 / treatedShare, 3)
              + " times too high there.");
    }
    Optional<RelativeUncertainty> known =
        parts.isEmpty() ? Optional.empty() : Optional.of(RelativeUncertainty.combined(parts));
    working = uncertainty(working, known, treated, remarks);
    return new CalibratedVolume(
        treated, field, known, units, remarks, working.withCautions(Caution.all()));
  }

  private Working uncertainty(
      Working working,
      Optional<RelativeUncertainty> known,
      TreatedVolume volume,
      List<String> remarks) {
    if (known.isEmpty()) {
      remarks.add("Each reading was taken once, so nobody knows how well this volume is known.");
      return working;
    }
    var share = known.get();
    double half = share.halfWidth(CalibratedVolume.CONFIDENCE);
    var withError =
        working.step(
            "relative standard error",
            "u = s / (√n × mean), squares added over independent readings",
            "",
            share.toString(),
            SprayerSources.T_INTERVAL);
    if (half >= 1) {
      remarks.add(
          "The readings are too few or too different: the interval would begin below zero. Repeat"
              + " the catches.");
      return withError;
    }
    return withError.step(
        "interval of the volume, and of every dose in proportion (95 %)",
        "volume × (1 ± t × u)",
        units.volume(volume.perArea())
            + " × (1 ± "
            + Numbers.significant(share.factor(CalibratedVolume.CONFIDENCE), 4)
            + " × "
            + Numbers.significant(share.standard(), 3)
            + ")",
        units.volume(volume.perArea().times(1 - half))
            + " to "
            + units.volume(volume.perArea().times(1 + half))
            + ", ±"
            + Numbers.significant(100 * half, 3)
            + " %",
        SprayerSources.T_INTERVAL);
  }
}
