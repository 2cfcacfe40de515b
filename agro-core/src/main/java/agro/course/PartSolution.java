package agro.course;

/** How a part is solved, given the answers to the parts before it. */
@FunctionalInterface
public interface PartSolution {

  /**
   * The solution of the part.
   *
   * @param earlier answers to the parts before, the right ones or a student's own
   * @return right answer, working and typical slips
   * @throws IllegalArgumentException if nothing can be computed from these earlier answers
   */
  SolvedPart solve(EarlierAnswers earlier);
}
