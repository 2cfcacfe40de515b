package agro.working;

import agro.source.Reference;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The steps of a calculation as a teacher would write them on a blackboard, with their sources and
 * the cautions that belong to the result.
 *
 * @param title what is calculated
 * @param steps the steps in order
 * @param cautions cautions printed below the steps, possibly none
 */
public record Working(String title, List<Step> steps, List<Caution> cautions)
    implements Presentable {

  /**
   * One step. In print, substitution and result each follow an equals sign below the formula.
   *
   * @param name what the step finds, as a phrase
   * @param formula formula in symbols, for example {@code "M = (Tmax + Tmin) / 2"}; empty for a
   *     step in words
   * @param substitution right-hand side with values and units, without a leading equals sign, for
   *     example {@code "(30 °C + 10 °C) / 2"}; empty when nothing is put in
   * @param result value with its unit, or a sentence for a step in words
   * @param references where the formula comes from, possibly none
   */
  public record Step(
      String name, String formula, String substitution, String result, List<Reference> references) {
    /** Refuses a step without name or result. */
    public Step {
      Objects.requireNonNull(formula, "formula");
      Objects.requireNonNull(substitution, "substitution");
      references = List.copyOf(references);
      if (name.isBlank() || result.isBlank()) {
        throw new IllegalArgumentException("a step needs a name and a result");
      }
    }

    /**
     * The lines below the name of the step: formula, substitution and result, as far as they are
     * given, with the equals signs between them.
     *
     * @return one to three lines
     */
    public List<String> lines() {
      var lines = new ArrayList<String>();
      if (!formula.isBlank()) {
        lines.add(PlainText.oneLine(formula));
      }
      if (!substitution.isBlank()) {
        lines.add((lines.isEmpty() ? "" : "= ") + PlainText.oneLine(substitution));
      }
      lines.add((lines.isEmpty() ? "" : "= ") + PlainText.oneLine(result));
      return List.copyOf(lines);
    }
  }

  /** Copies the lists and refuses a working without a title. */
  public Working {
    steps = List.copyOf(steps);
    cautions = List.copyOf(cautions);
    if (title.isBlank()) {
      throw new IllegalArgumentException("a working needs a title");
    }
  }

  /**
   * A working without steps, to be continued with {@link #step}.
   *
   * @param title what is calculated
   * @return the working
   */
  public static Working of(String title) {
    return new Working(title, List.of(), List.of());
  }

  /**
   * This working with one more step.
   *
   * @param name what the step finds
   * @param formula formula in symbols, or empty
   * @param substitution right-hand side with values and units, or empty
   * @param result value with its unit
   * @param references where the formula comes from
   * @return a new working
   */
  public Working step(
      String name, String formula, String substitution, String result, Reference... references) {
    var more = new ArrayList<>(steps);
    more.add(new Step(name, formula, substitution, result, List.of(references)));
    return new Working(title, more, cautions);
  }

  /**
   * This working followed by the steps of another one, whose cautions are taken over.
   *
   * @param later the working whose steps come after these
   * @return a new working under this title
   */
  public Working followedBy(Working later) {
    var more = new ArrayList<>(steps);
    more.addAll(later.steps);
    var both = new ArrayList<>(cautions);
    later.cautions.stream().filter(caution -> !both.contains(caution)).forEach(both::add);
    return new Working(title, more, both);
  }

  /**
   * This working with cautions below its steps.
   *
   * @param cautions the cautions, usually {@link Caution#all()}
   * @return a new working
   */
  public Working withCautions(List<Caution> cautions) {
    return new Working(title, steps, cautions);
  }

  /**
   * The sources of all steps, each once, in the order of the steps.
   *
   * @return the references
   */
  public List<Reference> references() {
    return steps.stream().flatMap(step -> step.references().stream()).distinct().toList();
  }

  /**
   * The working as plain text with numbered steps.
   *
   * @return lines without a line break at the end
   */
  public String toText() {
    return WorkingForms.text(this);
  }

  /**
   * The working as Markdown with numbered steps.
   *
   * @return lines without a line break at the end
   */
  public String toMarkdown() {
    return WorkingForms.markdown(this);
  }

  /**
   * The working as HTML with numbered steps.
   *
   * @return a section element; all text is escaped
   */
  public String toHtml() {
    return WorkingForms.html(this);
  }

  /**
   * The working as LaTeX with numbered steps, for a document with UTF-8 input that loads no package
   * beyond {@code textcomp}.
   *
   * @return lines without a line break at the end
   */
  public String toLatex() {
    return WorkingForms.latex(this);
  }

  @Override
  public Presentation presentation() {
    return Presentation.untitled(new Block.WorkingBlock(this));
  }
}
