/** Tests of the desk; all of them run without a display. */
package shelfful.ui;
