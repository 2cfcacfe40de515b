package agro.course.paper;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.LandUnit;
import agro.units.Unit;
import agro.units.UnreadableQuantity;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The unit of fields as a teacher writes it. */
final class LandUnitText {

  private static final Pattern OWN = Pattern.compile("1\\s+([^=]+?)\\s*=\\s*(.+)");
  private static final Pattern PLACED = Pattern.compile("(.+?)\\s*\\((.+)\\)");
  private static final double SMALLEST = 1;
  private static final double LARGEST = 1e7;

  private LandUnitText() {}

  /**
   * Reads a unit of fields.
   *
   * @param text {@code "hectare"}, {@code "bigha (Bihar)"} or {@code "1 plot = 338 m2"}
   * @param place where it stands
   * @return the unit
   * @throws InputProblem if it is not known, or its size depends on a place that is not named
   */
  static Unit<Area> read(String text, SourceLocation place) {
    var own = OWN.matcher(text);
    if (own.matches()) {
      return own(own.group(1), own.group(2), place);
    }
    return general(text)
        .or(() -> local(text, place))
        .orElseThrow(
            () ->
                InputProblem.at(place, "the unit of land \"" + text + "\" is not known")
                    .expected("hectare, acre, a local unit with its place, or its size")
                    .because("fields have to be converted exactly")
                    .mend("write for example \"bigha (Bihar)\", or \"1 " + text + " = 1234 m2\""));
  }

  private static Optional<Unit<Area>> general(String text) {
    return Arrays.stream(AreaUnit.values())
        .filter(unit -> is(text, unit.symbol()) || is(text, unit.words()) || is(text, unit.name()))
        .map(unit -> (Unit<Area>) unit)
        .findFirst();
  }

  private static boolean is(String text, String name) {
    var singular = text.endsWith("s") ? text.substring(0, text.length() - 1) : text;
    return text.equalsIgnoreCase(name) || singular.equalsIgnoreCase(name);
  }

  private static Optional<Unit<Area>> local(String text, SourceLocation place) {
    var placed = PLACED.matcher(text);
    boolean withPlace = placed.matches();
    var units = LandUnit.named(withPlace ? placed.group(1) : text);
    if (units.isEmpty()) {
      return Optional.empty();
    }
    var wanted = withPlace ? placed.group(2).toLowerCase(Locale.ROOT) : "";
    var fitting =
        units.stream().filter(unit -> !withPlace || places(unit).contains(wanted)).toList();
    if (fitting.size() != 1) {
      var all = units.stream().map(LandUnit::symbol).collect(Collectors.joining(", "));
      throw InputProblem.at(
              place, "the unit of land \"" + text + "\" has " + units.size() + " sizes")
          .expected("one of " + all)
          .because("units of this name differ from place to place")
          .mend("add the place in brackets, or write its size, as \"1 NAME = 1234 m2\"");
    }
    return Optional.of(fitting.get(0));
  }

  private static List<String> places(LandUnit unit) {
    return unit.places().stream().map(each -> each.toLowerCase(Locale.ROOT)).toList();
  }

  private static Unit<Area> own(String name, String size, SourceLocation place) {
    Area area;
    try {
      area = Area.parse(size);
    } catch (UnreadableQuantity unclear) {
      throw InputProblem.at(place, "the size \"" + size + "\" of " + name + " is not clear")
          .expected("an area such as 1234 m2 or 0.3 acres")
          .because("fields have to be converted exactly (" + unclear.getMessage() + ")")
          .mend("write the size in square metres");
    }
    double squareMetres = area.inBaseUnit();
    if (!(squareMetres >= SMALLEST && squareMetres <= LARGEST)) {
      throw InputProblem.at(place, "a " + name + " of " + size + " is no unit of fields")
          .expected("a size from 1 m2 to 1000 ha")
          .because("the numbers of the exercises would make no sense")
          .mend("check the size");
    }
    return OwnLandUnit.of(name, area);
  }
}
