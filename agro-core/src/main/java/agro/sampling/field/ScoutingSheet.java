package agro.sampling.field;

import agro.reading.SafeFile;
import agro.report.InputProblem;
import agro.sampling.SamplingUnit;
import agro.sampling.sequential.SequentialPlan;
import agro.sampling.sequential.TallyPlan;
import agro.source.Reference;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Sheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * A plan on one page of A4 to take into the field: how to go about it, the stop lines as a figure
 * and as a table with boxes for the counts, and the sources.
 *
 * @param plan the plan, which must have an end
 * @param unit what one count belongs to
 * @param title what is counted where
 * @param tally animals above which a unit is marked; nothing when animals are added up
 * @param instructions sentences that come before those that every sheet has
 * @param sources further sources
 */
public record ScoutingSheet(
    SequentialPlan plan,
    SamplingUnit unit,
    String title,
    OptionalInt tally,
    List<String> instructions,
    List<Reference> sources) {

  /** Most instructions that the page has room for. */
  private static final int MOST_INSTRUCTIONS = 4;

  /**
   * Checks that the plan has an end.
   *
   * @throws InputProblem when it has none, or there are more instructions than fit
   */
  public ScoutingSheet {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(tally, "tally");
    instructions = List.copyOf(instructions);
    sources = List.copyOf(sources);
    if (plan.mostUnits().isEmpty()) {
      throw InputProblem.of("a sheet for a plan without an end")
          .expected("a greatest number of units")
          .because("a page holds so many boxes and no more")
          .mend("end the plan with SequentialPlan.truncated");
    }
    if (instructions.size() > MOST_INSTRUCTIONS || title.isBlank()) {
      throw InputProblem.of(instructions.size() + " instructions under \"" + title + "\"")
          .expected("a title and at most " + MOST_INSTRUCTIONS + " instructions")
          .because("all has to stand on one page")
          .mend("name what is counted, and keep to what the observer needs");
    }
  }

  /**
   * A sheet for a plan that adds up animals.
   *
   * @param plan the plan, which must have an end
   * @param unit what one count belongs to
   * @param title what is counted where
   * @return the sheet
   * @throws InputProblem when the plan has no end
   */
  public static ScoutingSheet of(SequentialPlan plan, SamplingUnit unit, String title) {
    return new ScoutingSheet(plan, unit, title, OptionalInt.empty(), List.of(), List.of());
  }

  /**
   * A sheet for a plan that marks units above a tally.
   *
   * @param tallies where the plan comes from
   * @param plan the plan on marked units, which must have an end
   * @param unit what one count belongs to
   * @param title what is counted where
   * @return the sheet
   * @throws InputProblem when the plan has no end
   */
  public static ScoutingSheet of(
      TallyPlan tallies, SequentialPlan plan, SamplingUnit unit, String title) {
    return new ScoutingSheet(
        plan, unit, title, OptionalInt.of(tallies.relation().tally()), List.of(), List.of());
  }

  /**
   * Adds an instruction of one's own, such as which plants to take.
   *
   * @param sentence the instruction
   * @return a new sheet
   * @throws InputProblem when there are more than fit
   */
  public ScoutingSheet withInstruction(String sentence) {
    var more = new ArrayList<>(instructions);
    more.add(sentence);
    return new ScoutingSheet(plan, unit, title, tally, more, sources);
  }

  /**
   * Adds a source, such as that of the threshold.
   *
   * @param source the source
   * @return a new sheet
   */
  public ScoutingSheet withSource(Reference source) {
    var more = new ArrayList<>(sources);
    more.add(source);
    return new ScoutingSheet(plan, unit, title, tally, instructions, more);
  }

  /**
   * The page.
   *
   * @return a page of A4
   */
  public Sheet sheet() {
    return new ScoutingSheetLayout(this).draw();
  }

  /**
   * Writes the page for a browser to print.
   *
   * @param file the HTML file, replaced if it is there
   */
  public void saveHtml(Path file) {
    SafeFile.writeText(file, sheet().toHtml());
  }

  /**
   * Writes the page as a drawing.
   *
   * @param file the SVG file, replaced if it is there
   */
  public void saveSvg(Path file) {
    SafeFile.writeText(file, sheet().toSvg());
  }

  /** Every instruction in order. */
  List<String> allInstructions() {
    var all = new ArrayList<>(instructions);
    boolean marks = tally.isPresent();
    all.add(
        "Take each "
            + unit.words()
            + " as it comes on a path through the whole field, not where damage shows.");
    all.add(
        marks
            ? "Mark it with 1 when it has more than "
                + tally.getAsInt()
                + (tally.getAsInt() == 1 ? " animal" : " animals")
                + ", else with 0. Add up the marks."
            : "Write down its count, zero too, and the total so far.");
    all.add("Stop when the total is at or below the low limit, or at or above the high limit.");
    all.add("After " + plan.mostUnits().orElseThrow() + " stop in any case: " + end());
    return all;
  }

  private String end() {
    double middle = plan.mostUnits().orElseThrow() * plan.bounds().middle();
    return switch (plan.endRule()) {
      case LEAVE_UNDECIDED -> "the field stays undecided; count again in a few days.";
      case BY_THE_MIDDLE ->
          "the field is low with a total below " + Numbers.fixed(middle, 1) + ", else high.";
      case CALL_HIGH -> "the field is high.";
      case CALL_LOW -> "the field is low.";
    };
  }

  /** Sources and cautions as printed at the foot. */
  String foot() {
    var line = new StringBuilder("Plan: ").append(plan.bounds().words()).append(". Sources: ");
    line.append(plan.bounds().source().citation());
    sources.forEach(source -> line.append("; ").append(source.citation()));
    return line.append(". ")
        .append(Caution.LABEL_FIRST.line())
        .append(' ')
        .append(Caution.LICENSED_ADVISER.line())
        .toString();
  }
}
