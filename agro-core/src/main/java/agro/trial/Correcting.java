package agro.trial;

import agro.report.InputProblem;
import java.util.ArrayList;

/** Applies corrections to the lines of a trial. */
final class Correcting {

  private Correcting() {}

  static TrialContent apply(TrialContent content, Correction correction) {
    var response =
        content.responses().stream()
            .filter(declared -> declared.name().equals(correction.variable()))
            .findFirst();
    var lines = new ArrayList<>(content.assessments());
    var standing = new ArrayList<String>();
    int found = -1;
    for (int i = 0; i < lines.size(); i++) {
      var line = lines.get(i);
      if (correction.isAbout(line)) {
        standing.add(Correction.words(line.value()));
        // Of two equal values entered twice the later one is corrected, so the first entry stays.
        found = line.value().equals(correction.oldValue()) ? i : found;
      }
    }
    if (response.isEmpty() || standing.isEmpty()) {
      throw InputProblem.of("a correction of " + correction.where())
          .expected("a value that stands in " + content.name())
          .because("there is nothing to correct")
          .mend("check plot, day, sub-sample and variable of the correction");
    }
    if (found < 0) {
      throw InputProblem.of(
              "a correction of "
                  + correction.where()
                  + " from "
                  + Correction.words(correction.oldValue())
                  + ", but the value stands as "
                  + String.join(" and ", standing))
          .expected("the old value as it stands")
          .because("the correction was meant for another value, or was applied before")
          .mend("look at the sheet again and write the value that stands now as the old one");
    }
    lines.set(found, lines.get(found).withValue(correction.newValue()));
    return content.corrected(lines, content.corrections().and(correction));
  }
}
