/** What a potter owns and decides: her forms, glazes, kilns, shelves, posts and house rules. */
package shelfful.studio;
