package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.FlowRate;
import agro.units.Pressure;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.WorkTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Catches under several nozzles, all for the same time and at the same pressure. Nozzles out of
 * tolerance are named; so are worn ones if the flow of a new nozzle is known.
 *
 * @param catches one entry for each nozzle that was caught
 * @param time catching time, above zero
 * @param nozzlesOnSprayer nozzles of the sprayer, not below the number caught
 * @param newFlow flow of a new nozzle at this pressure, if known
 * @param tolerance how far a nozzle may be from the mean
 * @param units units of print
 */
public record CatchTest(
    List<NozzleCatch> catches,
    WorkTime time,
    int nozzlesOnSprayer,
    Optional<FlowRate> newFlow,
    NozzleTolerance tolerance,
    SprayUnits units) {

  /** Refuses tests from which no mean can be formed. */
  public CatchTest {
    catches = List.copyOf(catches);
    if (catches.isEmpty()) {
      throw InputProblem.of("no nozzle was caught")
          .expected("catches under at least one nozzle, better under all")
          .because("a mean of nothing does not exist")
          .mend("catch each nozzle for 30 to 60 seconds at working pressure");
    }
    SprayerChecks.aboveZero(
        time,
        "catching time",
        "the flow is the catch divided by the time",
        "write the seconds for which each nozzle was caught");
    refuseTwins(catches);
    if (nozzlesOnSprayer < catches.size()) {
      throw InputProblem.of(
              catches.size() + " nozzles were caught on a sprayer of " + nozzlesOnSprayer)
          .expected("at most as many as the sprayer has")
          .because("the mean speaks for all nozzles of the sprayer")
          .mend("count the nozzles; write several catches of one nozzle under one name");
    }
    newFlow.ifPresent(
        flow ->
            SprayerChecks.aboveZero(
                flow,
                "flow of a new nozzle",
                "wear is the flow divided by that of a new nozzle",
                "take it from the nozzle's size and the pressure, or leave it out"));
    Objects.requireNonNull(tolerance, "tolerance");
    Objects.requireNonNull(units, "units");
  }

  /**
   * A test of all nozzles with the 10 % tolerance, in metric print.
   *
   * @param time catching time
   * @param catches one entry for each nozzle
   * @return the test
   */
  public static CatchTest of(WorkTime time, List<NozzleCatch> catches) {
    return new CatchTest(
        catches,
        time,
        catches.size(),
        Optional.empty(),
        NozzleTolerance.TEN_PERCENT,
        SprayUnits.METRIC);
  }

  /**
   * A test of nozzles numbered from 1, caught once each, with the 10 % tolerance.
   *
   * @param time catching time
   * @param volumes catches from left to right
   * @return the test
   */
  public static CatchTest ofRow(WorkTime time, Volume... volumes) {
    var catches = new ArrayList<NozzleCatch>();
    for (var volume : volumes) {
      catches.add(NozzleCatch.of(Integer.toString(catches.size() + 1), volume));
    }
    return of(time, catches);
  }

  /**
   * A test with one catch under each nozzle, as read off one vessel; nozzles are numbered from 1.
   *
   * @param time time of catching, the same for all
   * @param unit unit of the readings
   * @param readings one reading for each nozzle, in the order of the boom; 0 for a blocked nozzle
   * @return the test
   */
  public static CatchTest ofRow(WorkTime time, Unit<Volume> unit, double... readings) {
    return ofRow(
        time,
        Arrays.stream(readings)
            .mapToObj(reading -> Volume.of(reading, unit))
            .toArray(Volume[]::new));
  }

  /**
   * The same test on a sprayer that has more nozzles than were caught.
   *
   * @param count nozzles of the sprayer
   * @return a new test
   */
  public CatchTest onSprayerOf(int count) {
    return new CatchTest(catches, time, count, newFlow, tolerance, units);
  }

  /**
   * The same test with the flow of a new nozzle, so that wear is seen.
   *
   * @param flow flow of a new nozzle at this pressure
   * @return a new test
   */
  public CatchTest comparedWithNew(NozzleFlow flow) {
    return new CatchTest(
        catches, time, nozzlesOnSprayer, Optional.of(flow.flow()), tolerance, units);
  }

  /**
   * The same test compared with new nozzles of a size at the pressure of the test.
   *
   * @param size size stamped on the nozzles
   * @param pressure gauge pressure at the nozzles during the test, above zero
   * @return a new test
   * @throws InputProblem if the pressure is zero
   */
  public CatchTest comparedWithSize(NozzleSize size, Pressure pressure) {
    var flow = size.curve(FlowBasis.LITRES_AT_3_BAR).flowAt(pressure);
    return comparedWithNew(new NozzleFlow(flow));
  }

  /**
   * The same test with another tolerance.
   *
   * @param other how far a nozzle may be from the mean
   * @return a new test
   */
  public CatchTest within(NozzleTolerance other) {
    return new CatchTest(catches, time, nozzlesOnSprayer, newFlow, other, units);
  }

  /**
   * The same test in other units.
   *
   * @param other units of print
   * @return a new test
   */
  public CatchTest printedIn(SprayUnits other) {
    return new CatchTest(catches, time, nozzlesOnSprayer, newFlow, tolerance, other);
  }

  /**
   * The findings.
   *
   * @return mean, spread and one finding for each nozzle
   * @throws InputProblem if every nozzle is blocked
   */
  public CatchTestResult evaluate() {
    return new CatchStatistics(this).result();
  }

  private static void refuseTwins(List<NozzleCatch> catches) {
    var seen = new HashSet<String>();
    for (var one : catches) {
      if (!seen.add(one.nozzle())) {
        throw InputProblem.of("nozzle " + one.nozzle() + " is named twice")
            .expected("each nozzle once, with all its catches")
            .because(
                "repeated catches of one nozzle and catches of two nozzles tell different"
                    + " spreads")
            .mend("put both catches under one name, or give the second nozzle its own");
      }
    }
  }
}
