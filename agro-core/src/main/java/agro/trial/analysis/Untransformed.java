package agro.trial.analysis;

import java.util.Optional;
import java.util.OptionalInt;

/** Values that are analysed as they are. */
public record Untransformed() implements Transformation {

  @Override
  public String words() {
    return "not transformed";
  }

  @Override
  public Optional<String> refusal(double value, OptionalInt outOf) {
    return Optional.empty();
  }

  @Override
  public String cure() {
    return "";
  }

  @Override
  public double apply(double value, OptionalInt outOf) {
    return value;
  }

  @Override
  public double back(double transformed) {
    return transformed;
  }
}
