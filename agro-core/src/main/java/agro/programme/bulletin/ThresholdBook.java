package agro.programme.bulletin;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.TextFile;
import agro.report.InputProblem;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.MoneyPerArea;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The user's thresholds, from {@code thresholds.csv} of a season folder, which a folder may be
 * without. Columns: {@code pest}, {@code unit}, {@code source}; {@code crop} where it holds for one
 * crop alone; and either {@code treat_from} in animals for each unit, or {@code cost_per_ha},
 * {@code crop_value_per_ha}, {@code currency}, {@code share_lost_per_pest} and {@code
 * share_prevented}, from which it is worked out.
 *
 * @param thresholds the lines in the order of the file
 */
public record ThresholdBook(List<PestThreshold> thresholds) {

  /** Name of the file in a season folder. */
  public static final String FILE = "thresholds.csv";

  private static final List<String> REQUIRED = List.of("pest", "unit", "source");

  /** Copies the list. */
  public ThresholdBook {
    thresholds = List.copyOf(thresholds);
  }

  /**
   * Reads the file of a folder.
   *
   * @param folder the season folder
   * @return the thresholds; none where there is no file
   * @throws InputProblem for a cell that cannot be read
   */
  public static ThresholdBook read(Path folder) {
    return Files.exists(folder.resolve(FILE))
        ? parse(FILE, TextFile.read(folder.resolve(FILE), FILE, StandardCharsets.UTF_8))
        : new ThresholdBook(List.of());
  }

  /**
   * Reads thresholds from text.
   *
   * @param name name of the text in messages
   * @param text the table
   * @return the thresholds
   * @throws InputProblem for a cell that cannot be read
   */
  public static ThresholdBook parse(String name, String text) {
    return new ThresholdBook(
        DelimitedText.parse(name, text, DelimitedFormat.COMMA, REQUIRED).lines().stream()
            .map(ThresholdBook::threshold)
            .toList());
  }

  private static PestThreshold threshold(DelimitedLine line) {
    var unit = SamplingUnit.of(line.choice("unit", SamplingUnit.Kind.class));
    var stated = line.optionalNumber("treat_from");
    var pest = line.text("pest");
    var crop = line.optionalText("crop");
    if (stated.isPresent()) {
      if (!(stated.getAsDouble() > 0)) {
        throw InputProblem.at(line.location("treat_from"), "a threshold of " + stated.getAsDouble())
            .expected("a number above zero")
            .because("from zero on every field would be treated")
            .mend("write the animals for each " + unit + " from which treating pays");
      }
      return new PestThreshold(
          pest, crop, unit, stated.getAsDouble(), Optional.empty(), line.text("source"));
    }
    if (line.optionalText("cost_per_ha").isEmpty()) {
      throw InputProblem.at(line.location(), "a line of " + pest + " without a threshold")
          .expected("a number in treat_from, or the costs that it is worked out from")
          .because("a count says nothing without a number to hold it against")
          .mend("fill in one of the two, or take the line out");
    }
    try {
      return economic(line, pest, crop, unit);
    } catch (InputProblem problem) {
      if (!problem.location().file().isEmpty()) {
        throw problem;
      }
      throw InputProblem.at(line.location(), problem.read())
          .expected(problem.expected())
          .because(problem.why())
          .mend(problem.cure());
    }
  }

  private static PestThreshold economic(
      DelimitedLine line, String pest, Optional<String> crop, SamplingUnit unit) {
    var currency = line.text("currency");
    return PestThreshold.economic(
        pest,
        crop,
        unit,
        MoneyPerArea.perHectare(line.number("cost_per_ha"), currency),
        MoneyPerArea.perHectare(line.number("crop_value_per_ha"), currency),
        line.number("share_lost_per_pest"),
        line.number("share_prevented"),
        line.text("source"));
  }

  /**
   * The threshold of a pest on a crop.
   *
   * @param pest the pest
   * @param crop the crop; nothing where it is not known
   * @return the line for the crop, else the one for every crop; nothing if there is none
   */
  public Optional<PestThreshold> find(String pest, Optional<String> crop) {
    var own =
        thresholds.stream()
            .filter(each -> each.pest().equals(pest) && each.crop().isPresent())
            .filter(each -> each.crop().equals(crop))
            .findFirst();
    return own.isPresent()
        ? own
        : thresholds.stream()
            .filter(each -> each.pest().equals(pest) && each.crop().isEmpty())
            .findFirst();
  }
}
