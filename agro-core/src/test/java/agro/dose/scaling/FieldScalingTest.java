package agro.dose.scaling;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;

import agro.ReferenceTable;
import agro.dose.ActivePerArea;
import agro.dose.ActiveStrength;
import agro.dose.DoseLimit;
import agro.dose.DosePerArea;
import agro.dose.LabelLimits;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerPlant;
import agro.dose.ProductPerSeedCount;
import agro.dose.ProductPerSeedMass;
import agro.dose.ProductPerTreatedArea;
import agro.dose.Severity;
import agro.dose.SprayVolume;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Density;
import agro.units.Length;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.QuantityStyle;
import agro.units.Volume;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Seed, rows, drenches, bands and soil against worked numbers. */
class FieldScalingTest {

  @Test
  void seedTreatments() {
    for (var line : ReferenceTable.read(getClass(), "seed.csv")) {
      var id = line.getField("id");
      var treatment =
          SeedTreatment.of(
              ProductPerSeedMass.parse(line.getField("rate")), Mass.parse(line.getField("lot")));
      if (!line.getField("sowing").isEmpty()) {
        treatment = treatment.sownAt(MassPerArea.parse(line.getField("sowing")));
      }
      var result = treatment.evaluate();
      Near.amount(id, result.product(), line.getField("product"), 1e-9);
      Near.amount(id, result.per100Kilograms().amount(), line.getField("per_100_kg"), 1e-9);
      if (!line.getField("per_hectare").isEmpty()) {
        var perHectare = result.perArea().orElseThrow().perHectare();
        Near.amount(id, perHectare, line.getField("per_hectare"), 1e-9);
      }
      Near.presented(result);
    }
  }

  @Test
  void seedRatePerHundredweightAndBack() {
    var rate = ProductPerSeedMass.parse("4 fl oz (US)/cwt (US) seed");
    var result = SeedTreatment.of(rate, Mass.parse("50 lb")).evaluate(QuantityStyle.US);

    Near.amount("half", result.product(), "2 fl oz (US)", 1e-12);
    Near.amount("cwt", result.perShortHundredweight().amount(), "4 fl oz (US)", 1e-12);
  }

  @Test
  void ratePerSeedsNeedsTheMassOfThousandSeeds() {
    var rate = ProductPerSeedCount.parse("80 mL/100000 seeds");
    var result = SeedTreatment.of(rate, Mass.parse("250 g"), Mass.parse("25 kg")).evaluate();

    Near.amount("100 000 seeds in 25 kg", result.product(), "80 mL", 1e-12);
    Near.presented(result);
  }

  @Test
  void granulesAlongTheRow() {
    for (var line : ReferenceTable.read(getClass(), "rows.csv")) {
      var result =
          new RowGranules(
                  ProductPerArea.parse(line.getField("rate")),
                  Length.parse(line.getField("spacing")))
              .evaluate();
      var id = line.getField("id");
      var metre = result.perMetre().along(new Length(1));
      Near.amount(id, metre, line.getField("per_metre"), 1e-9);
      Near.number(id, result.rowPerHectare().metres(), number(line, "row_per_hectare_m"), 1e-9);
      Near.presented(result);
    }
    var active = ActiveStrength.parse("10 % w/w").activeIn(ProductAmount.parse("10 kg"));
    Near.number("H11 active", active.range().single().kilograms(), 1, 1e-12);
  }

  @Test
  void granulesOverACourse() {
    for (var line : ReferenceTable.read(getClass(), "granule-course.csv")) {
      var course =
          new GranuleCourse(
              ProductPerTreatedArea.parse(line.getField("rate")),
              Length.parse(line.getField("course")),
              Length.parse(line.getField("band")));
      var result = course.evaluate(QuantityStyle.US);
      Near.amount(line.getField("id"), result.target(), line.getField("target"), 1e-6);
      Near.presented(result);
    }
  }

  @Test
  void catchBeyondTenPerCentCallsForAnotherSetting() {
    var course =
        new GranuleCourse(
            ProductPerTreatedArea.parse("10 kg/ha treated area"),
            new Length(100),
            new Length(0.25));

    var good = course.compare(Mass.parse("27.5 g"), QuantityStyle.METRIC);
    assertThat(good.findings().get(0).severity()).isEqualTo(Severity.NOTE);
    var poor = course.compare(Mass.parse("22 g"), QuantityStyle.METRIC);
    assertThat(poor.findings().get(0).severity()).isEqualTo(Severity.WARNING);
    assertThat(poor.findings().get(0).sentence()).contains("-12.0 %", "adjust the outlet");
    Near.presented(poor);
  }

  @Test
  void catchInsideARangeOfRatesIsGood() {
    var course =
        new GranuleCourse(
            ProductPerTreatedArea.parse("10-20 kg/ha treated area"),
            new Length(100),
            new Length(0.25));

    for (var caught : new String[] {"22.5 g", "25 g", "40 g", "50 g", "55 g"}) {
      var finding = course.compare(Mass.parse(caught), QuantityStyle.METRIC).findings().get(0);
      assertThat(finding.severity()).as(caught).isEqualTo(Severity.NOTE);
    }
    for (var caught : new String[] {"22 g", "56 g"}) {
      var finding = course.compare(Mass.parse(caught), QuantityStyle.METRIC).findings().get(0);
      assertThat(finding.severity()).as(caught).isEqualTo(Severity.WARNING);
    }
  }

  @Test
  void drenches() {
    for (var line : ReferenceTable.read(getClass(), "drenches.csv")) {
      var id = line.getField("id");
      double tolerance = number(line, "tolerance");
      var spacing =
          new PlantSpacing(
              Length.parse(line.getField("rows")), Length.parse(line.getField("plants")));
      var result =
          PlantDrench.of(ProductPerArea.parse(line.getField("rate")), spacing)
              .in(SprayVolume.parse(line.getField("water")))
              .evaluate(QuantityStyle.METRIC.per(AreaUnit.ACRE));
      Near.number(id, result.plantsPerHectare(), number(line, "plants_per_hectare"), tolerance);
      Near.amount(id, result.perPlant().perPlant(), line.getField("product_per_plant"), tolerance);
      Near.amount(id, result.perField().perHectare(), line.getField("per_hectare"), tolerance);
      var solution = Volume.parse(line.getField("solution_per_plant"));
      Near.quantity(id, result.solutionPerPlant().orElseThrow(), solution, tolerance);
      Near.presented(result);
    }
  }

  @Test
  void drenchPerPlantGoesBackToTheField() {
    var spacing = new PlantSpacing(new Length(1), new Length(0.5));
    var result =
        PlantDrench.of(ProductPerPlant.parse("5 mL per 100 plants"), spacing)
            .wetting(new Area(0.05))
            .evaluate();

    Near.amount("field", result.perField().perHectare(), "1 L", 1e-12);
    Near.amount("wetted", result.perWettedArea().orElseThrow().perHectare(), "10 L", 1e-12);
    assertThat(result.working().toText()).contains("beside the field");
    Near.presented(result);
  }

  /** 55 to 60 days after planting: common practice, no source. */
  @Test
  void drenchIsGivenFiftyFiveToSixtyDaysAfterPlanting() {
    var planted = LocalDate.of(2024, 1, 5);
    var window = DrenchWindow.COMMON_PRACTICE;

    assertThat(window.opens(planted)).isEqualTo("2024-02-29");
    assertThat(window.closes(planted)).isEqualTo("2024-03-05");
    assertThat(window.holds(planted, LocalDate.of(2024, 2, 28))).isFalse();
    assertThat(window.holds(planted, LocalDate.of(2024, 3, 5))).isTrue();
    assertThat(window.source().citation()).contains("common practice, no source");
  }

  @Test
  void bands() {
    for (var line : ReferenceTable.read(getClass(), "bands.csv")) {
      var id = line.getField("id");
      var result =
          new BandTreatment(
                  ProductPerTreatedArea.parse(line.getField("on_band")),
                  TreatedSprayVolume.parse(line.getField("spray")),
                  Length.parse(line.getField("band")),
                  Length.parse(line.getField("rows")))
              .evaluate();
      var field = ProductPerArea.parse(line.getField("per_field")).perHectare();
      Near.number(id, result.perField().perHectare().lowNumber(), field.lowNumber(), 1e-9);
      var spray = SprayVolume.parse(line.getField("field_spray"));
      Near.quantity(id, result.fieldSpray().perArea(), spray.perArea(), 1e-9);
      // the strength in the tank is that of the broadcast spray
      double onBand =
          result.onBand().perHectare().lowNumber()
              / result.onBandSpray().perTreatedArea().litresPerHectare();
      Near.number(id, result.strength().perLitre().lowNumber(), onBand, 1e-9);
      assertThat(result.presentation().toText())
          .contains("On treated ground", "On the field")
          .doesNotContain("666666666");
      Near.presented(result);
    }
  }

  @Test
  void doseOnTheBandIsHeldAgainstTheLabel() {
    var broadcast = ProductPerArea.parse("5 L/ha");
    var result =
        new BandTreatment(
                BandTreatment.asOnBand(broadcast),
                TreatedSprayVolume.parse("300 L/ha"),
                new Length(0.25),
                new Length(0.75))
            .evaluate();
    DosePerArea most = ProductPerArea.parse("2 L/ha");
    var limits = LabelLimits.of("Product A on leeks").with(DoseLimit.maximum(most));

    // 1.67 L per field hectare are under 2 L, but the ground in the band gets 5 L per hectare.
    var check = result.against(limits, Optional.empty());
    assertThat(check.worst()).isEqualTo(Severity.ERROR);
  }

  @Test
  void soilConcentration() {
    var result =
        new SoilConcentration(
                ActivePerArea.parse("1 kg ai/ha"),
                Length.parse("15 cm"),
                Density.parse("1.3 g/cm³"))
            .evaluate();

    Near.number("H19", result.concentration().single().gramsPerKilogram() * 1000, 0.5128, 1e-4);
    assertThat(result.working().toText()).contains("0.5128 mg/kg");
    Near.presented(result);
  }
}
