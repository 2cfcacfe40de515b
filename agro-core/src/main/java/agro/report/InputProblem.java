package agro.report;

import java.util.Objects;

/**
 * Input that cannot be used as it is. The message has four parts: what was read and where, what was
 * expected, why it matters, and how to mend it.
 */
public final class InputProblem extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final transient SourceLocation location;
  private final String read;
  private final String expected;
  private final String why;
  private final String cure;

  private InputProblem(
      SourceLocation location, String read, String expected, String why, String cure) {
    super(compose(location, read, expected, why, cure));
    this.location = location;
    this.read = read;
    this.expected = expected;
    this.why = why;
    this.cure = cure;
  }

  /**
   * Starts a problem with its first part.
   *
   * @param location where the value stands; {@link SourceLocation#NONE} when it came from code
   * @param read what was read, as a sentence without a full stop, naming the value
   * @return the next step, which asks for what was expected
   */
  public static Found at(SourceLocation location, String read) {
    return new Found(Objects.requireNonNull(location), Objects.requireNonNull(read));
  }

  /**
   * A problem of a value that came from code and not from a file.
   *
   * @param read what was given, as a sentence without a full stop, naming the value
   * @return the next step, which asks for what was expected
   */
  public static Found of(String read) {
    return at(SourceLocation.NONE, read);
  }

  private static String compose(
      SourceLocation location, String read, String expected, String why, String cure) {
    var where = location.toString();
    return (where.isEmpty() ? "" : where + ": ")
        + read
        + ".\n  Expected: "
        + expected
        + ".\n  Why: "
        + why
        + ".\n  Mend: "
        + cure
        + ".";
  }

  /**
   * Where the value stands.
   *
   * @return the location; {@link SourceLocation#NONE} for values from code
   */
  public SourceLocation location() {
    return location == null ? SourceLocation.NONE : location;
  }

  /**
   * What was read.
   *
   * @return a sentence without a full stop
   */
  public String read() {
    return read;
  }

  /**
   * What was expected instead.
   *
   * @return a sentence without a full stop
   */
  public String expected() {
    return expected;
  }

  /**
   * Why the value cannot be used.
   *
   * @return a sentence without a full stop
   */
  public String why() {
    return why;
  }

  /**
   * How to mend the input.
   *
   * @return a sentence without a full stop
   */
  public String cure() {
    return cure;
  }

  /**
   * The first part of a problem: what was read.
   *
   * @param location where it stands
   * @param read what was read
   */
  public record Found(SourceLocation location, String read) {
    /**
     * Adds what was expected.
     *
     * @param what the expectation, without a full stop
     * @return the next step, which asks for the reason
     */
    public Awaited expected(String what) {
      return new Awaited(this, Objects.requireNonNull(what));
    }
  }

  /**
   * The first two parts of a problem.
   *
   * @param found what was read
   * @param expected what was expected
   */
  public record Awaited(Found found, String expected) {
    /**
     * Adds the reason.
     *
     * @param reason why the value cannot be used, without a full stop
     * @return the last step, which asks for the cure
     */
    public Reasoned because(String reason) {
      return new Reasoned(this, Objects.requireNonNull(reason));
    }
  }

  /**
   * The first three parts of a problem.
   *
   * @param awaited what was read and expected
   * @param why the reason
   */
  public record Reasoned(Awaited awaited, String why) {
    /**
     * Completes the problem.
     *
     * @param cure how to mend the input, without a full stop
     * @return the problem, ready to be thrown
     */
    public InputProblem mend(String cure) {
      var found = awaited.found();
      return new InputProblem(
          found.location(), found.read(), awaited.expected(), why, Objects.requireNonNull(cure));
    }
  }
}
