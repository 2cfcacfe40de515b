/**
 * Planning of trials: treatments drawn on plots by a seed, the map of the field, the sheet to take
 * outdoors, and how many replicates a stated difference needs.
 */
package agro.trial.layout;
