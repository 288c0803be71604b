package shelfful.bound;

import java.util.List;
import shelfful.kiln.Kiln;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;
import shelfful.load.LoadRequest;
import shelfful.planning.WareOnOffer;
import shelfful.studio.Clearances;
import shelfful.studio.Studio;

/** A request as the bound looks at it. Heights in micrometres. */
final class BoundTask {
  private final LoadRequest request;
  private final Kiln kiln;
  private final List<PieceSizes> pieces;
  private final double[] counts;
  private final long[] heights;
  private final PostChoice postChoice;
  private final LevelShelf levelShelf = new LevelShelf(this);

  BoundTask(LoadRequest request) {
    this.request = request;
    this.kiln = request.kiln();
    this.pieces = WareOnOffer.of(request).offers().stream().map(PieceSizes::of).toList();
    this.counts = pieces.stream().mapToDouble(piece -> piece.offer().count()).toArray();
    this.heights = pieces.stream().mapToLong(PieceSizes::height).sorted().distinct().toArray();
    this.postChoice = new PostChoice(request.studio());
  }

  /** The limits of levels, shared by all plans. */
  LevelShelf levelShelf() {
    return levelShelf;
  }

  LoadRequest request() {
    return request;
  }

  Studio studio() {
    return request.studio();
  }

  Kiln kiln() {
    return kiln;
  }

  List<PieceSizes> pieces() {
    return pieces;
  }

  /** How many there are of each offer. */
  double[] counts() {
    return counts;
  }

  /** The heights of pieces, lowest first: the classes of levels. */
  long[] heights() {
    return heights;
  }

  /** The height of a class; nothing has class −1. */
  long heightOf(int heightClass) {
    return heightClass < 0 ? -1 : heights[heightClass];
  }

  /** The tallest class that is no taller than a height, or −1. */
  int classUnder(long height) {
    int found = -1;
    while (found + 1 < heights.length && heights[found + 1] <= height) {
      found++;
    }
    return found;
  }

  /** The kinds of shelf that may lie in a place and may be fired so hot. */
  List<Shelf> usable(ShelfPlace place) {
    return place.shelfIds().stream()
        .flatMap(id -> studio().shelf(id).stream())
        .filter(shelf -> shelf.count() > 0)
        .filter(
            shelf ->
                shelf.hottest().isEmpty()
                    || !request.firing().cone().isHotterThan(shelf.hottest().get()))
        .distinct()
        .toList();
  }

  int shelfIndex(Shelf shelf) {
    return studio().shelves().indexOf(shelf);
  }

  /** How many shelves of each kind there are. */
  double[] shelves() {
    return studio().shelves().stream().mapToDouble(Shelf::count).toArray();
  }

  /** How many posts of each kind there are. */
  double[] posts() {
    return studio().posts().stream().mapToDouble(Post::count).toArray();
  }

  PostChoice postChoice() {
    return postChoice;
  }

  private Clearances clearances() {
    return studio().rules().clearances();
  }

  /** The length of the shortest posts there are, mm. */
  double shortestPost() {
    return postChoice.size() == 0 ? 0 : postChoice.length(0) / 1000.0;
  }

  long headroom() {
    return clearances().headroom().micrometres();
  }

  long offFloor() {
    return clearances().offFloor().micrometres();
  }

  long ceiling() {
    return kiln.chamber().height().micrometres() - clearances().underLid().micrometres();
  }
}
