package agro.programme.diary;

import java.time.LocalDate;
import java.util.Objects;

/**
 * A release of natural enemies.
 *
 * @param day the day
 * @param field the field
 * @param organism which natural enemy, as the table of side effects writes it
 * @param amount how many, in the words of the user
 * @param lot number of the lot; may be empty
 * @param note anything
 */
public record ReleasedEnemy(
    LocalDate day, String field, String organism, String amount, String lot, String note)
    implements DiaryRecord {

  /** Refuses nulls. */
  public ReleasedEnemy {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(organism, "organism");
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(lot, "lot");
    Objects.requireNonNull(note, "note");
  }
}
