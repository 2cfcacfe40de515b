package agro.course.practical;

import agro.report.InputProblem;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Common slips by their size: the dose that is given over the dose that was intended.
 *
 * @param kinds the slips, at least one
 * @param situation product, pump, tank, land and sprayer for which they are worked out
 * @param language language of print
 */
public record DoseSlips(List<CommonSlip> kinds, SlipSituation situation, TextLanguage language)
    implements Presentable {

  /** Copies the list and refuses an empty one. */
  public DoseSlips {
    kinds = List.copyOf(kinds);
    Objects.requireNonNull(situation, "situation");
    Objects.requireNonNull(language, "language");
    if (kinds.isEmpty()) {
      throw InputProblem.of("no slip")
          .expected("at least one slip")
          .because("there is nothing to show")
          .mend("take the usual ones, or name some");
    }
  }

  /**
   * The twenty-odd slips that a class is shown, for the invented example, in English.
   *
   * @return the slips
   */
  public static DoseSlips usual() {
    return new DoseSlips(
        Arrays.stream(CommonSlip.values()).filter(CommonSlip::isUsual).toList(),
        SlipSituation.EXAMPLE,
        TextLanguage.ENGLISH);
  }

  /**
   * All slips, for the invented example, in English.
   *
   * @return the slips
   */
  public static DoseSlips all() {
    return new DoseSlips(List.of(CommonSlip.values()), SlipSituation.EXAMPLE, TextLanguage.ENGLISH);
  }

  /**
   * The same slips in another situation.
   *
   * @param other product, pump, tank, land and sprayer
   * @return new slips
   */
  public DoseSlips of(SlipSituation other) {
    return new DoseSlips(kinds, other, language);
  }

  /**
   * The slips of some families.
   *
   * @param families where they happen
   * @return fewer slips
   * @throws InputProblem if none is left
   */
  public DoseSlips only(SlipFamily... families) {
    var wanted = Set.of(families);
    return new DoseSlips(
        kinds.stream().filter(kind -> wanted.contains(kind.family())).toList(),
        situation,
        language);
  }

  /**
   * The same slips in another language.
   *
   * @param other language of print
   * @return new slips
   */
  public DoseSlips in(TextLanguage other) {
    return new DoseSlips(kinds, situation, other);
  }

  /**
   * The slips by family and, within a family, by ratio.
   *
   * @return one for each kind, the least dose of each family first
   */
  public List<DoseSlip> byFamily() {
    return slips(
        Comparator.comparing((DoseSlip slip) -> slip.kind().family())
            .thenComparingDouble(DoseSlip::ratio));
  }

  /**
   * The slips by ratio.
   *
   * @return one for each kind, the least dose first
   */
  public List<DoseSlip> byRatio() {
    return slips(Comparator.comparingDouble(DoseSlip::ratio));
  }

  private List<DoseSlip> slips(Comparator<DoseSlip> order) {
    var names = new SlipNames(situation, language);
    return kinds.stream()
        .map(kind -> new DoseSlip(kind, kind.ratio(situation), names.of(kind)))
        .sorted(order)
        .toList();
  }

  /**
   * The words of the page and the figure.
   *
   * @return the words in the language of print
   */
  public Wording wording() {
    return PracticalWords.wording(language);
  }

  /**
   * The slips as a table.
   *
   * @return one row for each, by family and ratio
   */
  public ResultTable table() {
    return new SlipPage(this).table();
  }

  @Override
  public Presentation presentation() {
    return new SlipPage(this).presentation();
  }

  @Override
  public String toString() {
    return wording().say("slips.summary", "slips", kinds.size());
  }
}
