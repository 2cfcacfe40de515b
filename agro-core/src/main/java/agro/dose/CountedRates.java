package agro.dose;

import agro.report.InputProblem;
import agro.units.ParsedRate;
import agro.units.RateDenominator;

/** Rates per plant, per tray, per seed and per spot, and the things that are none. */
final class CountedRates {

  private CountedRates() {}

  static LabelRate read(ParsedRate rate, RateDenominator.PerThing per) {
    if (AmountReader.isActive(rate.amount())) {
      throw activeElsewhere(rate);
    }
    AmountReader.requireProduct(rate.amount());
    var amount = AmountReader.product(rate.amount());
    var place = PlantingPlace.named(per.thing());
    if (place.isPresent()) {
      return new ProductPerPlant(amount, per.amount(), place.get());
    }
    return switch (per.thing()) {
      case "tray" -> new ProductPerTray(amount, per.amount());
      case "seed" -> new ProductPerSeedCount(amount, per.amount());
      case "spot", "stump", "stem" -> new ProductPerSpot(amount, per.amount());
      case "load", "tank", "knapsack", "pump", "sprayer" -> throw vessel(rate.text(), per.thing());
      case "application", "season" -> throw limit(rate.text(), per.thing());
      default -> throw unknownThing(rate.text(), per.thing());
    };
  }

  static InputProblem activeElsewhere(ParsedRate rate) {
    return InputProblem.of("\"" + rate.text() + "\" is active ingredient per " + rate.per())
        .expected("active ingredient per area of the field, volume of spray or mass of seed")
        .because(
            "elsewhere labels state product, and the strength is needed to come from one to"
                + " the other")
        .mend("divide the active ingredient by the strength and write the rate of product");
  }

  private static InputProblem vessel(String text, String thing) {
    return InputProblem.of("\"" + text + "\" is per " + thing + " of a size that is not said")
        .expected("the volume of spray that the amount is for")
        .because("a knapsack may hold 10 L or 20 L, so that the strength may be twice as high")
        .mend("write the volume instead of the " + thing + ", for example \"30 mL/15 L\"");
  }

  private static InputProblem limit(String text, String thing) {
    return InputProblem.of("\"" + text + "\" is per " + thing)
        .expected("what one " + thing + " treats, such as an area")
        .because("the number of times belongs to the limits of a label and not to its rate")
        .mend("write the rate per area, and the rest as a limit of the label");
  }

  private static InputProblem unknownThing(String text, String thing) {
    return InputProblem.of("\"" + text + "\" is per " + thing)
        .expected("a rate per plant, tree, hole, tray, seed or spot")
        .because("this library does not know how many of a " + thing + " stand on a field")
        .mend("write the rate per plant or per area, or count the " + thing + "s as spots");
  }
}
