package agro.course;

import agro.source.Reference;
import agro.working.Block;
import agro.working.Caution;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What a type of exercise sets: the story with its numbers, and the questions.
 *
 * @param title a few words
 * @param story one paragraph each
 * @param exhibits tables and the like that the story refers to
 * @param givens what is given, by name
 * @param parts the questions in order, at least one
 * @param cautions cautions that belong to doses and intervals
 * @param sources where facts come from, habits of the trade marked as such
 * @param aids what a student needs on the table where there is no computer
 */
public record ExerciseBody(
    String title,
    List<String> story,
    List<Block> exhibits,
    Givens givens,
    List<ExercisePart> parts,
    List<Caution> cautions,
    List<Reference> sources,
    Set<ExamAid> aids) {

  /** Copies the lists and refuses an exercise without a question. */
  public ExerciseBody {
    story = List.copyOf(story);
    exhibits = List.copyOf(exhibits);
    parts = List.copyOf(parts);
    cautions = List.copyOf(cautions);
    sources = List.copyOf(sources);
    aids = Set.copyOf(aids);
    if (title.isBlank() || story.isEmpty() || parts.isEmpty()) {
      throw new IllegalArgumentException("an exercise needs a title, a story and a question");
    }
  }

  /**
   * Begins an exercise.
   *
   * @param title a few words
   * @return a builder
   */
  public static Builder titled(String title) {
    return new Builder(title);
  }

  /** Collects an exercise from top to bottom. */
  public static final class Builder {
    private final String title;
    private final List<String> story = new ArrayList<>();
    private final List<Block> exhibits = new ArrayList<>();
    private Givens givens = Givens.none();
    private final List<ExercisePart> parts = new ArrayList<>();
    private final List<Caution> cautions = new ArrayList<>();
    private final List<Reference> sources = new ArrayList<>();
    private final Set<ExamAid> aids = EnumSet.noneOf(ExamAid.class);

    private Builder(String title) {
      this.title = title;
    }

    /**
     * Adds a paragraph of the story.
     *
     * @param paragraph the paragraph
     * @return this builder
     */
    public Builder story(String paragraph) {
      story.add(paragraph);
      return this;
    }

    /**
     * Adds a table or the like.
     *
     * @param exhibit a block
     * @return this builder
     */
    public Builder exhibit(Block exhibit) {
      exhibits.add(exhibit);
      return this;
    }

    /**
     * Sets what is given.
     *
     * @param values all givens
     * @return this builder
     */
    public Builder givens(Givens values) {
      givens = values;
      return this;
    }

    /**
     * Adds a question that counts as much as any other.
     *
     * @param question the question
     * @param solution how it is solved
     * @return this builder
     */
    public Builder part(String question, PartSolution solution) {
      return part(question, 1, solution);
    }

    /**
     * Adds a question.
     *
     * @param question the question
     * @param weight its share of the marks relative to the other parts
     * @param solution how it is solved
     * @return this builder
     */
    public Builder part(String question, double weight, PartSolution solution) {
      parts.add(new ExercisePart(question, weight, solution));
      return this;
    }

    /**
     * Adds cautions.
     *
     * @param lines the cautions, usually {@link Caution#all()}
     * @return this builder
     */
    public Builder cautions(List<Caution> lines) {
      cautions.addAll(lines);
      return this;
    }

    /**
     * Adds a source.
     *
     * @param source where a fact comes from
     * @return this builder
     */
    public Builder source(Reference source) {
      sources.add(source);
      return this;
    }

    /**
     * Adds what is needed on the table.
     *
     * @param aid table or paper
     * @return this builder
     */
    public Builder aid(ExamAid aid) {
      aids.add(aid);
      return this;
    }

    /**
     * The exercise.
     *
     * @return what has been collected
     */
    public ExerciseBody build() {
      return new ExerciseBody(title, story, exhibits, givens, parts, cautions, sources, aids);
    }
  }
}
