package agro.programme.bulletin;

import agro.programme.CropPlanting;
import agro.programme.interval.SeasonAnswer;
import agro.programme.rotation.RotationReport;
import agro.programme.window.SprayHours;
import agro.source.Reference;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.TextLanguage;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The season of one field on the day of issue, before it is put into words.
 *
 * @param field the field
 * @param place the place whose traps and log stand for it
 * @param asOf day of issue; nothing later is known
 * @param planting the crop in the field, or the next one; nothing where none is entered
 * @param pests its pests in the order of the traps, then of the scouting
 * @param products products of the label records for the crop
 * @param picking whether the field may be picked on the day of issue; nothing without a crop
 * @param rotation how the applications so far stand with the rules of rotation
 * @param sprayer the sprayer that the amounts are for
 * @param hours hours of the next days that meet the user's own limits; nothing where limits or
 *     weather are not in the folder
 * @param missing what the folder does not hold
 * @param assumed what was assumed on the way, in the words of those who assumed it
 * @param sources published sources that the figures rest on
 */
public record FieldBulletin(
    String field,
    String place,
    LocalDate asOf,
    Optional<CropPlanting> planting,
    List<PestBulletin> pests,
    List<ProductAdvice> products,
    Optional<SeasonAnswer> picking,
    Optional<RotationReport> rotation,
    Optional<FieldSprayer> sprayer,
    Optional<SprayHours> hours,
    List<MissingPart> missing,
    List<String> assumed,
    List<Reference> sources)
    implements Presentable {

  /** Copies the lists. */
  public FieldBulletin {
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(asOf, "asOf");
    Objects.requireNonNull(planting, "planting");
    pests = List.copyOf(pests);
    products = List.copyOf(products);
    Objects.requireNonNull(picking, "picking");
    Objects.requireNonNull(rotation, "rotation");
    Objects.requireNonNull(sprayer, "sprayer");
    Objects.requireNonNull(hours, "hours");
    missing = List.copyOf(missing);
    assumed = List.copyOf(assumed);
    sources = List.copyOf(sources);
  }

  /**
   * The crop in words.
   *
   * @return the crop; empty where none is entered
   */
  public String crop() {
    return planting.map(CropPlanting::crop).orElse("");
  }

  /**
   * The bulletin in words.
   *
   * @param language the language
   * @param level for whom
   * @return title, sections and the short texts
   */
  public WrittenBulletin write(TextLanguage language, ReadingLevel level) {
    return new BulletinWriter(this, BulletinText.of(language), level).write();
  }

  /** The bulletin for the adviser, in English and without its pictures. */
  @Override
  public Presentation presentation() {
    return write(TextLanguage.ENGLISH, ReadingLevel.ADVISER).presentation();
  }

  @Override
  public String toString() {
    return "bulletin of " + field + " as of " + asOf + ", " + pests.size() + " pests";
  }
}
