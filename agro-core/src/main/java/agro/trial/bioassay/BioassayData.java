package agro.trial.bioassay;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The groups of one assay.
 *
 * @param title what was tested on what, for the heading of results
 * @param axis what the doses measure
 * @param endPoint which animals count as responding
 * @param groups at least one group; a group of dose 0 is a control
 * @param report what the reader of a file did, empty for data from code
 */
public record BioassayData(
    String title, DoseAxis axis, EndPoint endPoint, List<DoseGroup> groups, ReadReport report)
    implements Presentable {

  /** Refuses an assay without groups or end point. */
  public BioassayData {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(axis, "axis");
    Objects.requireNonNull(report, "report");
    EndPoints.stated(endPoint);
    groups = List.copyOf(groups);
    if (groups.isEmpty()) {
      throw InputProblem.of("an assay without groups")
          .expected("groups of animals with their doses")
          .because("there is nothing to fit")
          .mend("add a group for each dose");
    }
  }

  /**
   * An assay from code.
   *
   * @param title what was tested on what
   * @param axis what the doses measure
   * @param endPoint which animals count as responding
   * @param groups at least one group
   * @return the assay
   * @throws InputProblem when there are no groups or no end point
   */
  public static BioassayData of(
      String title, DoseAxis axis, EndPoint endPoint, List<DoseGroup> groups) {
    return new BioassayData(
        title, axis, endPoint, groups, new ReadReport("code", groups.size(), List.of()));
  }

  /**
   * The series with at least one dosed group.
   *
   * @return names in the order of the data; one empty name when series were not told apart
   */
  public List<String> series() {
    var names = new LinkedHashSet<String>();
    for (var group : groups) {
      if (!group.isControl() || !group.series().isEmpty()) {
        names.add(group.series());
      }
    }
    return List.copyOf(names);
  }

  /**
   * The days or batches.
   *
   * @return names in the order of the data
   */
  public List<String> days() {
    var names = new LinkedHashSet<String>();
    for (var group : groups) {
      if (!group.isControl() || !group.day().isEmpty()) {
        names.add(group.day());
      }
    }
    return List.copyOf(names);
  }

  /**
   * The controls.
   *
   * @return groups of dose 0, possibly none
   */
  public List<DoseGroup> controls() {
    return groups.stream().filter(DoseGroup::isControl).toList();
  }

  /**
   * One series with its own controls, or with the shared ones when it has none of its own.
   *
   * @param name name of the series
   * @return a smaller assay
   * @throws InputProblem when there is no such series
   */
  public BioassayData ofSeries(String name) {
    var known = series();
    if (!known.contains(name)) {
      throw InputProblem.of("no series \"" + name + "\"")
          .expected("one of " + known)
          .because("a curve needs groups")
          .mend("write the name as it stands in the data");
    }
    var own = new ArrayList<DoseGroup>();
    var shared = new ArrayList<DoseGroup>();
    boolean controlled = false;
    for (var group : groups) {
      if (group.series().equals(name)) {
        own.add(group);
        controlled |= group.isControl();
      } else if (group.isControl() && group.series().isEmpty()) {
        shared.add(group);
      }
    }
    if (!controlled) {
      own.addAll(shared);
    }
    return with(title.isEmpty() ? name : title + ", " + name, own);
  }

  /**
   * These data with the days taken for series, to compare days as series are compared.
   *
   * @return the same groups, each in the series of its day
   */
  public BioassayData daysAsSeries() {
    return with(title, groups.stream().map(each -> each.inSeries(each.day())).toList());
  }

  @Override
  public Presentation presentation() {
    return AssayPrint.page(this);
  }

  @Override
  public String toString() {
    return (title.isEmpty() ? "assay" : title)
        + ": "
        + groups.size()
        + " groups of "
        + groups.stream().mapToInt(DoseGroup::exposed).sum()
        + " animals, "
        + axis.words()
        + "; "
        + endPoint.words();
  }

  BioassayData with(String newTitle, List<DoseGroup> newGroups) {
    return new BioassayData(newTitle, axis, endPoint, newGroups, report);
  }

  /** Responding and exposed animals of all controls together, if there is a control. */
  Optional<ShareCount> controlCount() {
    int responded = 0;
    int exposed = 0;
    for (var group : groups) {
      if (group.isControl()) {
        responded += group.responded();
        exposed += group.exposed();
      }
    }
    return exposed == 0 ? Optional.empty() : Optional.of(new ShareCount(responded, exposed));
  }
}
