package agro.dose;

import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What a dose per litre comes to on an area at the spray volume of a sprayer, and how far that is
 * from what the label assumes. Dose per area = amount per litre × litres per area. A departure is a
 * note where the size of the crop explains it and a warning where nothing does; over the maximum of
 * the label is an error.
 *
 * @param rate product per volume of spray
 * @param assumed spray volume that the label assumes
 * @param sprayer spray volume of the sprayer
 * @param crop how large the crop is
 * @param limits limits of the label
 */
public record PerLitreDose(
    ProductPerSprayVolume rate,
    LabelEntry<LabelSprayVolume> assumed,
    SprayVolume sprayer,
    CropSize crop,
    LabelLimits limits) {

  private static final Set<String> SINGLE_DOSE =
      Set.of(
          "maximum dose per application",
          "minimum dose per application",
          "maximum strength of the spray");

  /** Refuses nulls. */
  public PerLitreDose {
    Objects.requireNonNull(rate, "rate");
    Objects.requireNonNull(assumed, "assumed");
    Objects.requireNonNull(sprayer, "sprayer");
    Objects.requireNonNull(crop, "crop");
    Objects.requireNonNull(limits, "limits");
  }

  /**
   * A dose per litre at the volume of a sprayer, of which nothing more is stated.
   *
   * @param rate product per volume of spray
   * @param sprayer spray volume of the sprayer
   * @return the question
   */
  public static PerLitreDose of(ProductPerSprayVolume rate, SprayVolume sprayer) {
    return new PerLitreDose(
        rate,
        LabelEntry.notRecorded(),
        sprayer,
        CropSize.NOT_STATED,
        LabelLimits.of("a label without recorded limits"));
  }

  /**
   * States the spray volume of the label.
   *
   * @param volume volume that the label assumes
   * @return the question with it
   */
  public PerLitreDose labelAssumes(LabelSprayVolume volume) {
    return new PerLitreDose(rate, LabelEntry.stated(volume), sprayer, crop, limits);
  }

  /**
   * States that the label says in words that it assumes no spray volume.
   *
   * @return the question with it
   */
  public PerLitreDose labelAssumesNone() {
    return new PerLitreDose(rate, LabelEntry.none(), sprayer, crop, limits);
  }

  /**
   * States how large the crop is.
   *
   * @param size size of the crop
   * @return the question with it
   */
  public PerLitreDose on(CropSize size) {
    return new PerLitreDose(rate, assumed, sprayer, size, limits);
  }

  /**
   * States the limits of the label.
   *
   * @param record the limits
   * @return the question with them
   */
  public PerLitreDose within(LabelLimits record) {
    return new PerLitreDose(rate, assumed, sprayer, crop, record);
  }

  /**
   * Answers the question.
   *
   * @return dose per area, departure and findings, with the steps
   */
  public PerLitreDoseResult evaluate() {
    var dose = rate.sprayedAt(sprayer);
    var stated = stated();
    var labelDose = stated.map(this::labelDose);
    double departure = stated.map(this::departure).orElse(Double.NaN);
    var strength = labelDose.filter(d -> departure != 1).map(d -> d.inSpray(sprayer));
    var working =
        Working.of("A dose per litre on a hectare")
            .step(
                "Dose per area of this sprayer",
                "dose = amount per litre × spray volume",
                rate + " × " + sprayer.perArea(),
                AmountPrint.shown(dose),
                DoseSources.DOSE_AND_VOLUME);
    if (labelDose.isPresent()) {
      working = labelSteps(working, labelDose.get(), departure);
    }
    var findings = new ArrayList<DoseFinding>();
    findings.add(volumeFinding(dose, departure));
    if (!rate.isSingle()) {
      findings.add(rangeFinding());
    }
    sprayer.finding().ifPresent(findings::add);
    findings.addAll(limitFindings(dose));
    findings.sort((a, b) -> b.severity().compareTo(a.severity()));
    return new PerLitreDoseResult(
        this, dose, labelDose, departure, strength, findings, working.withCautions(Caution.all()));
  }

  private Optional<LabelSprayVolume> stated() {
    return assumed instanceof LabelEntry.Stated<LabelSprayVolume> volume
        ? Optional.of(volume.value())
        : Optional.empty();
  }

  private ProductPerArea labelDose(LabelSprayVolume volume) {
    var low = rate.low().sprayedAt(new SprayVolume(volume.range().low()));
    var high = rate.high().sprayedAt(new SprayVolume(volume.range().high()));
    return ProductPerArea.ofHectare(ProductSpan.from(low.amount(), high.amount()));
  }

  /** This sprayer's volume over the nearest that the label assumes; 1 within its range. */
  private double departure(LabelSprayVolume volume) {
    if (volume.contains(sprayer)) {
      return 1;
    }
    var low = volume.range().low();
    return sprayer.perArea().compareTo(low) < 0
        ? sprayer.perArea().ratioTo(low)
        : sprayer.perArea().ratioTo(volume.range().high());
  }

  private Working labelSteps(Working working, ProductPerArea labelDose, double departure) {
    return working
        .step(
            "Dose per area that the label assumes",
            "dose = amount per litre × spray volume of the label",
            rate + " × " + stated().orElseThrow().range(),
            AmountPrint.shown(labelDose),
            DoseSources.DOSE_AND_VOLUME)
        .step(
            "Departure",
            "departure = spray volume ÷ nearest spray volume of the label",
            departure == 1 ? "" : sprayer.perArea() + " ÷ " + nearest(),
            departure == 1 ? "none, within the range of the label" : times(departure));
  }

  private String nearest() {
    var range = stated().orElseThrow().range();
    return (sprayer.perArea().compareTo(range.low()) < 0 ? range.low() : range.high()).toString();
  }

  private static String times(double departure) {
    return Numbers.significant(departure, 3) + " times";
  }

  private DoseFinding volumeFinding(ProductPerArea dose, double departure) {
    var rule = "spray volume of a dose per litre";
    if (assumed instanceof LabelEntry.NotRecorded<LabelSprayVolume>) {
      return new DoseFinding(
          Severity.WARNING,
          rule,
          "The sprayer gives "
              + AmountPrint.shown(dose)
              + ". The spray volume that the label assumes is not recorded,"
              + " so nobody can say whether that is the dose of the label.");
    }
    if (assumed instanceof LabelEntry.LabelSaysNone<LabelSprayVolume>) {
      return new DoseFinding(
          Severity.NOTE,
          rule,
          "The sprayer gives " + AmountPrint.shown(dose) + ". The label assumes no volume.");
    }
    if (departure == 1) {
      return new DoseFinding(
          Severity.NOTE,
          rule,
          "The sprayer gives " + AmountPrint.shown(dose) + ", at a volume of the label.");
    }
    boolean explained = crop == (departure < 1 ? CropSize.SMALL : CropSize.DENSE);
    return new DoseFinding(
        explained ? Severity.NOTE : Severity.WARNING,
        rule,
        departureWords(dose, departure, explained));
  }

  private DoseFinding rangeFinding() {
    double span = rate.amount().highNumber() / rate.amount().lowNumber();
    return new DoseFinding(
        Severity.NOTE,
        "range of the label",
        "The high end is "
            + Numbers.significant(span, 2)
            + " times the low end. The label says when each is meant; the middle stands on none.");
  }

  private String departureWords(ProductPerArea dose, double departure, boolean explained) {
    double factor = departure < 1 ? 1 / departure : departure;
    return "The sprayer puts out "
        + sprayer.perArea()
        + ", and the label assumes "
        + stated().orElseThrow().range()
        + ". At the same amount per litre a hectare gets "
        + AmountPrint.shown(dose)
        + ", "
        + Numbers.significant(factor, 2)
        + (departure < 1 ? " times less (" : " times more (")
        + Numbers.significant(100 * departure, 2)
        + " % of the label's). "
        + (explained ? "That is explained: " : "Nothing explains it: ")
        + crop.words()
        + ".";
  }

  private List<DoseFinding> limitFindings(ProductPerArea dose) {
    return LimitCheck.check(limits, PlannedUse.of(dose).sprayedAt(sprayer)).findings().stream()
        .filter(finding -> SINGLE_DOSE.contains(finding.rule()))
        .toList();
  }
}
