package agro.stats.glm;

import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.ArrayList;
import java.util.List;

/** Satisfaction with housing in Copenhagen, Madsen 1976 (source in ordinal-reference.csv). */
final class Housing {

  private static final String COUNTS =
      "21 21 28 34 22 36 10 11 36 61 23 17 43 35 40 26 18 54 13 9 10 8 8 12 6 7 9 18 6 7 15 13 13 7 5"
          + " 11 14 19 37 17 23 40 3 5 23 78 46 43 48 45 86 15 25 62 20 23 20 10 22 24 7 10 21 57 23"
          + " 13 31 21 13 5 6 13";
  static final List<String> SCALE = List.of("Low", "Medium", "High");
  private static final List<String> TYPES = List.of("Tower", "Apartment", "Atrium", "Terrace");
  private static final List<String> CONTACT = List.of("Low", "High");

  static final OrdinalScores SCORES;
  static final Factor INFLUENCE;
  static final Factor TYPE;
  static final Factor CONTACTS;

  static {
    var satisfaction = new ArrayList<String>();
    var influence = new ArrayList<String>();
    var type = new ArrayList<String>();
    var contact = new ArrayList<String>();
    var words = COUNTS.split(" ");
    double[] counts = new double[words.length];
    for (int i = 0; i < counts.length; i++) {
      counts[i] = Double.parseDouble(words[i]);
      satisfaction.add(SCALE.get(i % 3));
      influence.add(SCALE.get(i / 3 % 3));
      type.add(TYPES.get(i / 9 % 4));
      contact.add(CONTACT.get(i / 36));
    }
    SCORES = OrdinalScores.of(SCALE, satisfaction).withFrequencies(counts);
    INFLUENCE = Factor.declared("Infl", SCALE, influence);
    TYPE = Factor.declared("Type", TYPES, type);
    CONTACTS = Factor.declared("Cont", CONTACT, contact);
  }

  private Housing() {}

  static OrdinalFit fit(LinkFunction link) {
    return new OrdinalModel(link)
        .fit(SCORES, ModelTerm.of(INFLUENCE), ModelTerm.of(TYPE), ModelTerm.of(CONTACTS));
  }
}
