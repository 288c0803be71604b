/** The kiln from the side: where a layer is chosen. */
package shelfful.ui.kilnview;
