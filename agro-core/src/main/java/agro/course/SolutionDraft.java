package agro.course;

import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Collects the solution of a part: its steps, whose names and formulas lie in the bundle of the
 * topic under {@code KEY.step} and {@code KEY.formula}, and its typical slips. Sources stand below
 * the exercise, not in its steps. Not for several threads.
 */
public final class SolutionDraft {

  private final CourseWords words;
  private final List<TypicalSlip> slips = new ArrayList<>();
  private Working working;

  private SolutionDraft(CourseWords words, Working working) {
    this.words = words;
    this.working = working;
  }

  /**
   * Begins a solution.
   *
   * @param words words of the topic
   * @param title what is calculated, in the language of the words
   * @return a draft without steps
   */
  public static SolutionDraft titled(CourseWords words, String title) {
    return new SolutionDraft(Objects.requireNonNull(words, "words"), Working.of(title));
  }

  /**
   * Adds a step.
   *
   * @param key where its name and its formula lie in the bundle
   * @param substitution the formula with numbers in it, or empty
   * @param result value with its unit
   * @return this draft
   */
  public SolutionDraft step(String key, String substitution, String result) {
    working =
        working.step(words.say(key + ".step"), words.say(key + ".formula"), substitution, result);
    return this;
  }

  /**
   * Adds a typical wrong answer.
   *
   * @param mistake the mistake
   * @param answer what comes out when it is made
   * @return this draft
   */
  public SolutionDraft slip(Mistake mistake, ExpectedAnswer answer) {
    slips.add(new TypicalSlip(mistake, answer));
    return this;
  }

  /**
   * Ends the solution.
   *
   * @param answer the right answer
   * @return the solved part
   */
  public SolvedPart answer(ExpectedAnswer answer) {
    return new SolvedPart(answer, working, slips);
  }
}
