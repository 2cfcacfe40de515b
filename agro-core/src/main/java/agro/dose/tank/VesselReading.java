package agro.dose.tank;

import agro.dose.ProductAmount;
import agro.units.MeasurementSystem;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Objects;

/**
 * How an amount is read off a vessel.
 *
 * @param vessel the vessel
 * @param target amount that is wanted
 * @param measured amount at the nearest marks; for a range the marks inside it where there are any
 * @param fillings how often the vessel is filled for the high end
 * @param rounding how far the marks are from the target, or outside of it for a range, as a share
 *     of the target with the sign of too much
 * @param reading half the distance of two marks for each filling, as a share of the target; 0 for
 *     spoons, caps and sachets, which have no marks
 */
public record VesselReading(
    MeasuringVessel vessel,
    ProductAmount target,
    ProductAmount measured,
    long fillings,
    double rounding,
    double reading)
    implements Presentable {

  /** Marks are printed as they stand on the vessel. */
  private static final int DIGITS = 6;

  /** Refuses nulls. */
  public VesselReading {
    Objects.requireNonNull(vessel, "vessel");
    Objects.requireNonNull(target, "target");
    Objects.requireNonNull(measured, "measured");
  }

  /**
   * The error that counts against the limit: rounding to a mark or reading between marks, whichever
   * is larger.
   *
   * @return a share, 0 or more
   */
  public double error() {
    return Math.max(Math.abs(rounding), reading);
  }

  /**
   * What is read off, in metric units and, where the reader has others, in those too.
   *
   * @param style units of the reader
   * @return for example {@code "118 mL (3.99 fl oz (US))"}
   */
  public String printMeasured(QuantityStyle style) {
    return both(measured, style);
  }

  private static String both(ProductAmount amount, QuantityStyle style) {
    var metric = amount.print(QuantityStyle.METRIC.withDigits(DIGITS));
    return style.system() == MeasurementSystem.METRIC
        ? metric
        : metric + " (" + amount.print(style) + ")";
  }

  /**
   * The steps with their units, metric.
   *
   * @return mark, rounding to it, and reading between marks, with the cautions
   */
  public Working working() {
    return working(QuantityStyle.METRIC);
  }

  /**
   * The steps with their units.
   *
   * @param style units of the reader, printed beside the metric ones
   * @return mark, rounding to it, and reading between marks, with the cautions
   */
  public Working working(QuantityStyle style) {
    var wanted = both(target, style);
    return Working.of("Measuring " + wanted)
        .step(
            "Nearest mark",
            "",
            "",
            printMeasured(style) + " in a " + vessel.print(style) + ", fillings: " + fillings,
            TankSources.USUAL_VESSELS)
        .step(
            "Rounding to the mark",
            "rounding = read off ÷ wanted − 1",
            printMeasured(style) + " ÷ " + wanted + " − 1",
            target.isSingle() || rounding != 0
                ? VesselRefusals.percent(rounding)
                : "none, the marks lie within the range")
        .step(
            "Reading between marks",
            "error = fillings × half a mark ÷ wanted",
            "",
            VesselRefusals.percent(reading),
            TankSources.HALF_A_MARK)
        .withCautions(Caution.all());
  }

  @Override
  public Presentation presentation() {
    return working().presentation();
  }
}
