package agro.sampling.injury;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/**
 * The mean of a field that was counted by parts, such as edge and middle: Σ W m with W the share of
 * the field in each part, and variance Σ W² s² / n (1 − n / N).
 *
 * @param parts the parts, each with its size
 */
public record StratifiedMean(List<Stratum> parts) implements Presentable {

  /**
   * One part of a field.
   *
   * @param name such as "edge"
   * @param units sampling units in the whole part, N, or any measure of its size with the
   *     correction for a small part left out
   * @param counts counts from this part
   * @param finite whether the size is a number of sampling units, so that a part which was mostly
   *     counted has a smaller error
   */
  public record Stratum(String name, double units, CountSample counts, boolean finite) {
    /** Checks the size. */
    public Stratum {
      if (!(units > 0 && Double.isFinite(units)) || (finite && units < counts.size())) {
        throw InputProblem.of(name + ": a size of " + units + " with " + counts.size() + " counted")
            .expected("a size above 0, and not fewer units than were counted")
            .because("each part counts in the mean by its size")
            .mend("give the plants of the part, or its area as a share of the field");
      }
    }

    /**
     * A part whose size is an area or a share.
     *
     * @param name such as "edge"
     * @param size size in any measure, the same for all parts
     * @param counts counts from this part
     * @return the part
     */
    public static Stratum ofSize(String name, double size, CountSample counts) {
      return new Stratum(name, size, counts, false);
    }

    /**
     * A part whose size is a number of sampling units.
     *
     * @param name such as "edge"
     * @param units sampling units in the whole part
     * @param counts counts from this part
     * @return the part
     */
    public static Stratum ofUnits(String name, double units, CountSample counts) {
      return new Stratum(name, units, counts, true);
    }

    private double varianceOfMean() {
      double correction = finite ? 1 - counts.size() / units : 1;
      return counts.variance() / counts.size() * correction;
    }
  }

  /**
   * Checks the parts.
   *
   * @throws InputProblem when there is none, names repeat, or units differ
   */
  public StratifiedMean {
    parts = List.copyOf(parts);
    var names = new HashSet<String>();
    parts.forEach(part -> names.add(part.name()));
    if (parts.isEmpty() || names.size() < parts.size()) {
      throw InputProblem.of(parts.size() + " parts named " + names)
          .expected("at least one part, each with a name of its own")
          .because("it is unknown which counts belong to which part")
          .mend("name them, for example edge and middle");
    }
    CountSample.requireOneUnit(parts.stream().map(Stratum::counts).toList(), "a field");
  }

  /**
   * A field from its parts.
   *
   * @param parts the parts
   * @return the field
   * @throws InputProblem when there is none, names repeat, or units differ
   */
  public static StratifiedMean of(Stratum... parts) {
    return new StratifiedMean(List.of(parts));
  }

  private double size() {
    return parts.stream().mapToDouble(Stratum::units).sum();
  }

  /**
   * Mean and standard error of the field.
   *
   * @return the density
   */
  public MeanDensity density() {
    double mean = 0;
    double variance = 0;
    for (var part : parts) {
      double weight = part.units() / size();
      mean += weight * part.counts().mean();
      variance += weight * weight * part.varianceOfMean();
    }
    return new MeanDensity(parts.get(0).counts().unit(), mean, Math.sqrt(variance));
  }

  /**
   * How many of so many units to look at in each part, so that the error of the mean is smallest:
   * in proportion to size times standard deviation (Neyman).
   *
   * @param units units to look at in all, 1 or more
   * @return units for each part, before rounding
   * @throws InputProblem when no part varies
   */
  public List<Double> bestAllocation(int units) {
    double sum = 0;
    for (var part : parts) {
      sum += part.units() * Math.sqrt(part.counts().variance());
    }
    if (!(sum > 0)) {
      throw InputProblem.of("parts in which all counts are alike")
          .expected("counts that vary in at least one part")
          .because("the allocation follows from how counts vary")
          .mend("allocate by size");
    }
    var numbers = new ArrayList<Double>();
    for (var part : parts) {
      numbers.add(units * part.units() * Math.sqrt(part.counts().variance()) / sum);
    }
    return List.copyOf(numbers);
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var part : parts) {
      rows.add(
          List.of(
              Cell.text(part.name()),
              Cell.number(100 * part.units() / size(), 1),
              Cell.number(part.counts().size(), 0),
              Cell.number(part.counts().mean(), 2),
              Cell.number(Math.sqrt(part.varianceOfMean()), 3)));
    }
    var unit = "per " + parts.get(0).counts().unit().words();
    return Presentation.titled("Mean of the field from its parts")
        .fact("Mean", density().toString())
        .table(
            ResultTable.of(
                "Parts",
                List.of(
                    Column.of("Part"),
                    Column.of("Share of the field", "%"),
                    Column.of("Units counted"),
                    Column.of("Mean", unit),
                    Column.of("Standard error", unit)),
                rows))
        .paragraph(
            "The plain mean of all counts would be "
                + Numbers.significant(plainMean(), 4)
                + ": it weighs each part by how much was counted there.")
        .sources(List.of(SamplingBibliography.COCHRAN_1977))
        .build();
  }

  private double plainMean() {
    long total = parts.stream().mapToLong(part -> part.counts().total()).sum();
    int n = parts.stream().mapToInt(part -> part.counts().size()).sum();
    return (double) total / n;
  }
}
