package agro.dose.tank;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Puts the partners of a mix into the places of an order, and looks at what other orders say. */
final class MixingPlaces {

  private MixingPlaces() {}

  static MixingSequence sequence(List<TankPartner> partners, MixingOrder order) {
    var steps = new ArrayList<MixingSequence.Placed>();
    for (var step : order.steps()) {
      var products =
          step.classes().stream()
              .flatMap(c -> partners.stream().filter(p -> p.mixClass().equals(Optional.of(c))))
              .map(TankPartner::product)
              .toList();
      if (step.classes().isEmpty() || !products.isEmpty()) {
        steps.add(new MixingSequence.Placed(step, products));
      }
    }
    var without =
        partners.stream()
            .filter(p -> p.mixClass().stream().noneMatch(c -> order.placeOf(c).isPresent()))
            .map(TankPartner::product)
            .toList();
    return new MixingSequence(order, steps, without, disagreements(classes(partners), order));
  }

  private static List<MixClass> classes(List<TankPartner> partners) {
    return partners.stream().flatMap(p -> p.mixClass().stream()).distinct().sorted().toList();
  }

  private static List<String> disagreements(List<MixClass> classes, MixingOrder order) {
    Set<String> sentences = new LinkedHashSet<>();
    for (var first : classes) {
      for (var second : classes) {
        if (isBefore(order, first, second)) {
          for (var other : PublishedMixingOrder.all()) {
            if (isBefore(other, second, first)) {
              sentences.add(
                  "Sources disagree: "
                      + other.name()
                      + " puts "
                      + second.words()
                      + " before "
                      + first.words()
                      + "; "
                      + order.name()
                      + " has it the other way round.");
            }
          }
        }
      }
    }
    return List.copyOf(sentences);
  }

  private static boolean isBefore(MixingOrder order, MixClass first, MixClass second) {
    var early = order.placeOf(first);
    var late = order.placeOf(second);
    return early.isPresent() && late.isPresent() && early.getAsInt() < late.getAsInt();
  }
}
