package agro.trial.bioassay;

/**
 * One point of a curve with its band.
 *
 * @param dose number on the axis of the assay
 * @param share share to be expected, 0 to 1
 * @param low lower pointwise limit of the share
 * @param high upper pointwise limit of the share
 */
public record CurvePoint(double dose, double share, double low, double high) {}
