/**
 * What would bring a waiting piece in: every remedy told here was tried, by planning and by the
 * judge, and is handed out as the load it leads to.
 */
package shelfful.remedy;
