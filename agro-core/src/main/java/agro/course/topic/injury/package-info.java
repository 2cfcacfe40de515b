/** Exercises on injury levels, thresholds and whether a treatment pays. */
package agro.course.topic.injury;
