package agro.development.rate;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import agro.units.Numbers;

/** What a figure of a rearing must be, whether it came from code or from a file. */
final class RearingChecks {

  private static final double COLDEST = -30;
  private static final double HOTTEST = 70;

  private RearingChecks() {}

  static double celsius(double value, SourceLocation place) {
    if (!(value >= COLDEST && value <= HOTTEST)) {
      throw InputProblem.at(place, "the temperature of a rearing is " + Numbers.plain(value))
          .expected("a temperature in °C between -30 and 70")
          .because("rearings are kept where animals may live, and the rate is fitted against it")
          .mend("correct it, or convert it from °F or K to °C");
    }
    return value;
  }

  static double days(double value, SourceLocation place) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw InputProblem.at(
              place, "the duration of a development is " + Numbers.plain(value) + " d")
          .expected("a number of days above 0")
          .because("the rate is one over the duration")
          .mend(
              "correct the days; where no animal developed, say so: \"none\" in a file,"
                  + " withoutDevelopmentAt in code");
    }
    return value;
  }

  static int count(int value, SourceLocation place) {
    if (value < 1) {
      throw InputProblem.at(place, "the number of animals is " + value)
          .expected("1 or more")
          .because("a mean or a line of a record stands for at least one animal")
          .mend("correct the number, or remove the line");
    }
    return value;
  }

  static double deviation(double value, SourceLocation place) {
    if (!(value >= 0 && Double.isFinite(value))) {
      throw InputProblem.at(place, "the standard deviation of the days is " + Numbers.plain(value))
          .expected("a number of at least 0")
          .because("it says how far single animals lie from the mean")
          .mend("correct it, or leave it out");
    }
    return value;
  }

  static void interval(double from, double to, SourceLocation place) {
    if (!(from >= 0 && to > from)) {
      throw InputProblem.at(
              place,
              "an animal was not yet developed on day "
                  + Numbers.plain(from)
                  + " and was seen developed on day "
                  + Numbers.plain(to))
          .expected("two looks of which the second is later, the first on day 0 or after it")
          .because("the development ended between the two")
          .mend("give the day of the last look before and of the first look after");
    }
  }
}
