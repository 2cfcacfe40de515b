package agro.dose;

import agro.report.InputProblem;
import agro.units.Area;
import agro.units.Length;
import agro.units.Mass;
import agro.units.MassUnit;
import agro.units.NumberRange;
import agro.units.ParsedAmount;
import agro.units.ParsedQuantity;
import agro.units.ParsedRate;
import agro.units.QuantityKind;
import agro.units.QuantityText;
import agro.units.RateDenominator;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumeUnit;
import java.util.Objects;
import java.util.Set;

/** Turns the text of a label into a rate of one kind. */
final class RateReader {

  private static final Set<String> GROUND = Set.of("", "ground", "field");
  private static final Set<String> WALL = Set.of("leaf wall", "leaf wall area", "lwa");
  private static final Set<String> ROW_VOLUME = Set.of("tree row volume", "trv");
  private static final Set<String> SPRAY =
      Set.of("", "water", "spray", "spray solution", "solution", "spray liquid");
  private static final Set<String> SEED = Set.of("seed", "seeds");

  private RateReader() {}

  static LabelRate read(String text) {
    Objects.requireNonNull(text, "text");
    var basis = MoistureWords.of(text);
    ParsedQuantity parsed = QuantityText.parse(basis.without());
    requireSomething(parsed);
    if (parsed instanceof ParsedAmount amount) {
      basis.requireNone(text);
      return share(amount);
    }
    var rate = (ParsedRate) parsed;
    if (rate.per() instanceof RateDenominator.PerThing thing) {
      basis.requireNone(text);
      return CountedRates.read(rate, thing);
    }
    var per = (RateDenominator.PerUnit) rate.per();
    if (per.unit().kind() != QuantityKind.MASS) {
      basis.requireNone(text);
    }
    return AmountReader.isActive(rate.amount())
        ? active(rate, per)
        : product(text, rate, per, basis);
  }

  static <R extends LabelRate> R only(String text, Class<R> type, RateKind kind) {
    var rate = read(text);
    if (type.isInstance(rate)) {
      return type.cast(rate);
    }
    throw InputProblem.of("\"" + text + "\" is " + rate.kind().words())
        .expected(kind.words() + ", for example \"" + kind.example() + "\"")
        .because("the two become one another only through a further figure that has to be stated")
        .mend("read it with LabelRate.parse and convert it, or write the rate of the other kind");
  }

  private static void requireSomething(ParsedQuantity parsed) {
    if (!(parsed.numbers().high() > 0)) {
      throw InputProblem.of("\"" + parsed.text() + "\" is a rate of nothing")
          .expected("an amount above zero")
          .because("nobody applies a product at a rate of zero; a digit may be missing")
          .mend("copy the rate from the label, or leave the product out");
    }
  }

  static void requireNumber(double number) {
    if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of(number + " things stand below the line of a rate")
          .expected("a finite number above zero")
          .because("nothing can be divided by it")
          .mend("state for how many plants, trays, seeds or spots the amount is meant");
    }
  }

  /** "0.2 % v/v" and "1 in 500": product in spray. */
  private static LabelRate share(ParsedAmount amount) {
    AmountReader.requireProduct(amount);
    double low = amount.unit().toBase(amount.numbers().low());
    double high = amount.unit().toBase(amount.numbers().high());
    var litre = new WrittenAmount<>(100, VolumeUnit.LITRE);
    if (amount.unit().kind() == QuantityKind.VOLUME_PER_VOLUME) {
      var numbers = new NumberRange(low / 10, high / 10);
      return new ProductPerSprayVolume(
          AmountReader.product(amount.text(), VolumeUnit.LITRE, numbers), litre);
    }
    if (amount.unit().kind() == QuantityKind.MASS_PER_VOLUME) {
      var numbers = new NumberRange(low / 10, high / 10);
      return new ProductPerSprayVolume(
          AmountReader.product(amount.text(), MassUnit.KILOGRAM, numbers), litre);
    }
    throw InputProblem.of("\"" + amount.text() + "\" states " + amount.unit().kind().words())
        .expected("an amount of product per something, for example \"0.75 L/ha\"")
        .because("an amount alone does not say for what area, volume or number it is meant")
        .mend("write what the amount is per, or read it with ProductAmount.parse");
  }

  @SuppressWarnings("unchecked") // The kind of a unit says of which quantity it is.
  private static LabelRate active(ParsedRate rate, RateDenominator.PerUnit per) {
    var amount = AmountReader.active(rate.amount());
    if (per.unit().kind() == QuantityKind.AREA && GROUND.contains(per.of())) {
      return new ActivePerArea(amount, new WrittenAmount<>(per.amount(), (Unit<Area>) per.unit()));
    }
    if (per.unit().kind() == QuantityKind.VOLUME && SPRAY.contains(per.of())) {
      return new ActivePerSprayVolume(
          amount, new WrittenAmount<>(per.amount(), (Unit<Volume>) per.unit()));
    }
    if (per.unit().kind() == QuantityKind.MASS && SEED.contains(per.of())) {
      return new ActivePerSeedMass(
          amount, new WrittenAmount<>(per.amount(), (Unit<Mass>) per.unit()));
    }
    throw CountedRates.activeElsewhere(rate);
  }

  private static ProductRate product(
      String text, ParsedRate rate, RateDenominator.PerUnit per, MoistureWords basis) {
    AmountReader.requireProduct(rate.amount());
    var amount = AmountReader.product(rate.amount());
    return switch (per.unit().kind()) {
      case AREA -> perArea(rate, amount, per);
      case VOLUME -> perVolume(rate, amount, per);
      case LENGTH -> perLength(rate, amount, per);
      case MASS -> perMass(text, amount, per, basis);
      default -> throw unknownBelow(rate.text(), per);
    };
  }

  @SuppressWarnings("unchecked") // The kind of a unit says of which quantity it is.
  private static ProductRate perArea(
      ParsedRate rate, ProductAmount amount, RateDenominator.PerUnit per) {
    var area = new WrittenAmount<>(per.amount(), (Unit<Area>) per.unit());
    if (GROUND.contains(per.of())) {
      return new ProductPerArea(amount, area);
    }
    if (per.of().equals("treated area")) {
      return new ProductPerTreatedArea(amount, area);
    }
    if (WALL.contains(per.of())) {
      return new ProductPerLeafWallArea(amount, area);
    }
    throw unknownBelow(rate.text(), per);
  }

  @SuppressWarnings("unchecked") // The kind of a unit says of which quantity it is.
  private static ProductRate perVolume(
      ParsedRate rate, ProductAmount amount, RateDenominator.PerUnit per) {
    var volume = new WrittenAmount<>(per.amount(), (Unit<Volume>) per.unit());
    if (ROW_VOLUME.contains(per.of())) {
      return new ProductPerTreeRowVolume(amount, volume);
    }
    boolean spatial = per.unit() == VolumeUnit.CUBIC_METRE || per.unit() == VolumeUnit.CUBIC_FOOT;
    if (spatial && per.of().isEmpty()) {
      throw InputProblem.of("\"" + rate.text() + "\" is per " + per + " of what is not said")
          .expected("the volume of the tree rows or of the spray")
          .because("both are measured in cubic metres, and a spray holds far more product")
          .mend("write \"" + rate.text() + " TRV\" or \"" + rate.text() + " water\"");
    }
    if (SPRAY.contains(per.of())) {
      return new ProductPerSprayVolume(amount, volume);
    }
    throw unknownBelow(rate.text(), per);
  }

  @SuppressWarnings("unchecked") // The kind of a unit says of which quantity it is.
  private static ProductRate perLength(
      ParsedRate rate, ProductAmount amount, RateDenominator.PerUnit per) {
    if (per.of().isEmpty() || per.of().equals("row")) {
      return new ProductPerRowLength(
          amount, new WrittenAmount<>(per.amount(), (Unit<Length>) per.unit()));
    }
    throw unknownBelow(rate.text(), per);
  }

  @SuppressWarnings("unchecked") // The kind of a unit says of which quantity it is.
  private static ProductRate perMass(
      String text, ProductAmount amount, RateDenominator.PerUnit per, MoistureWords basis) {
    var mass = new WrittenAmount<>(per.amount(), (Unit<Mass>) per.unit());
    if (SEED.contains(per.of())) {
      basis.requireNone(text);
      return new ProductPerSeedMass(amount, mass);
    }
    if (per.of().isEmpty()) {
      throw InputProblem.of("\"" + text + "\" is per " + per + " of what is not said")
          .expected("what is treated: seed, manure, compost, substrate or soil")
          .because("seed is weighed as it is, and a substrate needs its moisture basis")
          .mend("write \"" + text + " seed\" or \"" + text + " manure (wet)\"");
    }
    var words = basis.with(per.of());
    var substrate = Substrate.named(words.substance());
    if (substrate.isEmpty()) {
      throw unknownBelow(text, per);
    }
    return words.wet(text)
        ? new ProductPerWetSubstrate(amount, mass, substrate.get())
        : new ProductPerDrySubstrate(amount, mass, substrate.get());
  }

  private static InputProblem unknownBelow(String text, RateDenominator.PerUnit per) {
    return InputProblem.of("\"" + text + "\" is per " + per)
        .expected(
            "an area of field, treated area or leaf wall, a volume of spray or tree row, a length"
                + " of row, or a mass of seed or substrate")
        .because("this library knows no rate that is per " + per + ", and takes it for no other")
        .mend("write what the label states below the line, for example \"0.75 L/ha\"");
  }
}
