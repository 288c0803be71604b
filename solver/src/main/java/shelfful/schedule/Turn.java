package shelfful.schedule;

/**
 * A turn of a kiln: the so-many-th firing in it, if it is fired at all; or a firing whose time is
 * held.
 *
 * @param index among all turns
 * @param track the kiln's index, or for a held firing the number of kilns and its own
 * @param order within its track, from 0
 * @param kiln the kiln's index
 */
record Turn(int index, int track, int order, int kiln) {

  Hint hint() {
    return new Hint(track, order);
  }
}
