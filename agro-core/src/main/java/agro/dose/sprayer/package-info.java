/**
 * Calibration of sprayers: nozzle flow, swath and speed to spray volume and back, catch tests,
 * pressure and flow, nozzle sizes, work rate, drip injection. Every result carries its working and
 * its cautions.
 */
package agro.dose.sprayer;
