package agro.programme.rotation;

import agro.programme.CropPlanting;
import agro.programme.Programme;
import agro.programme.SprayedProduct;
import agro.programme.Spraying;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What has been applied to the field already, as the limits of a plan count it. */
final class PlanPast {

  /**
   * One product of one application.
   *
   * @param day the day
   * @param product the product with its dose
   * @param planting the crop that it counts for
   * @param beforeTheField whether the plants stood in the nursery
   * @param uses its active ingredients
   */
  record Applied(
      LocalDate day,
      SprayedProduct product,
      Optional<CropPlanting> planting,
      boolean beforeTheField,
      List<GroupUse> uses) {}

  private final List<Applied> applied = new ArrayList<>();

  PlanPast(Programme programme, String field, ModeOfActionTable table) {
    var zone = programme.field(field).zone();
    for (Spraying spraying : programme.sprayingsOf(field)) {
      var uses = GroupUse.of(spraying, zone, programme.labels(), table);
      for (var product : spraying.products()) {
        applied.add(
            new Applied(
                spraying.day(zone),
                product,
                programme.plantingOf(spraying),
                spraying.way().beforeTheField(),
                uses.stream().filter(use -> use.product().equals(product.product())).toList()));
      }
    }
  }

  List<Applied> all() {
    return applied;
  }

  /** What was applied to the plants in the field. */
  List<Applied> inField() {
    return applied.stream().filter(each -> !each.beforeTheField()).toList();
  }
}
