/** Tests of the shelf packer against record tables, theorems and an independent judge. */
package shelfful.packing;
