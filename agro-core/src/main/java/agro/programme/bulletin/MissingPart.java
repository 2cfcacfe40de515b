package agro.programme.bulletin;

/** What a season folder does not hold, so that a part of the page is missing. */
public enum MissingPart {
  /** No label records, so nothing is said of products. */
  LABELS,
  /** No tables of fields and crops. */
  FIELDS,
  /** No crop is entered for the field on the day of issue. */
  CROP,
  /** No label record for the crop. */
  LABELS_OF_CROP,
  /** Nobody has scouted, or nothing was written down. */
  SCOUTING,
  /** No threshold for the pests that were counted. */
  THRESHOLDS,
  /** No sprayer for the field. */
  SPRAYER,
  /** The area of the field is not entered. */
  AREA,
  /** No application is in the diary. */
  DIARY,
  /** No pest of the field is trapped. */
  TRAPS,
  /** No stage of the pest is in the folder, so that only flights are dated. */
  STAGES,
  /** Limits of the user for wind, rain and temperature, or hours to hold against them. */
  SPRAY_HOURS
}
