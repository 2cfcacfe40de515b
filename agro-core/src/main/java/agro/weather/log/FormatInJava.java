package agro.weather.log;

import java.time.ZoneOffset;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** Writes the line of Java that makes a format. */
final class FormatInJava {

  private final StringBuilder line = new StringBuilder("LogFormat.detect()");
  private final String beforeCall;

  private FormatInJava(String beforeCall) {
    this.beforeCall = beforeCall;
  }

  static String line(LogFormat format) {
    return line(format, "");
  }

  /** The same Java with a blank before each call, so that a page can break the line there. */
  static String breakableLine(LogFormat format) {
    return line(format, " ");
  }

  private static String line(LogFormat format, String beforeCall) {
    var java = new FormatInJava(beforeCall);
    java.table(format.table());
    java.times(format.times());
    format.columns().ifPresent(columns -> java.call("withColumns", columns(columns)));
    format.sensor().filter(s -> format.columns().isEmpty()).ifPresent(java::sensor);
    format.unit().ifPresent(unit -> java.call("withUnit", "TemperatureUnit." + unit.name()));
    format.missing().ifPresent(codes -> java.call("withMissingCodes", set(new TreeSet<>(codes))));
    if (!format.completeness().equals(CompletenessRule.USUAL)) {
      java.call(
          "withCompleteness",
          "new CompletenessRule("
              + format.completeness().leastShareOfReadings()
              + ", Duration.parse("
              + quoted(format.completeness().longestGap().toString())
              + "))");
    }
    return java.line.toString();
  }

  private void call(String method, String argument) {
    line.append(beforeCall).append('.').append(method).append('(').append(argument).append(')');
  }

  private void sensor(String name) {
    call("withSensor", quoted(name));
  }

  private void table(TableForm form) {
    form.charset()
        .ifPresent(set -> call("withCharset", "Charset.forName(" + quoted(set.name()) + ")"));
    if (form.separator().isPresent()) {
      if (form.fieldStarts().isEmpty()) {
        call("withSeparator", "CellSeparator." + form.separator().get().name());
      } else {
        var starts = form.fieldStarts().toString();
        call("withFieldStarts", "List.of(" + starts.substring(1, starts.length() - 1) + ")");
      }
    }
    form.decimalMark().ifPresent(mark -> call("withDecimalMark", "DecimalMark." + mark.name()));
    form.headingLine().ifPresent(number -> call("withHeadingLine", String.valueOf(number)));
    form.firstLine().ifPresent(number -> call("withFirstLine", String.valueOf(number)));
  }

  private void times(TimeForm form) {
    form.pattern().ifPresent(pattern -> call("withTimePattern", quoted(pattern)));
    form.order().ifPresent(order -> call("withDateOrder", "DateOrder." + order.name()));
    form.serialDays().ifPresent(days -> call("withSerialDays", "SerialDays." + days.name()));
    form.zone().ifPresent(zone -> call("withZone", zone(zone.getId(), zone instanceof ZoneOffset)));
    form.dayOffset().ifPresent(offset -> call("withDayOffset", zone(offset.getId(), true)));
    form.step().ifPresent(step -> call("withStep", "Duration.parse(" + quoted(step + "") + ")"));
    form.timing().ifPresent(timing -> call("withReadingTime", "ReadingTime." + timing.name()));
    form.observation()
        .ifPresent(
            at ->
                call(
                    "withExtremesReadAt",
                    "new ExtremesReadAt(LocalTime.parse("
                        + quoted(at.time().toString())
                        + "), ExtremesReadAt.MaximumDay."
                        + at.maximum().name()
                        + ")"));
  }

  private static String zone(String id, boolean isOffset) {
    return (isOffset ? "ZoneOffset.of(" : "ZoneId.of(") + quoted(id) + ")";
  }

  private static String columns(LogColumns columns) {
    var values =
        columns instanceof LogColumns.Readings readings
            ? List.of(readings.temperatureColumn())
            : List.of(
                ((LogColumns.Extremes) columns).minimumColumn(),
                ((LogColumns.Extremes) columns).maximumColumn());
    var java =
        new StringBuilder("new LogColumns.")
            .append(columns instanceof LogColumns.Readings ? "Readings(" : "Extremes(")
            .append(times(columns.times()));
    for (var value : values) {
      java.append(", ").append(quoted(value));
    }
    return java.append(')').toString();
  }

  private static String times(List<TimePartColumn> times) {
    if (times.size() == 1 && times.get(0).part() == TimePart.DATE_TIME) {
      return quoted(times.get(0).name());
    }
    var java = new StringBuilder("List.of(");
    for (var time : times) {
      java.append(java.length() > 8 ? ", " : "")
          .append("new TimePartColumn(")
          .append(quoted(time.name()))
          .append(", TimePart.")
          .append(time.part().name())
          .append(')');
    }
    return java.append(')').toString();
  }

  private static String set(SortedSet<String> codes) {
    var java = new StringBuilder("Set.of(");
    for (var code : codes) {
      java.append(java.length() > 7 ? ", " : "").append(quoted(code));
    }
    return java.append(')').toString();
  }

  /** A string of Java; whatever is not plain text is escaped. */
  private static String quoted(String text) {
    var java = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        java.append('\\').append(c);
      } else if (c < ' ') {
        java.append(c == '\n' ? "\\n" : c == '\t' ? "\\t" : " ");
      } else {
        java.append(c);
      }
    }
    return java.append('"').toString();
  }
}
