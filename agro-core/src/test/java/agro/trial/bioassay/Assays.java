package agro.trial.bioassay;

import agro.ReferenceTable;
import agro.units.MassPerVolumeUnit;
import java.util.List;

/** Assays that tests share. */
final class Assays {

  static final DoseAxis AXIS = new DoseAxis.Concentration(MassPerVolumeUnit.MILLIGRAM_PER_LITRE);

  private Assays() {}

  /** A published assay, its doses taken as powers of ten where wanted. */
  static BioassayData published(String set, boolean raised) {
    return of(
        ReferenceTable.read(Assays.class, "groups.csv").stream()
            .filter(line -> line.getField("set").equals(set))
            .map(
                line ->
                    DoseGroup.of(
                            raised
                                ? Math.pow(10, ReferenceTable.number(line, "dose"))
                                : ReferenceTable.number(line, "dose"),
                            ReferenceTable.whole(line, "n"),
                            ReferenceTable.whole(line, "responded"))
                        .inSeries(line.getField("series")))
            .toList());
  }

  static BioassayData published(String set) {
    return published(set, false);
  }

  static BioassayData of(List<DoseGroup> groups) {
    return BioassayData.of("", AXIS, EndPoint.DEAD, groups);
  }

  /** Groups from dose, exposed, responded. */
  static BioassayData of(double[]... groups) {
    return of(
        java.util.Arrays.stream(groups)
            .map(each -> DoseGroup.of(each[0], (int) each[1], (int) each[2]))
            .toList());
  }
}
