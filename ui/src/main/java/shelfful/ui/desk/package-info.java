/** The window and its wiring: the only place where the screens meet. */
package shelfful.ui.desk;
