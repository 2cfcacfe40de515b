package agro.programme.rotation;

import agro.programme.GenerationDays;
import agro.report.InputProblem;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The windows of a season, in order and without overlap. Days between two windows belong to none.
 *
 * @param windows the windows
 */
public record RotationWindows(List<RotationWindow> windows) implements Presentable {

  private static final int UNKNOWN_GENERATION_DAYS = 30;

  /** Refuses windows that overlap. */
  public RotationWindows {
    windows = windows.stream().sorted(Comparator.comparing(RotationWindow::first)).toList();
    for (int i = 1; i < windows.size(); i++) {
      var before = windows.get(i - 1);
      var after = windows.get(i);
      if (!after.first().isAfter(before.last())) {
        throw InputProblem.of(before + " and " + after)
            .expected("windows of which one ends before the next begins")
            .because("a day in two windows would belong to two generations")
            .mend("let the first end on " + after.first().minusDays(1));
      }
    }
    if (windows.isEmpty()) {
      throw InputProblem.of("no window")
          .expected("at least one")
          .because("modes of action are rotated from window to window")
          .mend("give the windows of the district, or the length of a generation");
    }
  }

  /**
   * Windows as the district has set them, or as a forecast has them.
   *
   * @param generations days of the generations of one pest
   * @param basis where they come from
   * @return the windows, numbered like the generations
   */
  public static RotationWindows of(List<GenerationDays> generations, WindowBasis basis) {
    return new RotationWindows(
        generations.stream()
            .map(each -> new RotationWindow(each.generation(), each.first(), each.last(), basis))
            .toList());
  }

  /**
   * Windows of one generation each, one after the other.
   *
   * @param first first day of the first window
   * @param last last day that has to be covered
   * @param generationDays days of a generation
   * @return the windows; the last one may end after the last day
   */
  public static RotationWindows every(LocalDate first, LocalDate last, int generationDays) {
    return every(first, last, generationDays, WindowBasis.STATED_LENGTH);
  }

  /**
   * Windows of thirty days, for a pest whose generation is not known.
   *
   * @param first first day of the first window
   * @param last last day that has to be covered
   * @return the windows
   */
  public static RotationWindows everyThirtyDays(LocalDate first, LocalDate last) {
    return every(first, last, UNKNOWN_GENERATION_DAYS, WindowBasis.THIRTY_DAYS);
  }

  private static RotationWindows every(
      LocalDate first, LocalDate last, int length, WindowBasis basis) {
    if (length < 1 || last.isBefore(first)) {
      throw InputProblem.of("windows of " + length + " days from " + first + " to " + last)
          .expected("at least one day each, and a last day on or after the first one")
          .because("no window comes of it")
          .mend("look at the days of a generation and at both dates");
    }
    var windows = new ArrayList<RotationWindow>();
    for (var day = first; !day.isAfter(last); day = day.plusDays(length)) {
      windows.add(new RotationWindow(windows.size() + 1, day, day.plusDays(length - 1), basis));
    }
    return new RotationWindows(windows);
  }

  /**
   * The window in which a day lies.
   *
   * @param day the day
   * @return the window; nothing between two windows
   */
  public Optional<RotationWindow> on(LocalDate day) {
    return windows.stream().filter(each -> each.covers(day)).findFirst();
  }

  /**
   * The window that a use on a day counts for: the one in which it lies, else the last one that
   * ended before it.
   *
   * @param day the day
   * @return index in the list; -1 before the first window
   */
  public int indexAt(LocalDate day) {
    int found = -1;
    for (int i = 0; i < windows.size(); i++) {
      if (!windows.get(i).first().isAfter(day)) {
        found = i;
      }
    }
    return found;
  }

  /** Length of the first window, in days, as the length of a generation. */
  long firstLength() {
    var window = windows.get(0);
    return ChronoUnit.DAYS.between(window.first(), window.last()) + 1;
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var each : windows) {
      rows.add(
          List.of(
              Cell.number(each.number(), 0),
              Cell.text(each.first().toString()),
              Cell.text(each.last().toString()),
              Cell.text(each.basis().words())));
    }
    var columns =
        List.of(
            ResultTable.Column.of("Window"),
            ResultTable.Column.of("First day"),
            ResultTable.Column.of("Last day"),
            ResultTable.Column.of("Basis"));
    boolean guessed = windows.stream().anyMatch(w -> w.basis() == WindowBasis.THIRTY_DAYS);
    return Presentation.titled("Windows of rotation")
        .table(ResultTable.of("Windows", columns, rows))
        .sources(
            guessed
                ? List.of(RotationSources.WINDOWS, RotationSources.THIRTY_DAYS)
                : List.of(RotationSources.WINDOWS))
        .build();
  }
}
