package agro.notebook.kernel;

import agro.notebook.kernel.CellFailure.Place;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Remembers in which cell, and from which line on, each snippet stands. */
final class SnippetPlaces {

  private record Start(CellSource cell, int line) {}

  private final Map<String, Start> starts = new HashMap<>();

  void remember(String snippetId, CellSource cell, int line) {
    starts.put(snippetId, new Start(cell, line));
  }

  /**
   * The place of a line of a snippet.
   *
   * @param snippetId the snippet
   * @param line line within the snippet, counted from 1
   * @return empty for code that stands in no cell
   */
  Optional<Place> place(String snippetId, int line) {
    return Optional.ofNullable(starts.get(snippetId))
        .map(start -> new Place(start.cell().name(), start.line() + Math.max(line, 1) - 1));
  }

  /**
   * The cell of a snippet.
   *
   * @param snippetId the snippet
   * @return empty for code that stands in no cell
   */
  Optional<CellSource> cell(String snippetId) {
    return Optional.ofNullable(starts.get(snippetId)).map(Start::cell);
  }
}
