package agro.programme.window;

import agro.generation.FlightCurve;
import agro.source.Reference;
import agro.units.ThermalTime;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;

/** Invented generations whose shares have a closed form: normal flights in even warmth. */
final class InventedCourses {

  static final LocalDate FIRST = LocalDate.of(2031, 4, 1);
  static final int DAYS = 120;
  static final double WARMTH = 10;
  static final double MIDDLE = 400;
  static final double SCALE = 40;

  private InventedCourses() {}

  static StageCourses even() {
    return StageCourses.given("test pest", 1, FIRST, List.of(flight(MIDDLE)));
  }

  static KnownFlight flight(double middle) {
    return new KnownFlight(
        FlightCurve.NORMAL,
        new ThermalTime(middle),
        new ThermalTime(SCALE),
        Collections.nCopies(DAYS, WARMTH));
  }

  /** First egg 50 (10), egg 60 (8), young larva 45 (6), larva 150 (15), adult 70 (12) °C·d. */
  static StageTarget target(TargetStage stage) {
    return new StageTarget(stage, structure());
  }

  static StageStructure structure() {
    return StageStructure.from(Reference.invented("stages for tests"))
        .withFirstEgg(normal(50, 10))
        .withEgg(normal(60, 8))
        .withYoungLarva(normal(45, 6))
        .withLarva(normal(150, 15))
        .withAdult(normal(70, 12));
  }

  static StageDelay normal(double mean, double deviation) {
    return StageDelay.normal(new ThermalTime(mean), new ThermalTime(deviation));
  }
}
