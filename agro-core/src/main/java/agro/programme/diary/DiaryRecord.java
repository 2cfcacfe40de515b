package agro.programme.diary;

/** What an entry of the diary tells: advised, bought, applied, scouted or released. */
public sealed interface DiaryRecord
    permits AdvisedUse, BoughtProduct, AppliedUse, ScoutedField, ReleasedEnemy {}
