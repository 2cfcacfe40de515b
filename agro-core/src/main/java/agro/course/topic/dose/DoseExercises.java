package agro.course.topic.dose;

import agro.course.ExerciseType;
import java.util.List;

/** The exercises on doses. */
public final class DoseExercises {

  private DoseExercises() {}

  /**
   * The types of the first version of the generator.
   *
   * @return the types, simple ones first
   */
  public static List<ExerciseType> first() {
    return List.of(
        new ProductForField(),
        GranulesInRow.type(),
        ActiveDose.type(),
        PerLitreLabel.type(),
        SeedDressing.type(),
        CostPerLand.type(),
        TankLoads.type(),
        KnapsackPumps.type(),
        BandSpray.type(),
        SoilDrench.type(),
        StockSeries.type(),
        EnrichedManure.type());
  }
}
