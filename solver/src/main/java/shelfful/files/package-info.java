/**
 * Everything a potter keeps as a file: the studio, batch lists, plans. Formats in and out, and
 * saving that never loses work.
 *
 * <p>Each format has plain field names of its own, a {@code format} and a {@code version}. Lengths
 * are written as millimetres with at most three decimals, masses as kilograms, angles as degrees,
 * days as ISO dates; the same thing is written as the same bytes in every locale. What is read is
 * checked completely before a domain object is made, and every fault is a {@link
 * shelfful.files.Problem}, never an exception. This is the only package that knows the JSON and CSV
 * libraries.
 */
package shelfful.files;
