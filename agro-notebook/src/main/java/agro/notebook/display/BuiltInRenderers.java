package agro.notebook.display;

import agro.report.ReadReport;
import agro.working.HtmlText;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.imageio.ImageIO;

/** What is shown without a service: results of the library, pictures, records and collections. */
final class BuiltInRenderers {

  private BuiltInRenderers() {}

  static List<RichRenderer<?>> all() {
    return List.of(
        new Simple<>(Presentable.class, value -> presentation(value.presentation())),
        new Simple<>(ReadReport.class, report -> presentation(Presentation.of(report))),
        new Simple<>(FigureBundle.class, FigureBundle::bundle),
        new Simple<>(BufferedImage.class, BuiltInRenderers::picture),
        new Simple<>(Record.class, BuiltInRenderers::record),
        new Simple<>(Collection.class, BuiltInRenderers::collection),
        new Simple<>(Map.class, BuiltInRenderers::map));
  }

  private record Simple<T>(Class<T> type, Function<T, MimeBundle> how) implements RichRenderer<T> {
    @Override
    public MimeBundle render(T value) {
      return how.apply(value);
    }
  }

  private static MimeBundle presentation(Presentation presentation) {
    return MimeBundle.of(MimeBundle.HTML, presentation.toHtml())
        .with(MimeBundle.MARKDOWN, presentation.toMarkdown())
        .with(MimeBundle.TEXT, presentation.toText());
  }

  private static MimeBundle table(ResultTable table, String text) {
    return MimeBundle.of(MimeBundle.HTML, table.toHtml())
        .with(MimeBundle.MARKDOWN, table.toMarkdown())
        .with(MimeBundle.TEXT, text);
  }

  private static MimeBundle picture(BufferedImage image) {
    var size = image.getWidth() + " by " + image.getHeight() + " points";
    var file = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", file);
    } catch (IOException impossibleInMemory) {
      throw new UncheckedIOException(impossibleInMemory);
    }
    var source = Base64.getEncoder().encodeToString(file.toByteArray());
    var html =
        "<img src=\"data:image/png;base64,"
            + source
            + "\" alt=\""
            + HtmlText.escape("A picture of " + size)
            + "\">";
    return MimeBundle.of(MimeBundle.HTML, html)
        .with(MimeBundle.PNG, source)
        .with(MimeBundle.TEXT, "A picture of " + size);
  }

  private static MimeBundle record(Record value) {
    var text = PlainText.of(value);
    return overridesToString(value) || value.getClass().getRecordComponents().length == 0
        ? MimeBundle.text(text)
        : table(RecordTables.ofOne(value), text);
  }

  /** A record that says itself how it looks is left to say so. */
  private static boolean overridesToString(Record value) {
    var type = value.getClass();
    return !PlainText.of(value).startsWith(type.getSimpleName() + "[");
  }

  private static MimeBundle collection(Collection<?> values) {
    var text = PlainText.of(values);
    return RecordTables.areRecordsOfOneType(values)
        ? table(RecordTables.of(values), RecordTables.of(values).toText())
        : MimeBundle.text(text);
  }

  private static MimeBundle map(Map<?, ?> map) {
    var text = PlainText.of(map);
    return map.isEmpty() ? MimeBundle.text(text) : table(RecordTables.ofMap(map), text);
  }
}
