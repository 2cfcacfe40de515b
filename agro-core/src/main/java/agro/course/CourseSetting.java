package agro.course;

import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.List;

/**
 * Where the stories of the exercises play: the invented vale of the demonstration data, or the
 * teacher's own place. Names are printed as they stand here.
 *
 * @param place name of the place
 * @param fields names of fields, at least three
 * @param crops names of crops, at least one
 * @param pests names of pests, at least two
 * @param currency sign or code of the currency
 * @param units units in which the class works
 */
public record CourseSetting(
    String place,
    List<String> fields,
    List<String> crops,
    List<String> pests,
    String currency,
    CourseUnits units) {

  private static final int FEWEST_FIELDS = 3;
  private static final int FEWEST_PESTS = 2;

  /** Copies the lists and refuses settings that are too poor for a story. */
  public CourseSetting {
    fields = List.copyOf(fields);
    crops = List.copyOf(crops);
    pests = List.copyOf(pests);
    if (place.isBlank()
        || currency.isBlank()
        || fields.size() < FEWEST_FIELDS
        || crops.isEmpty()
        || pests.size() < FEWEST_PESTS) {
      throw new IllegalArgumentException(
          "a setting needs a place, a currency, three fields, a crop and two pests, but got "
              + List.of(place, currency, fields, crops, pests));
    }
  }

  /**
   * Osmere Vale, the invented valley of the demonstration data, in metric units.
   *
   * @param language language of the names of crops and pests
   * @return the setting
   */
  public static CourseSetting osmereVale(TextLanguage language) {
    var words = Wording.of(CourseSetting.class, "course", language);
    return new CourseSetting(
        "Osmere Vale",
        List.of("Upper Croft", "Mill Field", "Sand Lane"),
        List.of(words.say("crop.cabbage"), words.say("crop.cauliflower"), words.say("crop.leek")),
        List.of(
            words.say("pest.leek.moth"),
            words.say("pest.diamondback.moth"),
            words.say("pest.cabbage.root.fly")),
        "EUR",
        CourseUnits.METRIC);
  }

  /**
   * This setting in other units.
   *
   * @param changed units in which the class works
   * @return the changed setting
   */
  public CourseSetting withUnits(CourseUnits changed) {
    return new CourseSetting(place, fields, crops, pests, currency, changed);
  }
}
