package agro.programme;

import agro.dose.ApplicationLimit;
import agro.dose.BufferLimit;
import agro.dose.DoseBound;
import agro.dose.DoseLimit;
import agro.dose.DosePerArea;
import agro.dose.IntervalLimit;
import agro.dose.LabelEntry;
import agro.dose.LabelLimit;
import agro.dose.LabelRate;
import agro.dose.LimitScope;
import agro.dose.PreHarvest;
import agro.dose.PreHarvestLimit;
import agro.dose.ReEntryLimit;
import agro.reading.DelimitedLine;
import agro.report.InputProblem;
import agro.units.Length;
import agro.units.WorkTime;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Cells of limits: a value with its unit, the word none, or empty where nobody has looked. */
final class LabelColumns {

  private static final String NONE = "none";

  static final Map<String, LimitScope> MOST_DOSE =
      scopes(
          "max_dose", LimitScope.APPLICATION,
          "max_dose_crop", LimitScope.CROP,
          "max_dose_season", LimitScope.SEASON,
          "max_dose_twelve_months", LimitScope.TWELVE_MONTHS);

  static final Map<String, LimitScope> MOST_APPLICATIONS =
      scopes(
          "max_applications", LimitScope.CROP,
          "max_applications_season", LimitScope.SEASON,
          "max_applications_twelve_months", LimitScope.TWELVE_MONTHS,
          "max_applications_generation", LimitScope.GENERATION,
          "max_applications_group", LimitScope.GROUP,
          "max_applications_active", LimitScope.ACTIVE_INGREDIENT);

  static final Map<String, LimitScope> INTERVALS =
      scopes(
          "min_interval", LimitScope.CROP,
          "min_interval_group", LimitScope.GROUP,
          "min_interval_active", LimitScope.ACTIVE_INGREDIENT);

  /** Column and what the buffer is kept to. */
  static final Map<String, String> BUFFERS = buffers();

  private LabelColumns() {}

  private static Map<String, LimitScope> scopes(Object... pairs) {
    var map = new LinkedHashMap<String, LimitScope>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put((String) pairs[i], (LimitScope) pairs[i + 1]);
    }
    return map;
  }

  private static Map<String, String> buffers() {
    var map = new LinkedHashMap<String, String>();
    map.put("buffer_water", "water");
    map.put("buffer_people", "people");
    map.put("exclusion_zone", "people outside the field while it is treated");
    return map;
  }

  /** All limits of a line that are counted on the product. */
  static List<LabelLimit> limits(DelimitedLine line) {
    var limits = new ArrayList<LabelLimit>();
    var always = Optional.<agro.dose.UseCondition>empty();
    MOST_APPLICATIONS.forEach(
        (column, scope) ->
            entry(line, column, text -> positive(line, column, text))
                .ifPresent(entry -> limits.add(new ApplicationLimit(entry, scope, always))));
    INTERVALS.forEach(
        (column, scope) ->
            entry(line, column, text -> days(line, column, text))
                .ifPresent(entry -> limits.add(new IntervalLimit(entry, scope, always))));
    entry(line, "pre_harvest", text -> preHarvest(line, text))
        .ifPresent(entry -> limits.add(new PreHarvestLimit(entry, LimitScope.CROP, always)));
    entry(line, "re_entry", text -> time(line, "re_entry", text))
        .ifPresent(entry -> limits.add(new ReEntryLimit(entry, LimitScope.APPLICATION, always)));
    BUFFERS.forEach(
        (column, toward) ->
            entry(line, column, Length::parse)
                .ifPresent(
                    entry ->
                        limits.add(
                            new BufferLimit(toward, entry, LimitScope.APPLICATION, always))));
    entry(line, "min_dose", text -> dose(line, "min_dose", text))
        .ifPresent(
            entry ->
                limits.add(
                    new DoseLimit(DoseBound.MINIMUM, entry, LimitScope.APPLICATION, always)));
    return limits;
  }

  /** Reads a cell; nothing where nobody has looked. */
  static <T> Optional<LabelEntry<T>> entry(
      DelimitedLine line, String column, Function<String, T> reader) {
    return line.optionalText(column)
        .map(
            text ->
                text.equalsIgnoreCase(NONE)
                    ? LabelEntry.<T>none()
                    : LabelEntry.stated(located(line, column, () -> reader.apply(text))));
  }

  /** Runs a reader and adds the place to its problem. */
  static <T> T located(DelimitedLine line, String column, java.util.function.Supplier<T> reader) {
    try {
      return reader.get();
    } catch (InputProblem problem) {
      if (!problem.location().file().isEmpty()) {
        throw problem;
      }
      throw InputProblem.at(line.location(column), problem.read())
          .expected(problem.expected())
          .because(problem.why())
          .mend(problem.cure());
    } catch (agro.units.UnreadableQuantity problem) {
      throw cell(line, column, line.text(column), "a value with its unit", problem.getMessage());
    }
  }

  private static Integer positive(DelimitedLine line, String column, String text) {
    return whole(line, column, text, "a whole number of applications from 1, none, or empty");
  }

  private static Integer days(DelimitedLine line, String column, String text) {
    var word = text.toLowerCase(Locale.ROOT);
    var number = word.replaceAll("\\s*(d|day|days)$", "");
    return whole(line, column, number, "whole days from 1, such as 10, none, or empty");
  }

  private static Integer whole(DelimitedLine line, String column, String text, String expected) {
    if (!text.matches("[0-9]{1,6}") || Integer.parseInt(text) < 1) {
      throw cell(line, column, text, expected, "the limit cannot be counted");
    }
    return Integer.valueOf(text);
  }

  static InputProblem cell(
      DelimitedLine line, String column, String text, String expected, String why) {
    return InputProblem.at(line.location(column), "the cell reads \"" + text + "\"")
        .expected(expected)
        .because(why)
        .mend("copy it from the label; leave the cell empty if the label was not read for it");
  }

  private static PreHarvest preHarvest(DelimitedLine line, String text) {
    var word = text.toLowerCase(Locale.ROOT).replaceAll("\\s*(d|day|days)$", "");
    if (word.matches("[0-9]{1,4}")) {
      return new PreHarvest.Days(Integer.parseInt(word));
    }
    if (Character.isDigit(word.charAt(0)) || word.charAt(0) == '-') {
      throw cell(
          line,
          "pre_harvest",
          text,
          "whole days such as 7, a growth stage such as \"BBCH 69\", none, or empty",
          "the interval before harvest is counted on dates");
    }
    return new PreHarvest.UntilStage(text);
  }

  /** A time of the label, in which a day has 24 hours. */
  static Duration time(DelimitedLine line, String column, String text) {
    if (text.matches("[0-9.]+")) {
      throw cell(
          line, column, text, "a number with its unit, such as 12 h or 2 days", "24 may be either");
    }
    double seconds = WorkTime.parse(text).seconds();
    if (!(seconds >= 0)) {
      throw cell(line, column, text, "a time of 0 or more", "a time does not run backwards");
    }
    return Duration.ofSeconds(BigDecimal.valueOf(seconds).longValue());
  }

  /** A dose per area. */
  static DosePerArea dose(DelimitedLine line, String column, String text) {
    if (LabelRate.parse(text) instanceof DosePerArea dose) {
      return dose;
    }
    throw cell(
        line,
        column,
        text,
        "a dose per area, such as 0.75 L/ha or 1.5 kg ai/ha",
        "doses of a season are added up per area");
  }
}
