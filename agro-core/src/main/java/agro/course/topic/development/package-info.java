/** Exercises on rates of development, thresholds, stages and generations. */
package agro.course.topic.development;
