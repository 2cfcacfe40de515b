/** Classical calculations by hand, with every column and sum that textbooks show. */
package agro.course.handwork;
