/**
 * What became of a load: the firing as it went, and each piece as it came out. Plain values; {@code
 * files} keeps them, {@code learning} and {@code figures} read them.
 */
package shelfful.record;
