/**
 * Why pieces wait, and what would bring them in: every remedy was planned and judged before it is
 * offered, and is done by one button.
 */
package shelfful.ui.why;
