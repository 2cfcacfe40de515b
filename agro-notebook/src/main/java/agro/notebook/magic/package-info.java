/**
 * The line and cell conveniences that users of Java kernels know: {@code %maven}, {@code
 * %classpath}, {@code %load}, {@code %time} and their like.
 */
package agro.notebook.magic;
