/** Work off the screen's thread, and the way back onto it. The only package that starts threads. */
package shelfful.ui.task;
