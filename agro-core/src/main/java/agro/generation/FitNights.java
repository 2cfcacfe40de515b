package agro.generation;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.Temperature;
import agro.weather.DailyTemperatures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which nights are fit for flight. The others do not count as trapping: a trap that stood in a cold
 * or windy night tells nothing of the moths.
 *
 * <p>A night is named by the day on whose evening it begins. Its minimum is that of the morning
 * after; its evening temperature is taken halfway between the maximum of the day and that minimum
 * (common practice, no source: a temperature of that height is passed about sunset).
 *
 * @param leastMinimum nights with a colder minimum are unfit
 * @param leastEvening nights with a colder evening are unfit
 * @param unfit nights known to be unfit for another reason, such as wind
 */
public record FitNights(
    Optional<Temperature> leastMinimum, Optional<Temperature> leastEvening, Set<LocalDate> unfit) {

  /** Copies the set. */
  public FitNights {
    unfit = Set.copyOf(unfit);
  }

  /**
   * Nights whose minimum is not below a temperature.
   *
   * @param least the temperature
   * @return the rule
   */
  public static FitNights minimumAtLeast(Temperature least) {
    return new FitNights(Optional.of(least), Optional.empty(), Set.of());
  }

  /**
   * Nights whose evening is not colder than a temperature.
   *
   * @param least the temperature
   * @return the rule
   */
  public static FitNights eveningAtLeast(Temperature least) {
    return new FitNights(Optional.empty(), Optional.of(least), Set.of());
  }

  /**
   * Nights whose wind is not above a limit; nights without a reading are fit.
   *
   * @param windMetresPerSecond wind by the day on whose evening the night begins, in m/s
   * @param mostMetresPerSecond the limit in m/s
   * @return the rule
   */
  public static FitNights windAtMost(
      Map<LocalDate, Double> windMetresPerSecond, double mostMetresPerSecond) {
    if (!(mostMetresPerSecond >= 0)) {
      throw InputProblem.of("a limit of the wind of " + mostMetresPerSecond + " m/s")
          .expected("0 m/s or more")
          .because("nights with more wind do not count as trapping")
          .mend("state the wind above which nothing flies");
    }
    return except(
        windMetresPerSecond.entrySet().stream()
            .filter(night -> night.getValue() > mostMetresPerSecond)
            .map(Map.Entry::getKey)
            .collect(Collectors.toSet()));
  }

  /**
   * All nights except some.
   *
   * @param unfit nights by the day on whose evening they begin
   * @return the rule
   */
  public static FitNights except(Set<LocalDate> unfit) {
    return new FitNights(Optional.empty(), Optional.empty(), unfit);
  }

  /**
   * Nights that this rule and another one both call fit; where both state a temperature, the warmer
   * one counts.
   *
   * @param other the other rule
   * @return the stricter rule
   */
  public FitNights and(FitNights other) {
    var nights = new HashSet<>(unfit);
    nights.addAll(other.unfit);
    return new FitNights(
        warmer(leastMinimum, other.leastMinimum), warmer(leastEvening, other.leastEvening), nights);
  }

  private static Optional<Temperature> warmer(Optional<Temperature> a, Optional<Temperature> b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.isPresent() ? a : b;
    }
    return a.get().compareTo(b.get()) >= 0 ? a : b;
  }

  /** Whether the rule needs temperatures. */
  boolean needsTemperatures() {
    return leastMinimum.isPresent() || leastEvening.isPresent();
  }

  /**
   * Whether a night is fit for flight.
   *
   * @param night the day on whose evening it begins
   * @param temperatures temperatures of the place; a night without them is taken as fit
   * @return false when one of the limits says so
   */
  public boolean isFit(LocalDate night, DailyTemperatures temperatures) {
    return !unfit.contains(night) && (!needsTemperatures() || isWarm(night, temperatures));
  }

  boolean isUnfitByName(LocalDate night) {
    return unfit.contains(night);
  }

  private boolean isWarm(LocalDate night, DailyTemperatures temperatures) {
    if (!temperatures.covers(night)) {
      return true;
    }
    var after = night.plusDays(1);
    var minimum = temperatures.minCelsius(temperatures.covers(after) ? after : night);
    var evening = 0.5 * (temperatures.maxCelsius(night) + minimum);
    return !(leastMinimum.isPresent() && minimum < leastMinimum.get().celsius())
        && !(leastEvening.isPresent() && evening < leastEvening.get().celsius());
  }

  /**
   * The rule in words.
   *
   * @return a phrase for print
   */
  public String words() {
    var parts = new ArrayList<String>();
    leastMinimum.ifPresent(t -> parts.add("a minimum below " + Numbers.plain(t.celsius()) + " °C"));
    leastEvening.ifPresent(
        t -> parts.add("an evening below " + Numbers.plain(t.celsius()) + " °C"));
    if (!unfit.isEmpty()) {
      parts.add("a place on the list of " + unfit.size() + " unfit nights");
    }
    return parts.isEmpty()
        ? "every night counts as trapping"
        : "nights with " + String.join(" or ", parts) + " do not count as trapping";
  }
}
