package agro.course.practical;

import agro.course.practical.GroupReadings.NozzleCatches;
import agro.course.practical.GroupReadings.Output;
import agro.course.practical.GroupReadings.Pace;
import agro.course.practical.GroupReadings.Refilled;
import agro.course.practical.GroupReadings.StatedSpeed;
import agro.course.practical.GroupReadings.TimedRuns;
import agro.course.practical.GroupReadings.UntimedCourse;
import agro.course.practical.GroupReadings.WholeOutput;
import agro.dose.sprayer.NozzleCatch;
import agro.dose.sprayer.RepeatedReadings;
import agro.dose.sprayer.SprayLayout;
import agro.dose.sprayer.SprayUnits;
import agro.report.InputProblem;
import agro.units.Length;
import agro.units.Quantity;
import agro.units.Speed;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.WorkTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads the line of one group. */
final class GroupReader {

  /** Share by which a stated width may differ from nozzles times spacing. */
  private static final double SAME_WIDTH = 0.02;

  private final ReadingCells cells;
  private final String group;

  GroupReader(ReadingCells cells) {
    this.cells = cells;
    this.group =
        cells
            .text(ReadingColumn.GROUP)
            .orElseThrow(
                () ->
                    cells.refused(
                        ReadingColumn.GROUP,
                        "a name or number",
                        "the result names the groups",
                        "number the groups"));
  }

  String group() {
    return group;
  }

  /** Whether the group has measured nothing yet. */
  boolean isEmpty() {
    return Stream.of(
            ReadingColumn.TIME,
            ReadingColumn.SPEED,
            ReadingColumn.CATCHES,
            ReadingColumn.OUTPUT,
            ReadingColumn.REFILL,
            ReadingColumn.OWN)
        .noneMatch(cells::has);
  }

  GroupReadings readings() {
    int nozzles = nozzles();
    try {
      var read =
          new GroupReadings(
              group,
              cells.text(ReadingColumn.SPRAYER).orElse(""),
              layout(nozzles),
              pace(),
              output(nozzles),
              cells.one(ReadingColumn.OWN, VolumePerArea::parse),
              cells.one(ReadingColumn.TARGET, VolumePerArea::parse));
      read.calibrate(SprayUnits.METRIC);
      return read;
    } catch (InputProblem problem) {
      if (!problem.location().toString().isEmpty()) {
        throw problem;
      }
      throw InputProblem.at(cells.line().location(), problem.read())
          .expected(problem.expected())
          .because(problem.why())
          .mend(problem.cure());
    }
  }

  private int nozzles() {
    var stated = cells.count(ReadingColumn.NOZZLES);
    if (stated.isPresent()) {
      return stated.get();
    }
    boolean several =
        cells.has(ReadingColumn.CATCHES)
            && cells.several(ReadingColumn.CATCHES, Volume::parse).size() > 1;
    if (several || cells.has(ReadingColumn.SPACING)) {
      throw cells.refused(
          ReadingColumn.NOZZLES,
          "the number of nozzles that spray at the same time",
          "several catches may be of several nozzles, whose flows add up, or repeats of one",
          "write 1 for a lance with one nozzle, else how many there are");
    }
    return 1;
  }

  private SprayLayout layout(int nozzles) {
    var width = cells.one(ReadingColumn.WIDTH, Length::parse);
    var spacing = cells.one(ReadingColumn.SPACING, Length::parse);
    if (spacing.isEmpty()) {
      return SprayLayout.lance(
          nozzles,
          width.orElseThrow(
              () ->
                  cells.refused(
                      ReadingColumn.WIDTH,
                      "the width of a pass, or the spacing of the nozzles",
                      "the volume per area is the flow divided by speed and width",
                      "measure the width that one pass wets, or the distance between nozzles")));
    }
    var boom = SprayLayout.boom(nozzles, spacing.get());
    if (width.isPresent() && Math.abs(width.get().ratioTo(boom.treatedWidth()) - 1) > SAME_WIDTH) {
      throw cells.refused(
          ReadingColumn.WIDTH,
          "the number of nozzles times their spacing, " + boom.treatedWidth(),
          "width, nozzles and spacing contradict each other",
          "measure them again, or leave the width empty");
    }
    return boom;
  }

  private Pace pace() {
    boolean course = cells.has(ReadingColumn.COURSE);
    if (cells.has(ReadingColumn.SPEED)) {
      if (cells.has(ReadingColumn.TIME)) {
        throw cells.refused(
            ReadingColumn.SPEED,
            "either a speed or the times over a course",
            "it is unknown which of the two counts",
            "empty one of the cells");
      }
      if (!cells.has(ReadingColumn.REFILL)) {
        return new StatedSpeed(cells.one(ReadingColumn.SPEED, Speed::parse).orElseThrow());
      }
    }
    if (!course) {
      throw cells.refused(
          ReadingColumn.COURSE,
          "the length of the course, or a speed",
          "the speed is the course divided by the time",
          "write the length that was walked or driven");
    }
    var length = cells.one(ReadingColumn.COURSE, Length::parse).orElseThrow();
    return cells.has(ReadingColumn.TIME)
        ? new TimedRuns(length, repeated(ReadingColumn.TIME, WorkTime::parse))
        : new UntimedCourse(length);
  }

  private Output output(int nozzles) {
    var given =
        Stream.of(ReadingColumn.CATCHES, ReadingColumn.OUTPUT, ReadingColumn.REFILL)
            .filter(cells::has)
            .toList();
    if (given.size() != 1) {
      throw cells.refused(
          given.isEmpty() ? ReadingColumn.CATCHES : given.get(1),
          "one of catches, output and refill",
          given.isEmpty()
              ? "without an output there is no volume per area"
              : "it is unknown which of them counts",
          given.isEmpty() ? "write what was caught" : "empty all but one of these cells");
    }
    return switch (given.get(0)) {
      case REFILL -> new Refilled(repeated(ReadingColumn.REFILL, Volume::parse));
      case OUTPUT -> new WholeOutput(repeated(ReadingColumn.OUTPUT, Volume::parse), catchTime());
      default -> new NozzleCatches(catches(nozzles), catchTime());
    };
  }

  private WorkTime catchTime() {
    return cells
        .one(ReadingColumn.CATCH_TIME, WorkTime::parse)
        .orElseThrow(
            () ->
                cells.refused(
                    ReadingColumn.CATCH_TIME,
                    "the seconds for which each catch was taken",
                    "the flow is the catch divided by its time",
                    "write the time, also where it is that of the course"));
  }

  private <Q extends Quantity<Q>> RepeatedReadings<Q> repeated(
      ReadingColumn column, Function<String, Q> reader) {
    var all = cells.several(column, reader);
    all.forEach(each -> cells.positive(column, each));
    return new RepeatedReadings<>(all);
  }

  private List<NozzleCatch> catches(int nozzles) {
    var parted = cells.byNozzle(ReadingColumn.CATCHES, Volume::parse);
    boolean byNozzle = parted.size() > 1 && parted.stream().anyMatch(one -> one.size() > 1);
    var flat = parted.stream().flatMap(List::stream).toList();
    if (!byNozzle && nozzles == 1) {
      return List.of(new NozzleCatch("1", flat));
    }
    List<List<Volume>> each = byNozzle ? parted : flat.stream().map(List::of).toList();
    if (each.size() > nozzles) {
      throw cells.refused(
          ReadingColumn.CATCHES,
          "at most one catch for each of the " + nozzles + " nozzles, or repeats told apart",
          "repeats of one nozzle and catches of several tell different flows",
          "part the nozzles by \"|\" and the repeats of one nozzle by \";\"");
    }
    var named = new ArrayList<NozzleCatch>();
    for (var volumes : each) {
      named.add(new NozzleCatch(Integer.toString(named.size() + 1), volumes));
    }
    return List.copyOf(named);
  }
}
