package agro.programme;

import agro.report.InputProblem;
import agro.units.Area;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One application, made or planned, with all products that were in the tank.
 *
 * @param name unique name, such as the number of its entry in the diary
 * @param start when it began
 * @param end when it was over; the re-entry clock starts here
 * @param field the field
 * @param products the products of the mixture, at least one
 * @param way how it was brought out
 * @param treatedArea what was treated; nothing if not recorded or the whole field
 * @param cropStage stage of the crop in the words of the user; empty if not recorded
 * @param reason why; empty if not recorded
 */
public record Spraying(
    String name,
    ZonedDateTime start,
    ZonedDateTime end,
    String field,
    List<SprayedProduct> products,
    ApplicationWay way,
    Optional<Area> treatedArea,
    String cropStage,
    String reason) {

  /** Refuses an application without a product or one that ends before it begins. */
  public Spraying {
    Objects.requireNonNull(way, "way");
    Objects.requireNonNull(treatedArea, "treatedArea");
    name = name.strip();
    field = field.strip();
    cropStage = cropStage.strip();
    reason = reason.strip();
    products = List.copyOf(products);
    if (end.toInstant().isBefore(start.toInstant())) {
      throw InputProblem.of("an application from " + start + " to " + end)
          .expected("an end at or after the beginning")
          .because("the re-entry interval is counted from the end")
          .mend("look at the day of the end; past midnight it is the next one");
    }
    if (products.isEmpty()) {
      throw InputProblem.of("an application to " + field + " on " + start + " without a product")
          .expected("at least one product")
          .because("its limits are those of its products")
          .mend("name the product");
    }
    if (products.stream().map(SprayedProduct::product).distinct().count() < products.size()) {
      throw InputProblem.of("the same product twice in one tank: " + products)
          .expected("each product of the mixture once")
          .because("it would count as two uses")
          .mend("add up the two doses");
    }
  }

  /**
   * A spray over the field.
   *
   * @param name unique name
   * @param start when it began
   * @param end when it was over
   * @param field the field
   * @param products what was in the tank
   * @return the application
   */
  public static Spraying of(
      String name,
      ZonedDateTime start,
      ZonedDateTime end,
      String field,
      SprayedProduct... products) {
    return new Spraying(
        name, start, end, field, List.of(products), ApplicationWay.SPRAY, Optional.empty(), "", "");
  }

  /**
   * The same application at a stage of the crop.
   *
   * @param stage the words of the user
   * @return a new application
   */
  public Spraying atStage(String stage) {
    return new Spraying(name, start, end, field, products, way, treatedArea, stage, reason);
  }

  /**
   * The same application, brought out in another way.
   *
   * @param other how
   * @return a new application
   */
  public Spraying by(ApplicationWay other) {
    return new Spraying(name, start, end, field, products, other, treatedArea, cropStage, reason);
  }

  /**
   * The day from which intervals in days are counted. Where an application runs past midnight this
   * is the day of its end.
   *
   * @param zone clock of the field
   * @return the day of the end on that clock
   */
  public LocalDate day(ZoneId zone) {
    return end.withZoneSameInstant(zone).toLocalDate();
  }

  /**
   * The day on which the application began.
   *
   * @param zone clock of the field
   * @return the day of the start on that clock
   */
  public LocalDate firstDay(ZoneId zone) {
    return start.withZoneSameInstant(zone).toLocalDate();
  }

  /**
   * The part of the mixture that is a product.
   *
   * @param product its name
   * @return the product; nothing if it was not in the tank
   */
  public Optional<SprayedProduct> of(String product) {
    return products.stream().filter(each -> each.product().equals(product)).findFirst();
  }

  /**
   * The products in words.
   *
   * @return for example {@code "Product A + Product B"}
   */
  public String mixture() {
    return String.join(" + ", products.stream().map(SprayedProduct::product).toList());
  }
}
