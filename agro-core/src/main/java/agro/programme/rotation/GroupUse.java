package agro.programme.rotation;

import agro.programme.LabelActive;
import agro.programme.LabelBook;
import agro.programme.Spraying;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One active ingredient of one application. A mixture is as many uses as it has active ingredients.
 *
 * @param spraying name of the application
 * @param day its day in the field
 * @param product the product
 * @param active the active ingredient; empty if the product's record names none
 * @param mode its group; nothing if not recorded
 * @param beforeTheField whether the plants stood in the nursery
 */
public record GroupUse(
    String spraying,
    LocalDate day,
    String product,
    String active,
    Optional<ModeOfAction> mode,
    boolean beforeTheField) {

  /**
   * The uses in an application.
   *
   * @param spraying the application
   * @param zone clock of the field
   * @param labels label records
   * @param table the groups
   * @return one use for each active ingredient, and one without a group for a product of which no
   *     active ingredient is recorded
   */
  static List<GroupUse> of(
      Spraying spraying, ZoneId zone, LabelBook labels, ModeOfActionTable table) {
    var uses = new ArrayList<GroupUse>();
    for (var product : spraying.products()) {
      var actives = labels.activesOf(product.product());
      if (actives.isEmpty()) {
        uses.add(use(spraying, zone, product.product(), "", Optional.empty()));
      }
      for (LabelActive active : actives) {
        var mode = active.group().map(group -> table.of(group, active.name()));
        uses.add(use(spraying, zone, product.product(), active.name(), mode));
      }
    }
    return uses;
  }

  private static GroupUse use(
      Spraying spraying, ZoneId zone, String product, String active, Optional<ModeOfAction> mode) {
    return new GroupUse(
        spraying.name(),
        spraying.day(zone),
        product,
        active,
        mode,
        spraying.way().beforeTheField());
  }

  /**
   * The use in words.
   *
   * @return for example {@code "Product A on 2026-06-01 (group 28)"}
   */
  public String words() {
    return product + " on " + day + mode.map(m -> " (group " + m.group() + ")").orElse("");
  }
}
