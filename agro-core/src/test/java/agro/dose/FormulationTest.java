package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Codes against the published lists: CropLife International, Technical Monograph 2, 7th edition,
 * revised March 2017, and the Ctgb Evaluation Manual of 2014, both as quoted.
 */
class FormulationTest {

  @ParameterizedTest
  @CsvSource({
    "EC, emulsifiable concentrate, DILUTED_IN_WATER, LIQUID",
    "sc, suspension concentrate, DILUTED_IN_WATER, LIQUID",
    "WG, water-dispersible granule, DILUTED_IN_WATER, SOLID",
    "WP, wettable powder, DILUTED_IN_WATER, SOLID",
    "GR, granule, UNDILUTED, SOLID",
    "UL, ultra-low-volume liquid, UNDILUTED, LIQUID",
    "FS, flowable concentrate for seed, SEED, LIQUID",
    "DS, powder for dry seed treatment, SEED, SOLID",
    "RB, ready bait, SPECIAL, SOLID"
  })
  void codes(String code, String name, FormulationUse use, ProductState state) {
    var formulation = Formulation.of(code);

    assertThat(formulation.name()).isEqualTo(name);
    assertThat(formulation.use()).isEqualTo(use);
    assertThat(formulation.state()).contains(state);
    assertThat(formulation.edition().version()).contains("2017");
    assertThat(formulation.source()).isEqualTo(DoseSources.FORMULATION_CODES_2017);
  }

  @Test
  void allCodesAreThereOnce() {
    var codes = new HashSet<String>();
    for (var formulation : Formulation.all()) {
      assertThat(codes.add(formulation.code())).as(formulation.code()).isTrue();
      assertThat(formulation.code()).matches("[A-Z]{2}");
    }
    assertThat(codes)
        .hasSize(60)
        .contains("EW", "EO", "ME", "SE", "OD", "CS", "DC", "ZC", "ZE", "ZW", "SP", "SG", "KK");
  }

  @Test
  void codesOfOlderEditionsSaySo() {
    assertThat(Formulation.of("CG").edition().version()).contains("2014");
    assertThat(Formulation.of("CG").source()).isEqualTo(DoseSources.FORMULATION_CODES_2014);
    assertThat(Formulation.of("CF").edition()).isNotEqualTo(Formulation.of("CS").edition());
  }

  @Test
  void aStrengthSuitsTheStateOrHasADensity() {
    assertThat(Formulation.of("EC").suits(Strength.parse("200 g/L"))).isTrue();
    assertThat(Formulation.of("EC").suits(Strength.parse("20 % w/w"))).isFalse();
    assertThat(Formulation.of("WG").suits(Strength.parse("700 g/kg"))).isTrue();
    assertThat(Formulation.of("WG").suits(Strength.parse("700 g/L"))).isFalse();
  }
}
