package agro.working;

import agro.report.ReadReport;
import agro.source.Reference;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A result laid out for a reader, independent of the form in which it is printed.
 *
 * @param title heading, or empty when the blocks carry their own
 * @param blocks the blocks from top to bottom
 */
public record Presentation(String title, List<Block> blocks) implements Presentable {

  /** Copies the blocks. */
  public Presentation {
    Objects.requireNonNull(title, "title");
    blocks = List.copyOf(blocks);
  }

  /**
   * Starts a presentation.
   *
   * @param title heading
   * @return a builder without blocks
   */
  public static Builder titled(String title) {
    return new Builder(title);
  }

  /**
   * A presentation of one block that carries its own heading.
   *
   * @param block the block
   * @return the presentation
   */
  public static Presentation untitled(Block block) {
    return new Presentation("", List.of(block));
  }

  /**
   * What a reader did to its input, with at most twenty entries of each kind.
   *
   * @param report the report
   * @return counts of each kind, a table of entries, and how many entries the table leaves out
   */
  public static Presentation of(ReadReport report) {
    return ReportLayout.lay(report);
  }

  /**
   * The presentation as plain text, at most 100 columns wide where words and tables allow.
   *
   * @return lines without a line break at the end
   */
  public String toText() {
    return joined(title.isBlank() ? "" : underlined(), Block::toText, "\n\n");
  }

  /**
   * The presentation as Markdown.
   *
   * @return lines without a line break at the end
   */
  public String toMarkdown() {
    var heading = title.isBlank() ? "" : "## " + MarkdownText.escape(title);
    return joined(heading, Block::toMarkdown, "\n\n");
  }

  /**
   * The presentation as HTML without style and script; class names start with {@code agro-}.
   *
   * @return a section element; all text is escaped
   */
  public String toHtml() {
    var heading = title.isBlank() ? "" : HtmlText.element("h2", title);
    return "<section class=\"agro-presentation\">\n"
        + joined(heading, Block::toHtml, "\n")
        + "\n</section>";
  }

  private String underlined() {
    var lines = PlainText.wrap(title, PlainText.LINE_WIDTH);
    int width = lines.stream().mapToInt(PlainText::width).max().orElse(0);
    return String.join("\n", lines) + "\n" + "=".repeat(width);
  }

  private String joined(String heading, Function<Block, String> form, String gap) {
    var parts = new ArrayList<String>();
    parts.add(heading);
    blocks.stream().map(form).forEach(parts::add);
    return parts.stream().filter(part -> !part.isEmpty()).collect(Collectors.joining(gap));
  }

  @Override
  public Presentation presentation() {
    return this;
  }

  /** Collects blocks from top to bottom; not thread-safe. */
  public static final class Builder {
    private final String title;
    private final List<Block> blocks = new ArrayList<>();
    private final List<Block.Fact> pendingFacts = new ArrayList<>();

    private Builder(String title) {
      this.title = Objects.requireNonNull(title, "title");
    }

    /**
     * Adds a block.
     *
     * @param block the block
     * @return this builder
     */
    public Builder block(Block block) {
      endFacts();
      blocks.add(Objects.requireNonNull(block, "block"));
      return this;
    }

    /**
     * Adds a paragraph of plain text.
     *
     * @param text one or more sentences
     * @return this builder
     */
    public Builder paragraph(String text) {
      return block(new Block.Paragraph(text));
    }

    /**
     * Adds a named value; facts that follow each other form one block.
     *
     * @param name what is stated
     * @param value the value with its unit
     * @return this builder
     */
    public Builder fact(String name, String value) {
      pendingFacts.add(new Block.Fact(name, value));
      return this;
    }

    /**
     * Adds a table.
     *
     * @param table the table
     * @return this builder
     */
    public Builder table(ResultTable table) {
      return block(new Block.TableBlock(table));
    }

    /**
     * Adds the steps of a calculation.
     *
     * @param working the steps
     * @return this builder
     */
    public Builder working(Working working) {
      return block(new Block.WorkingBlock(working));
    }

    /**
     * Adds cautions.
     *
     * @param cautions the cautions, usually {@link Caution#all()}; an empty list adds nothing
     * @return this builder
     */
    public Builder cautions(List<Caution> cautions) {
      return cautions.isEmpty() ? this : block(new Block.CautionBlock(cautions));
    }

    /**
     * Adds a list of sources.
     *
     * @param references the sources; an empty list adds nothing
     * @return this builder
     */
    public Builder sources(List<Reference> references) {
      return references.isEmpty() ? this : block(new Block.SourcesBlock(references));
    }

    /**
     * Adds all blocks of another presentation, its title as a paragraph.
     *
     * @param part the other presentation
     * @return this builder
     */
    public Builder part(Presentation part) {
      if (!part.title().isBlank()) {
        paragraph(part.title());
      }
      part.blocks().forEach(this::block);
      return this;
    }

    /**
     * The finished presentation.
     *
     * @return an immutable presentation
     */
    public Presentation build() {
      endFacts();
      return new Presentation(title, blocks);
    }

    private void endFacts() {
      if (!pendingFacts.isEmpty()) {
        blocks.add(new Block.Facts(pendingFacts));
        pendingFacts.clear();
      }
    }
  }
}
