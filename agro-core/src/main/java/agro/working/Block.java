package agro.working;

import agro.source.Reference;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** One block of a {@link Presentation}. */
public sealed interface Block
    permits Block.Paragraph,
        Block.Facts,
        Block.TableBlock,
        Block.WorkingBlock,
        Block.CautionBlock,
        Block.SourcesBlock,
        Block.Folded {

  /**
   * The block as plain text.
   *
   * @return lines without a line break at the end
   */
  String toText();

  /**
   * The block as Markdown.
   *
   * @return lines without a line break at the end
   */
  String toMarkdown();

  /**
   * The block as HTML; all text is escaped.
   *
   * @return one element
   */
  String toHtml();

  /**
   * A paragraph of plain text.
   *
   * @param text one or more sentences
   */
  record Paragraph(String text) implements Block {
    /** Refuses null. */
    public Paragraph {
      Objects.requireNonNull(text, "text");
    }

    @Override
    public String toText() {
      return String.join("\n", PlainText.wrap(text, PlainText.LINE_WIDTH));
    }

    @Override
    public String toMarkdown() {
      return MarkdownText.escape(text);
    }

    @Override
    public String toHtml() {
      return HtmlText.element("p", text);
    }
  }

  /**
   * A named value.
   *
   * @param name what is stated
   * @param value the value with its unit
   */
  record Fact(String name, String value) {
    /** Refuses nulls. */
    public Fact {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(value, "value");
    }
  }

  /**
   * Named values, one a line.
   *
   * @param facts the values in order
   */
  record Facts(List<Fact> facts) implements Block {
    /** Copies the list. */
    public Facts {
      facts = List.copyOf(facts);
    }

    @Override
    public String toText() {
      int width = facts.stream().mapToInt(fact -> PlainText.width(fact.name())).max().orElse(0) + 3;
      return facts.stream()
          .map(
              fact -> PlainText.hanging(PlainText.padRight(fact.name() + ":", width), fact.value()))
          .collect(Collectors.joining("\n"));
    }

    @Override
    public String toMarkdown() {
      return facts.stream()
          .map(
              fact ->
                  "- "
                      + MarkdownText.escape(fact.name())
                      + ": "
                      + MarkdownText.escape(fact.value()))
          .collect(Collectors.joining("\n"));
    }

    @Override
    public String toHtml() {
      var html = new StringBuilder("<dl class=\"agro-facts\">\n");
      for (var fact : facts) {
        html.append(HtmlText.element("dt", fact.name()))
            .append(HtmlText.element("dd", fact.value()))
            .append('\n');
      }
      return html.append("</dl>").toString();
    }
  }

  /**
   * A table.
   *
   * @param table the table
   */
  record TableBlock(ResultTable table) implements Block {
    /** Refuses null. */
    public TableBlock {
      Objects.requireNonNull(table, "table");
    }

    @Override
    public String toText() {
      return table.toText();
    }

    @Override
    public String toMarkdown() {
      return table.toMarkdown();
    }

    @Override
    public String toHtml() {
      return table.toHtml();
    }
  }

  /**
   * The steps of a calculation.
   *
   * @param working the steps
   */
  record WorkingBlock(Working working) implements Block {
    /** Refuses null. */
    public WorkingBlock {
      Objects.requireNonNull(working, "working");
    }

    @Override
    public String toText() {
      return working.toText();
    }

    @Override
    public String toMarkdown() {
      return working.toMarkdown();
    }

    @Override
    public String toHtml() {
      return working.toHtml();
    }
  }

  /**
   * Cautions under their heading.
   *
   * @param cautions the cautions in order
   */
  record CautionBlock(List<Caution> cautions) implements Block {
    /** Copies the list. */
    public CautionBlock {
      cautions = List.copyOf(cautions);
    }

    @Override
    public String toText() {
      return WorkingForms.cautionsText(cautions);
    }

    @Override
    public String toMarkdown() {
      return WorkingForms.cautionsMarkdown(cautions);
    }

    @Override
    public String toHtml() {
      return WorkingForms.cautionsHtml(cautions);
    }
  }

  /**
   * Sources, each once.
   *
   * @param references the sources in order
   */
  record SourcesBlock(List<Reference> references) implements Block {
    /** Copies the list and leaves out repetitions. */
    public SourcesBlock {
      references = references.stream().distinct().toList();
    }

    @Override
    public String toText() {
      return WorkingForms.sourcesText(references);
    }

    @Override
    public String toMarkdown() {
      return WorkingForms.sourcesMarkdown(references);
    }

    @Override
    public String toHtml() {
      return WorkingForms.sourcesHtml(references);
    }
  }

  /**
   * Blocks that a page folds away under one line, for a reader who wants to know. Text and Markdown
   * show them in full.
   *
   * @param summary the line
   * @param blocks what stands under it
   */
  record Folded(String summary, List<Block> blocks) implements Block {
    /** Copies the list. */
    public Folded {
      Objects.requireNonNull(summary, "summary");
      blocks = List.copyOf(blocks);
    }

    @Override
    public String toText() {
      return String.join("\n", PlainText.wrap(summary, PlainText.LINE_WIDTH))
          + blocks.stream().map(block -> "\n\n" + block.toText()).collect(Collectors.joining());
    }

    @Override
    public String toMarkdown() {
      return MarkdownText.escape(summary)
          + blocks.stream().map(block -> "\n\n" + block.toMarkdown()).collect(Collectors.joining());
    }

    @Override
    public String toHtml() {
      return "<details class=\"agro-folded\">\n"
          + HtmlText.element("summary", summary)
          + blocks.stream().map(block -> "\n" + block.toHtml()).collect(Collectors.joining())
          + "\n</details>";
    }
  }
}
