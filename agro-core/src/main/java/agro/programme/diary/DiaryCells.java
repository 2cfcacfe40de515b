package agro.programme.diary;

import agro.programme.SprayedProduct;
import agro.units.Numbers;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The cells of a record by column. */
final class DiaryCells {

  /** Between the products of a mixture, and between their doses and lots. */
  static final String PARTNERS = " + ";

  private DiaryCells() {}

  static Map<String, String> of(DiaryRecord what) {
    if (what instanceof AdvisedUse use) {
      return advised(use);
    }
    if (what instanceof BoughtProduct product) {
      return bought(product);
    }
    if (what instanceof AppliedUse use) {
      return applied(use);
    }
    return what instanceof ScoutedField field ? scouted(field) : released((ReleasedEnemy) what);
  }

  private static Map<String, String> advised(AdvisedUse use) {
    var cells = new LinkedHashMap<String, String>();
    cells.put("day", use.day().toString());
    cells.put("field", use.field());
    cells.put("product", use.product());
    cells.put("dose", text(use.dose()));
    cells.put("from", text(use.from()));
    cells.put("to", text(use.to()));
    cells.put("adviser", use.adviser());
    cells.put("reason", use.reason());
    return cells;
  }

  private static Map<String, String> bought(BoughtProduct product) {
    var cells = new LinkedHashMap<String, String>();
    cells.put("day", product.day().toString());
    cells.put("product", product.product());
    cells.put("lot", product.lot());
    cells.put("amount", text(product.amount()));
    cells.put("note", product.note());
    return cells;
  }

  private static Map<String, String> applied(AppliedUse use) {
    var spraying = use.spraying();
    var conditions = use.conditions();
    var cells = new LinkedHashMap<String, String>();
    cells.put("start", spraying.start().toString());
    cells.put("end", spraying.end().toString());
    cells.put("field", spraying.field());
    cells.put("products", partners(spraying.products(), SprayedProduct::product));
    cells.put("doses", partners(spraying.products(), each -> text(each.dose())));
    cells.put("lots", partners(spraying.products(), SprayedProduct::lot));
    cells.put("way", spraying.way().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    cells.put("treated_area", text(spraying.treatedArea()));
    cells.put("crop_stage", spraying.cropStage());
    cells.put("volume", conditions.volume());
    cells.put("nozzle", conditions.nozzle());
    cells.put("operator", conditions.operator());
    cells.put("wind_m_per_s", number(conditions.windMetresPerSecond()));
    cells.put("temperature_c", number(conditions.celsius()));
    cells.put("reason", spraying.reason());
    cells.put("count", conditions.count());
    return cells;
  }

  /** One part for each product, empty where nothing is recorded; nothing at all if none is. */
  private static String partners(
      List<SprayedProduct> products, Function<SprayedProduct, String> part) {
    boolean none = products.stream().allMatch(each -> part.apply(each).isEmpty());
    return none
        ? ""
        : products.stream()
            .map(part)
            .map(text -> text.isEmpty() ? "-" : text)
            .collect(Collectors.joining(PARTNERS));
  }

  private static Map<String, String> scouted(ScoutedField field) {
    var cells = new LinkedHashMap<String, String>();
    cells.put("day", field.day().toString());
    cells.put("field", field.field());
    cells.put("pest", field.pest());
    cells.put("count", number(field.count()));
    cells.put("units", number(field.units()));
    cells.put("unit", field.unit());
    cells.put("trap", field.trap());
    cells.put("visit", field.visit().word());
    cells.put("nights_open", number(field.nightsOpen()));
    cells.put("lure_renewed", field.lureRenewed() ? "yes" : "");
    cells.put("scout", field.scout());
    return cells;
  }

  private static Map<String, String> released(ReleasedEnemy enemy) {
    var cells = new LinkedHashMap<String, String>();
    cells.put("day", enemy.day().toString());
    cells.put("field", enemy.field());
    cells.put("organism", enemy.organism());
    cells.put("amount", enemy.amount());
    cells.put("lot", enemy.lot());
    cells.put("note", enemy.note());
    return cells;
  }

  private static String text(Optional<?> value) {
    return value.map(Object::toString).orElse("");
  }

  private static String number(OptionalDouble number) {
    return number.isPresent() ? Numbers.plain(number.getAsDouble()) : "";
  }

  private static String number(OptionalInt number) {
    return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
  }
}
