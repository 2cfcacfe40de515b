/** Exercises on the calibration of sprayers. */
package agro.course.topic.calibration;
