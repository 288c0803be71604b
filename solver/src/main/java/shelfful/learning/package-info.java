/**
 * What the records say about glazes, forms and places in the kiln: rates with their uncertainty,
 * and differences only where they are larger than chance makes them. Formulas and their sources are
 * named where they stand.
 */
package shelfful.learning;
