package agro.programme.interval;

import agro.working.Cell;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Days in a row for which the rules say the same. */
record CalendarSpan(LocalDate first, LocalDate last, Permission permission, List<String> reasons) {

  static List<CalendarSpan> of(UseCalendar.Row row) {
    var spans = new ArrayList<CalendarSpan>();
    for (var day : row.days()) {
      var reasons =
          day.findings().stream()
              .filter(each -> each.permission() == day.permission())
              .map(each -> each.record() + ", " + each.limit())
              .distinct()
              .toList();
      var last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
      boolean same =
          last != null && last.permission == day.permission() && last.reasons.equals(reasons);
      if (same) {
        spans.set(
            spans.size() - 1, new CalendarSpan(last.first, day.day(), day.permission(), reasons));
      } else {
        spans.add(new CalendarSpan(day.day(), day.day(), day.permission(), reasons));
      }
    }
    return spans;
  }

  List<Cell> cells(String name) {
    return List.of(
        Cell.text(name),
        Cell.day(first),
        Cell.day(last),
        Cell.text(permission.words()),
        Cell.text(String.join("; ", reasons)));
  }
}
