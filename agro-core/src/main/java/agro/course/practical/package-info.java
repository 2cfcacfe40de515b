/**
 * Practical work of a class: sprayer calibrations of its groups pooled from one file, and common
 * slips by the dose that comes of them.
 */
package agro.course.practical;
