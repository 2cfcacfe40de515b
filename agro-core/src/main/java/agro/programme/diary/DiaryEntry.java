package agro.programme.diary;

import agro.report.SourceLocation;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * One line of the diary. Lines are never changed; a later line may correct an earlier one, and both
 * stay.
 *
 * @param id number of the entry, unique in the diary, for example {@code "applied-12"}
 * @param written when the line was written
 * @param by role or initials of who wrote it
 * @param correction what it corrects and why; nothing for a first entry
 * @param withdrawn whether the entry says that the earlier one did not happen
 * @param what what it tells
 * @param location where it stands
 * @param <R> kind of record
 */
public record DiaryEntry<R extends DiaryRecord>(
    String id,
    Optional<Instant> written,
    String by,
    Optional<Correction> correction,
    boolean withdrawn,
    R what,
    SourceLocation location) {

  /**
   * That a line corrects an earlier one.
   *
   * @param of number of the earlier entry
   * @param reason why
   */
  public record Correction(String of, String reason) {
    /** Refuses nulls. */
    public Correction {
      Objects.requireNonNull(of, "of");
      Objects.requireNonNull(reason, "reason");
    }
  }

  /** Refuses nulls. */
  public DiaryEntry {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(written, "written");
    Objects.requireNonNull(by, "by");
    Objects.requireNonNull(correction, "correction");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(location, "location");
  }
}
