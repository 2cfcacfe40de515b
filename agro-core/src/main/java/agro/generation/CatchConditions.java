package agro.generation;

import java.util.ArrayList;
import java.util.Objects;
import java.util.Optional;

/**
 * What a catch depends on beside the flight and the nights that a trap was open. Each part is
 * optional and counts only when it is stated.
 *
 * @param lure how the lure fades
 * @param nights which nights are fit for flight
 * @param life how long adults live
 */
public record CatchConditions(
    Optional<LureFade> lure, Optional<FitNights> nights, Optional<AdultLife> life) {

  /** Nothing but the nights that a trap was open. */
  public static final CatchConditions NONE =
      new CatchConditions(Optional.empty(), Optional.empty(), Optional.empty());

  /** Refuses nulls. */
  public CatchConditions {
    Objects.requireNonNull(lure, "lure");
    Objects.requireNonNull(nights, "nights");
    Objects.requireNonNull(life, "life");
  }

  /**
   * The same with fading lures.
   *
   * @param fade how they fade
   * @return the changed conditions
   */
  public CatchConditions with(LureFade fade) {
    return new CatchConditions(Optional.of(fade), nights, life);
  }

  /**
   * The same with nights that do not count.
   *
   * @param fit which nights count
   * @return the changed conditions
   */
  public CatchConditions with(FitNights fit) {
    return new CatchConditions(lure, Optional.of(fit), life);
  }

  /**
   * The same with adults that live for some days.
   *
   * @param adults how long they live
   * @return the changed conditions
   */
  public CatchConditions with(AdultLife adults) {
    return new CatchConditions(lure, nights, Optional.of(adults));
  }

  boolean none() {
    return lure.isEmpty() && nights.isEmpty() && life.isEmpty();
  }

  boolean estimatesLure() {
    return lure.isPresent() && lure.get().halfLifeDays().isEmpty();
  }

  /**
   * The conditions in words.
   *
   * @return phrases for print
   */
  public String words() {
    var parts = new ArrayList<String>();
    lure.ifPresent(each -> parts.add(each.words()));
    nights.ifPresent(each -> parts.add(each.words()));
    life.ifPresent(each -> parts.add("adults live " + each.words()));
    return parts.isEmpty() ? "every open trap-night alike" : String.join("; ", parts);
  }
}
