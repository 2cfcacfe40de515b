package agro.dose;

import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a dose per litre comes to at the volume of a sprayer.
 *
 * @param asked rate, volumes, crop and limits
 * @param dose dose per hectare that the sprayer gives
 * @param labelDose dose per hectare at the volume that the label assumes; nothing if it states none
 * @param departure spray volume over the nearest that the label assumes, 1 within its range, NaN if
 *     the label states none
 * @param strengthForLabelDose what the spray would have to hold to give the label's dose at this
 *     volume, where the two volumes differ; to be used only if the label allows such a strength
 * @param findings what was found, errors first
 * @param working the steps, with cautions
 */
public record PerLitreDoseResult(
    PerLitreDose asked,
    ProductPerArea dose,
    Optional<ProductPerArea> labelDose,
    double departure,
    Optional<ProductPerSprayVolume> strengthForLabelDose,
    List<DoseFinding> findings,
    Working working)
    implements Presentable {

  /** Copies the list. */
  public PerLitreDoseResult {
    Objects.requireNonNull(asked, "asked");
    Objects.requireNonNull(dose, "dose");
    Objects.requireNonNull(labelDose, "labelDose");
    Objects.requireNonNull(strengthForLabelDose, "strengthForLabelDose");
    Objects.requireNonNull(working, "working");
    findings = List.copyOf(findings);
  }

  /**
   * The worst of the findings.
   *
   * @return error over the maximum, warning where nothing explains the volume, else note
   */
  public Severity worst() {
    return findings.get(0).severity();
  }

  /**
   * The standard cautions.
   *
   * @return all of them
   */
  public List<Caution> cautions() {
    return working.cautions();
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled(working.title())
            .fact("Label", asked.rate().toString())
            .fact("Spray volume of the label", asked.assumed().toString())
            .fact("Spray volume of the sprayer", asked.sprayer().perArea().toString())
            .fact("Dose per area of this sprayer", AmountPrint.shown(dose));
    labelDose.ifPresent(d -> page.fact("Dose per area of the label", AmountPrint.shown(d)));
    strengthForLabelDose.ifPresent(
        s ->
            page.fact(
                "Strength for the label's dose",
                AmountPrint.shown(s) + ", only if the label allows it"));
    return page.table(LimitCheckResult.findingTable("What there is to say", findings))
        .working(working)
        .build();
  }
}
