package agro.dose.tank;

import agro.dose.Severity;
import agro.dose.SprayVolume;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * What the spray that is really left after the field says about the work done.
 *
 * @param mix the mix that was sprayed
 * @param left spray that was found in the sprayer
 * @param holds product in what was found
 * @param sprayed spray volume that the field really got
 * @param departure share by which the field got more (above 0) or less than planned
 */
public record LeftoverCheck(
    TankMix mix, Volume left, List<PartnerAmount> holds, SprayVolume sprayed, double departure)
    implements Presentable {

  /** The largest departure of a sprayer that passes, 10 %: common practice. */
  public static final double TOLERATED = 0.10;

  /** Copies the list. */
  public LeftoverCheck {
    Objects.requireNonNull(mix, "mix");
    Objects.requireNonNull(left, "left");
    Objects.requireNonNull(sprayed, "sprayed");
    holds = List.copyOf(holds);
  }

  /**
   * How much the departure matters.
   *
   * @return a warning beyond 10 % on either side, otherwise a note
   */
  public Severity severity() {
    return Math.abs(departure) > TOLERATED + LoadArithmetic.ROUNDING
        ? Severity.WARNING
        : Severity.NOTE;
  }

  /**
   * The check in a sentence.
   *
   * @return what the field got and what to do
   */
  public String sentence() {
    var share = VesselRefusals.percent(Math.abs(departure));
    var got =
        departure == 0
            ? "The field got what was planned."
            : "The field got " + share + (departure > 0 ? " more" : " less") + " than planned.";
    return severity() == Severity.WARNING
        ? got + " Measure the field and calibrate the sprayer again before the next filling."
        : got;
  }

  /**
   * The steps with their units.
   *
   * @return spray on the field, spray volume reached, departure, with the cautions
   */
  public Working working() {
    var style = style();
    var area = style.print(mix.plan().field().area());
    var out = style.print(mix.made().minus(left));
    return Working.of("What the field got")
        .step(
            "Spray on the field",
            "sprayed = made up − left",
            style.print(mix.made()) + " − " + style.print(left),
            out,
            TankSources.LOADS)
        .step(
            "Spray volume reached",
            "spray volume = sprayed ÷ area",
            out + " ÷ " + area,
            sprayed.print(style),
            TankSources.LOADS)
        .step(
            "Departure",
            "departure = reached ÷ planned − 1",
            sprayed.print(style) + " ÷ " + mix.plan().spray().print(style) + " − 1",
            sentence())
        .withCautions(Caution.all());
  }

  private QuantityStyle style() {
    return TankTables.style(mix);
  }

  @Override
  public Presentation presentation() {
    var style = style();
    var page =
        Presentation.titled("Left over from " + mix.plan().field().name())
            .fact("Planned to be left", style.print(mix.leftover().volume()))
            .fact("Found", style.print(left));
    holds.forEach(
        partner -> page.fact("Holds", partner.product() + ", " + partner.amount().print(style)));
    return page.paragraph(severity().words() + ": " + sentence()).working(working()).build();
  }
}
