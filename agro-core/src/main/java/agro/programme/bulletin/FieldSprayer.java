package agro.programme.bulletin;

import agro.dose.SprayVolume;
import agro.dose.tank.SprayTank;
import agro.dose.tank.TankKind;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.TextFile;
import agro.report.InputProblem;
import agro.units.UnreadableQuantity;
import agro.units.Volume;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * A sprayer as it is used in a field.
 *
 * @param name what it is called
 * @param field field for which the line holds; nothing for every field without one of its own
 * @param tank its tank
 * @param spray spray volume as calibrated
 */
public record FieldSprayer(String name, Optional<String> field, SprayTank tank, SprayVolume spray) {

  /** Name of the file in a season folder. */
  public static final String FILE = "sprayers.csv";

  private static final List<String> REQUIRED = List.of("sprayer", "kind", "tank", "spray_volume");

  /** Refuses nulls. */
  public FieldSprayer {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(tank, "tank");
    Objects.requireNonNull(spray, "spray");
  }

  /**
   * Reads {@code sprayers.csv} of a season folder: {@code sprayer}, {@code kind} (knapsack,
   * mounted), {@code tank}, {@code spray_volume}, and where known {@code dead_volume} and {@code
   * field}.
   *
   * @param folder the season folder
   * @return the lines; none where there is no file
   * @throws InputProblem for a cell that cannot be read
   */
  public static List<FieldSprayer> read(Path folder) {
    var file = folder.resolve(FILE);
    return Files.exists(file)
        ? parse(FILE, TextFile.read(file, FILE, StandardCharsets.UTF_8))
        : List.of();
  }

  /**
   * Reads sprayers from text.
   *
   * @param name name of the text in messages
   * @param text the table
   * @return the lines
   * @throws InputProblem for a cell that cannot be read
   */
  public static List<FieldSprayer> parse(String name, String text) {
    return DelimitedText.parse(name, text, DelimitedFormat.COMMA, REQUIRED).lines().stream()
        .map(FieldSprayer::sprayer)
        .toList();
  }

  private static FieldSprayer sprayer(DelimitedLine line) {
    var tank =
        new SprayTank(
            line.choice("kind", TankKind.class),
            quantity(line, "tank", Volume::parse),
            Optional.empty());
    return new FieldSprayer(
        line.text("sprayer"),
        line.optionalText("field"),
        line.optionalText("dead_volume").isPresent()
            ? quantity(line, "dead_volume", text -> tank.withDeadVolume(Volume.parse(text)))
            : tank,
        quantity(line, "spray_volume", SprayVolume::parse));
  }

  private static <T> T quantity(DelimitedLine line, String column, Function<String, T> reader) {
    var text = line.text(column);
    try {
      return reader.apply(text);
    } catch (UnreadableQuantity | InputProblem problem) {
      throw InputProblem.at(line.location(column), "the cell reads \"" + text + "\"")
          .expected("a value with its unit, such as 15 L, or 400 L/ha for the spray volume")
          .because("the amounts for the tank are worked out from it: " + problem.getMessage())
          .mend("write the number and its unit");
    }
  }

  /**
   * The sprayer of a field.
   *
   * @param sprayers the lines of the file
   * @param field the field
   * @return the line of the field, else the first one for every field
   */
  static Optional<FieldSprayer> of(List<FieldSprayer> sprayers, String field) {
    var own =
        sprayers.stream()
            .filter(each -> each.field().isPresent() && each.field().get().equals(field))
            .findFirst();
    return own.isPresent()
        ? own
        : sprayers.stream().filter(each -> each.field().isEmpty()).findFirst();
  }
}
