package agro.dose.sprayer;

import agro.source.Reference;
import agro.units.Area;
import agro.units.Volume;
import agro.working.Working;
import java.util.List;

/** Volume over area: what the methods share that catch or use up a volume for a known area. */
final class AreaCatch {

  private AreaCatch() {}

  static CalibratedVolume finish(
      Working start,
      Area treated,
      RepeatedReadings<Volume> catches,
      double treatedShare,
      SprayUnits units,
      Reference source) {
    var steps = new CalibrationWorking(treatedShare, units);
    var mean = catches.mean();
    var volume = new TreatedVolume(mean.dividedBy(treated));
    var working = start;
    if (catches.count() > 1) {
      working =
          working.step(
              "mean volume",
              "sum of the volumes / n",
              units.caught(mean.times(catches.count())) + " / " + catches.count(),
              units.caught(mean));
    }
    working =
        working.step(
            steps.volumeName(),
            "volume / area",
            units.caught(mean) + " / " + SprayUnits.print(treated, units.smallArea()),
            units.volume(volume.perArea()),
            source);
    return steps.finish(working, volume, catches.uncertainty().map(List::of).orElse(List.of()));
  }
}
