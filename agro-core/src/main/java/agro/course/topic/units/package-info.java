/** Exercises on converting units of the trade. */
package agro.course.topic.units;
