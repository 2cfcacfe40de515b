package agro.dose;

/** A dose per ground area, of product or of active ingredient; what a label limits. */
public sealed interface DosePerArea permits ProductPerArea, ActivePerArea {}
