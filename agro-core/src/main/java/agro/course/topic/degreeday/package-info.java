/** Exercises on degree-days of days, weeks and seasons. */
package agro.course.topic.degreeday;
