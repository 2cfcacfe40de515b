package agro.course.handwork;

import agro.ReferenceTable;
import agro.trial.bioassay.BioassayData;
import agro.trial.bioassay.DoseAxis;
import agro.trial.bioassay.DoseGroup;
import agro.trial.bioassay.EndPoint;
import agro.units.MassPerVolumeUnit;
import java.util.List;

/** Assays of groups.csv. */
final class HandAssays {

  private HandAssays() {}

  static BioassayData named(String set) {
    var groups =
        ReferenceTable.read(HandAssays.class, "groups.csv").stream()
            .filter(line -> line.getField("set").equals(set))
            .map(
                line ->
                    DoseGroup.of(
                        ReferenceTable.number(line, "dose"),
                        ReferenceTable.whole(line, "n"),
                        ReferenceTable.whole(line, "dead")))
            .toList();
    return of(set, groups.toArray(DoseGroup[]::new));
  }

  static BioassayData of(String title, DoseGroup... groups) {
    return BioassayData.of(
        title,
        new DoseAxis.Concentration(MassPerVolumeUnit.MILLIGRAM_PER_LITRE),
        EndPoint.AS_COUNTED,
        List.of(groups));
  }
}
