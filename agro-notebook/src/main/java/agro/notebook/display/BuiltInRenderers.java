package agro.notebook.display;

import agro.report.ReadReport;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.awt.Image;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What is shown without a service: results of the library, pictures, records and collections. */
final class BuiltInRenderers {

  private BuiltInRenderers() {}

  static List<RichRenderer<?>> all() {
    return List.of(
        new Simple<>(Presentable.class, value -> ResultBundles.of(value.presentation())),
        new Simple<>(ReadReport.class, report -> ResultBundles.of(Presentation.of(report))),
        new Simple<>(Working.class, BuiltInRenderers::working),
        new Simple<>(FigureBundle.class, FigureBundle::bundle),
        new Simple<>(Picture.class, Picture::bundle),
        new Simple<>(Image.class, ImageFiles::bundle),
        new Simple<>(Record.class, BuiltInRenderers::record),
        new Simple<>(Object[].class, values -> values(Arrays.asList(values), values)),
        new Simple<>(Collection.class, values -> values(values, values)),
        new Simple<>(Map.class, BuiltInRenderers::map),
        new Simple<>(Optional.class, BuiltInRenderers::optional));
  }

  private record Simple<T>(Class<T> type, Function<T, MimeBundle> how) implements RichRenderer<T> {
    @Override
    public MimeBundle render(T value) {
      return how.apply(value);
    }
  }

  private static MimeBundle working(Working working) {
    return ResultBundles.of(working.presentation()).with(MimeBundle.LATEX, working.toLatex());
  }

  private static MimeBundle record(Record value) {
    var text = PlainText.of(value);
    return RecordParts.isOrdinary(value, text)
        ? RecordTables.ofOne(value).bundle(text)
        : MimeBundle.text(text);
  }

  private static MimeBundle values(Collection<?> values, Object shown) {
    var sample = RecordTables.sample(values);
    var table = RecordTables.of(sample);
    if (table.isPresent() && !table.get().named()) {
      return table.get().bundle();
    }
    var text = PlainText.of(shown, sample);
    return table.isPresent() ? table.get().bundle(text) : RichItems.of(sample, text);
  }

  private static MimeBundle map(Map<?, ?> map) {
    var sample = RecordTables.sample(map);
    var text = PlainText.of(map, sample);
    return RecordTables.ofMap(sample)
        .map(table -> table.bundle(text))
        .orElse(MimeBundle.text(text));
  }

  private static MimeBundle optional(Optional<?> optional) {
    return optional.isPresent()
        ? Renderers.standard().render(optional.get())
        : MimeBundle.text(PlainText.of(optional));
  }
}
