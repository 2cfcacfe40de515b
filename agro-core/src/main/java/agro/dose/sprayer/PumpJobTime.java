package agro.dose.sprayer;

import agro.units.Numbers;
import agro.units.WorkTime;
import agro.units.WorkTimeUnit;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;

/**
 * The time of a job.
 *
 * @param fullPumps full tank loads
 * @param partPump share of a last load, 0 if there is none
 * @param fills loads that have to be filled and mixed
 * @param labour working time of all operators together
 * @param elapsed time on the clock, each operator spraying whole loads
 * @param working the steps, with cautions
 */
public record PumpJobTime(
    int fullPumps, double partPump, int fills, WorkTime labour, WorkTime elapsed, Working working)
    implements Presentable {

  static PumpJobTime of(PumpJob job) {
    int full = job.fullPumps();
    double part = job.partPump();
    int fills = full + (part > 0 ? 1 : 0);
    var spraying = job.perPump().times(full + part);
    var filling = job.perFill().times(fills);
    var labour = spraying.plus(filling);
    var elapsed = elapsed(job, full, part);
    var working =
        Working.of("Time of a job")
            .step(
                "spraying",
                "pumps × time for one",
                Numbers.significant(full + part, 6) + " × " + minutes(job.perPump()),
                minutes(spraying),
                SprayerSources.JOB_TIME)
            .step(
                "filling and mixing",
                "fills × time for one",
                fills + " × " + minutes(job.perFill()),
                minutes(filling),
                SprayerSources.JOB_TIME)
            .step(
                "working time",
                "spraying + filling",
                minutes(spraying) + " + " + minutes(filling),
                hours(labour))
            .step(
                "time on the clock",
                "",
                "",
                hours(elapsed)
                    + " with "
                    + job.operators()
                    + (job.operators() == 1 ? " operator" : " operators")
                    + "; rests and the way to the field come on top")
            .withCautions(Caution.all());
    return new PumpJobTime(full, part, fills, labour, elapsed, working);
  }

  /** The last part load fits beside a round in which an operator has nothing left to do. */
  private static WorkTime elapsed(PumpJob job, int full, double part) {
    int rounds = full / job.operators();
    var load = job.perPump().plus(job.perFill());
    if (full % job.operators() != 0) {
      return load.times(rounds + 1);
    }
    var whole = load.times(rounds);
    return part > 0 ? whole.plus(job.perPump().times(part)).plus(job.perFill()) : whole;
  }

  private static String minutes(WorkTime time) {
    return Numbers.significant(time.in(WorkTimeUnit.MINUTE), 5) + " min";
  }

  private static String hours(WorkTime time) {
    return Numbers.significant(time.in(WorkTimeUnit.HOUR), 4) + " h";
  }

  @Override
  public Presentation presentation() {
    return working.presentation();
  }
}
