package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import shelfful.load.Layer;
import shelfful.measure.Point;

/**
 * Layers side by side at one height over whose joint ware reaches: what stands on one may be in the
 * way of what comes onto the other, so they are set together, and their numbers run through.
 */
final class SetTogether {
  private final Map<String, List<SetPiece>> pieces;
  private final Function<Layer, List<Point>> contour;

  /**
   * Looks at what stands on layers.
   *
   * @param pieces by layer id
   * @param contour of a layer's shelf where it lies
   */
  SetTogether(Map<String, List<SetPiece>> pieces, Function<Layer, List<Point>> contour) {
    this.pieces = pieces;
    this.contour = contour;
  }

  /** The layers in groups; most are alone in theirs. In the order of their first. */
  List<List<Layer>> groups(List<Layer> layers) {
    List<List<Layer>> groups = new ArrayList<>();
    for (Layer layer : layers) {
      List<Layer> joined = new ArrayList<>();
      List<List<Layer>> met =
          groups.stream()
              .filter(group -> group.stream().anyMatch(other -> meet(other, layer)))
              .toList();
      int at = met.isEmpty() ? groups.size() : groups.indexOf(met.get(0));
      met.forEach(joined::addAll);
      joined.add(layer);
      groups.removeAll(met);
      groups.add(at, joined);
    }
    return groups;
  }

  private boolean meet(Layer one, Layer other) {
    return one.z().equals(other.z()) && (reachesOver(one, other) || reachesOver(other, one));
  }

  private boolean reachesOver(Layer from, Layer onto) {
    List<Point> shelf = contour.apply(onto);
    return pieces.get(from.id()).stream()
        .flatMap(piece -> Stream.concat(Slice.bands(piece).stream(), Slice.lugs(piece).stream()))
        .anyMatch(slice -> Contact.overlap(slice.corners(), shelf));
  }
}
