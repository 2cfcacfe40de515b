/** Exercises on the rotation of modes of action and on the intervals and maxima of labels. */
package agro.course.topic.rotation;
