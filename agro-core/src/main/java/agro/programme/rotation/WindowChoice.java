package agro.programme.rotation;

import agro.programme.LabelRecord;
import java.util.Optional;

/**
 * What a proposed programme does in one window.
 *
 * @param window the window and its days of treatment
 * @param record the label record of the product; nothing if the window stays untreated
 */
public record WindowChoice(PlanWindow window, Optional<LabelRecord> record) {

  /**
   * The choice in words.
   *
   * @return for example {@code "Product A on 2026-06-01"}
   */
  public String words() {
    return record
        .map(each -> each.product() + " on " + String.join(", ", days()))
        .orElse("no application");
  }

  private java.util.List<String> days() {
    return window.days().stream().map(Object::toString).toList();
  }
}
