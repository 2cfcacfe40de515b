package agro.notebook.hint;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.display.Slip;
import agro.notebook.display.SlipHint;
import java.util.Optional;
import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityHintTest {

  private final SlipHint hint = new QuantityHint();

  private static Slip mismatch(String found, String required) {
    return new Slip("incompatible types", found, required, "", "", Optional.empty());
  }

  @Test
  void itIsFoundAsAService() {
    assertThat(ServiceLoader.load(SlipHint.class)).anyMatch(QuantityHint.class::isInstance);
  }

  @ParameterizedTest
  @EnumSource(Quantity.class)
  void everyQuantityIsAClassOfOurs(Quantity quantity) throws ClassNotFoundException {
    assertThat(Class.forName(quantity.typeName())).isNotNull();
  }

  @ParameterizedTest
  @EnumSource(Quantity.class)
  void aBareNumberIsToldItsUnit(Quantity quantity) {
    assertThat(hint.hint(mismatch("double", quantity.typeName())).orElseThrow())
        .contains(quantity.made());
  }

  @Test
  void aPairThatNobodyThoughtOfStillHasAHint() {
    assertThat(
            hint.hint(mismatch("agro.units.TemperatureUnit", "agro.units.TemperatureDifference")))
        .hasValueSatisfying(text -> assertThat(text).contains("TemperatureDifference.of("));
  }

  @Test
  void othersTypesAreLeftToOthers() {
    assertThat(hint.hint(mismatch("java.lang.String", "int"))).isEmpty();
    assertThat(hint.hint(mismatch("java.util.List", "agro.units.Temperature"))).isEmpty();
    assertThat(
            hint.hint(
                new Slip("no", "", "", "", "", Optional.of(new IllegalArgumentException("no")))))
        .isEmpty();
  }

  @Test
  void theWrongOneOfSeveralArgumentsIsNamed() {
    var slip =
        new Slip(
            "method plus cannot be applied",
            "agro.units.Temperature,int",
            "agro.units.TemperatureDifference,int",
            "plus",
            "",
            Optional.empty());
    assertThat(hint.hint(slip).orElseThrow()).startsWith("A temperature is not a difference");
  }
}
