package agro.development.rate;

import agro.ReferenceTable;
import java.util.ArrayList;

/** Published rearings for tests. */
final class Rearings {

  private Rearings() {}

  static RearingData named(String set) {
    var means = new ArrayList<RearingMean>();
    for (var line : ReferenceTable.read(Rearings.class, "rearings.csv")) {
      if (line.getField("set").equals(set)) {
        double celsius = ReferenceTable.number(line, "celsius");
        means.add(
            line.getField("days").equals("none")
                ? RearingMean.noDevelopment(celsius)
                : RearingMean.of(celsius, ReferenceTable.number(line, "days")));
      }
    }
    return RearingData.of(set, means);
  }

  static RateFitting fitting(String model, String fixed, boolean belowZero) {
    var fitting = RateFitting.of(RateModel.valueOf(model));
    if (!fixed.isEmpty()) {
      int space = fixed.indexOf(' ');
      fitting =
          fitting.withFixed(
              fixed.substring(0, space), Double.parseDouble(fixed.substring(space + 1)));
    }
    return belowZero ? fitting.withFormulaBelowZero() : fitting;
  }

  static double[] numbers(String text) {
    var words = text.split(" ", -1);
    double[] numbers = new double[words.length];
    for (int i = 0; i < words.length; i++) {
      numbers[i] = Double.parseDouble(words[i]);
    }
    return numbers;
  }
}
