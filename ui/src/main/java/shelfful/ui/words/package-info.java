/** Every word on the screen that does not come from a load, in one place for translation. */
package shelfful.ui.words;
