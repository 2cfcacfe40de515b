package agro.course.practical;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.source.Standing;
import agro.units.Numbers;
import java.util.Objects;

/**
 * How far the spray volume of a group may be from the one that it is compared with.
 *
 * @param share share of that volume, above 0 and below 1
 * @param source who asks for it, or that nobody does
 */
public record VolumeTolerance(double share, Reference source) {

  /** Ten per cent, a common practice without a source. */
  public static final VolumeTolerance TEN_PER_CENT =
      new VolumeTolerance(0.10, PracticalSources.TEN_PER_CENT);

  /** Five per cent, as recommended in the United States and reported in the farming press. */
  public static final VolumeTolerance FIVE_PER_CENT =
      new VolumeTolerance(0.05, PracticalSources.FIVE_PER_CENT);

  /** Refuses shares that let everything or nothing pass. */
  public VolumeTolerance {
    Objects.requireNonNull(source, "source");
    if (!(share > 0 && share < 1)) {
      throw InputProblem.of("a tolerance of " + Numbers.plain(share))
          .expected("a share above 0 and below 1, usually 0.05 to 0.10")
          .because("groups further off than this share are named")
          .mend("write 10 % as 0.10");
    }
  }

  /**
   * A tolerance of the teacher's own choice.
   *
   * @param share share of the volume, above 0 and below 1
   * @return the tolerance, marked as a common practice without a source
   * @throws InputProblem if the share is out of range
   */
  public static VolumeTolerance of(double share) {
    return new VolumeTolerance(share, PracticalSources.OWN_LIMIT);
  }

  /**
   * Whether no publication backs the tolerance.
   *
   * @return true for a common practice
   */
  public boolean isCommonPractice() {
    return source.standing() == Standing.COMMON_PRACTICE;
  }

  @Override
  public String toString() {
    return Numbers.significant(100 * share, 3) + " %";
  }
}
