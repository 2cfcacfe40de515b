package agro.dose.sprayer;

import agro.dose.SprayVolume;
import agro.source.Reference;
import agro.units.Pressure;
import agro.units.QuantityRange;
import agro.units.Speed;
import agro.working.Caution;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The nozzle sizes that put out a wanted volume per treated area at a speed, within the pressures
 * that the nozzle and the wanted droplets allow.
 *
 * @param layout nozzles and widths
 * @param volume wanted volume per treated area
 * @param speed speed over ground, above zero
 * @param pressures pressures at the nozzle that are allowed, low end above zero
 * @param liquid density of the liquid, if it is not like water
 * @param basis what the number of a size counts
 * @param units units of print
 */
public record NozzleChoice(
    SprayLayout layout,
    TreatedVolume volume,
    Speed speed,
    QuantityRange<Pressure> pressures,
    Optional<LiquidDensity> liquid,
    FlowBasis basis,
    SprayUnits units) {

  /** Refuses pressures from zero. */
  public NozzleChoice {
    Objects.requireNonNull(layout, "layout");
    Objects.requireNonNull(volume, "volume");
    Objects.requireNonNull(speed, "speed");
    SprayerChecks.aboveZero(
        pressures.low(),
        "lowest pressure",
        "no nozzle sprays without pressure",
        "take the range from the nozzle's table, for example 1.5 to 4 bar");
    Objects.requireNonNull(liquid, "liquid");
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(units, "units");
  }

  /**
   * A choice for a liquid like water, in metric print.
   *
   * @param layout nozzles and widths
   * @param volume wanted volume per treated area
   * @param speed speed over ground
   * @param pressures pressures that are allowed
   * @return the choice
   */
  public static NozzleChoice of(
      SprayLayout layout, TreatedVolume volume, Speed speed, QuantityRange<Pressure> pressures) {
    return new NozzleChoice(
        layout,
        volume,
        speed,
        pressures,
        Optional.empty(),
        FlowBasis.LITRES_AT_3_BAR,
        SprayUnits.METRIC);
  }

  /**
   * A choice for a volume per area of field and a liquid like water, in metric print.
   *
   * @param layout nozzles and widths
   * @param volume wanted volume per ground area, dry strips counted
   * @param speed speed over ground
   * @param pressures pressures that are allowed
   * @return the choice
   */
  public static NozzleChoice of(
      SprayLayout layout, SprayVolume volume, Speed speed, QuantityRange<Pressure> pressures) {
    return of(layout, TreatedVolume.ofField(volume, layout), speed, pressures);
  }

  /**
   * The same choice for a liquid that is heavier or lighter than water.
   *
   * @param density density of the liquid
   * @return a new choice
   */
  public NozzleChoice spraying(LiquidDensity density) {
    return new NozzleChoice(layout, volume, speed, pressures, Optional.of(density), basis, units);
  }

  /**
   * The same choice in other units and on another basis of sizes.
   *
   * @param other units of print
   * @param sizes what the number of a size counts
   * @return a new choice
   */
  public NozzleChoice printedIn(SprayUnits other, FlowBasis sizes) {
    return new NozzleChoice(layout, volume, speed, pressures, liquid, sizes, other);
  }

  /**
   * Every size with the pressure it needs.
   *
   * @return the candidates, the smallest first, and the steps
   */
  public NozzleChoiceResult evaluate() {
    var required = RequiredSetting.flow(layout, volume, speed, units);
    var working = required.working();
    var water = required.nozzle();
    if (liquid.isPresent()) {
      water = new NozzleFlow(liquid.get().waterFlowFor(water.flow()));
      working =
          working.step(
              "flow of water with the same setting",
              "q(water) = q × √SG",
              units.flow(required.nozzle().flow()) + " × " + liquid.get().printedRoot(),
              units.flow(water.flow()),
              SprayerSources.LIQUID_DENSITY);
    }
    var candidates = new ArrayList<NozzleCandidate>();
    for (var size : NozzleSize.values()) {
      candidates.add(candidate(size, water));
    }
    working =
        working.step(
            "sizes that need a pressure from "
                + units.pressure(pressures.low())
                + " to "
                + units.pressure(pressures.high()),
            "p = p0 × (q / q0)², " + basis.words(),
            "",
            named(candidates),
            sources(candidates));
    return new NozzleChoiceResult(water, candidates, units, working.withCautions(Caution.all()));
  }

  private NozzleCandidate candidate(NozzleSize size, NozzleFlow water) {
    var curve = size.curve(basis);
    var needed = curve.pressureFor(water);
    double perFlow = speed.metresPerSecond() / water.flow().litresPerMinute();
    var slow = new Speed(perFlow * curve.flowAt(pressures.low()).litresPerMinute());
    var fast = new Speed(perFlow * curve.flowAt(pressures.high()).litresPerMinute());
    return new NozzleCandidate(size, needed, slow.to(fast), within(needed));
  }

  /** Rounding must not turn a nozzle at the very end of the range away. */
  private boolean within(Pressure needed) {
    double slack = 1e-9;
    return needed.ratioTo(pressures.low()) >= 1 - slack
        && needed.ratioTo(pressures.high()) <= 1 + slack;
  }

  private static Reference[] sources(List<NozzleCandidate> candidates) {
    var sizes =
        candidates.stream()
            .filter(NozzleCandidate::suitable)
            .map(one -> one.size().source())
            .distinct();
    return Stream.concat(Stream.of(SprayerSources.SQUARE_ROOT_LAW), sizes)
        .toArray(Reference[]::new);
  }

  private String named(List<NozzleCandidate> candidates) {
    var names =
        candidates.stream()
            .filter(NozzleCandidate::suitable)
            .map(one -> one.size() + " at " + units.pressure(one.pressure()))
            .collect(Collectors.joining(", "));
    return names.isEmpty() ? "none; change speed, volume or pressures" : names;
  }
}
