/** Paper to print for courses: grids to draw on and tables to look up in, in two languages. */
package agro.course.sheet;
