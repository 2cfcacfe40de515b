/**
 * Thermal time: daily degree-days between thresholds, their accumulation from a stated day, and
 * published thermal requirements of pests.
 */
package agro.development;
