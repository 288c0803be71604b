package shelfful.planning;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shelfful.geometry.Disc;
import shelfful.kiln.Shelf;
import shelfful.load.LeftOut;
import shelfful.load.LeftOut.Reason;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;
import shelfful.measure.LengthText;
import shelfful.packing.BodyKind;
import shelfful.packing.DoesNotFit;
import shelfful.packing.Effort;
import shelfful.packing.Part;
import shelfful.packing.ShelfPacker;
import shelfful.packing.ShelfQuestion;
import shelfful.packing.ShelfSpace;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;
import shelfful.ware.Zone;

/** Turns away, before any search, what could not stand in this kiln even alone. */
final class Impossible {
  /** Radius of ware that is narrow for sure, as a share of the chamber's width. */
  private static final double NARROW = 0.2;

  private static final double MOST_TOLERANCE = 3;

  private final LoadRequest request;
  private final FiringDoor door;
  private final List<Stand> stands;
  private final Map<String, Optional<Refusal>> known = new HashMap<>();
  private final Map<Stand, ShelfSpaces> spaces = new HashMap<>();
  private final ShelfPacker packer = new ShelfPacker();
  private long mostHeight = -1;
  private boolean discTried;
  private double surelyFits;

  Impossible(LoadRequest request, List<Stand> stands) {
    this.request = request;
    this.door = new FiringDoor(request);
    this.stands = stands;
  }

  private record Refusal(Reason reason, String sentence, String mend) {}

  /** Why a piece cannot stand in this kiln, or empty. */
  Optional<LeftOut> refuses(Piece piece) {
    String key =
        piece.batch().formId() + "/" + piece.part() + "/" + piece.batch().glazeId().orElse("");
    return known
        .computeIfAbsent(key, k -> find(piece))
        .map(r -> new LeftOut(piece.id(), r.reason(), r.sentence(), r.mend()));
  }

  private Optional<Refusal> find(Piece piece) {
    Form form = door.form(piece);
    Optional<Glaze> glaze = door.glaze(piece);
    StandingWare ware = door.standing(piece);
    List<Spot> spots = stands.stream().flatMap(stand -> stand.spots().stream()).toList();
    if (spots.stream().allMatch(spot -> spot.shelves().isEmpty())) {
      return noShelfForCone();
    }
    return tooTall(ware, form)
        .or(() -> tooHeavy(ware))
        .or(() -> tooWide(ware, form))
        .or(() -> noZone(ware, form, glaze));
  }

  private Optional<Refusal> noShelfForCone() {
    return Optional.of(
        new Refusal(
            Reason.NO_SHELF_FOR_CONE,
            String.format(
                Locale.ROOT,
                "No shelf of this kiln is in the cupboard that may be fired to cone %s.",
                request.firing().cone().number()),
            "Get shelves that take this cone, or fire cooler."));
  }

  private Optional<Refusal> tooTall(StandingWare ware, Form form) {
    long height = ware.height().plus(form.tolerance()).micrometres();
    long most = mostHeight();
    if (height <= most) {
      return Optional.empty();
    }
    if (most == 0) {
      return Optional.of(
          new Refusal(
              Reason.TOO_TALL,
              "There are not enough posts in the cupboard to carry even the lowest shelf.",
              "Get posts, or correct how many there are."));
    }
    return Optional.of(
        new Refusal(
            Reason.TOO_TALL,
            String.format(
                Locale.ROOT,
                "It is %s tall; alone on the lowest shelf there is room for %s.",
                text(height),
                text(most)),
            "Fire it in a higher kiln."));
  }

  private long mostHeight() {
    if (mostHeight < 0) {
      mostHeight = 0;
      for (Stand stand : stands) {
        for (Spot spot : stand.spots()) {
          mostHeight = Math.max(mostHeight, mostHeight(stand, spot));
        }
      }
    }
    return mostHeight;
  }

  private long mostHeight(Stand stand, Spot spot) {
    StackFitter fitter = new StackFitter(stand, stand.cupboard());
    StackNeeds needs = new StackNeeds(stand.columns());
    StackNeeds.Level empty = new StackNeeds.Level(0, new long[spot.owner().places().size()]);
    return fitter
        .fit(needs.with(spot.column(), 0, empty))
        .map(stacking -> stacking.level(spot.column(), 0).room())
        .orElse(0L);
  }

  private Optional<Refusal> tooHeavy(StandingWare ware) {
    long grams = ware.mass().grams();
    long most = 0;
    for (Stand stand : stands) {
      for (Spot spot : stand.spots()) {
        for (Shelf shelf : spot.shelves()) {
          long limit = shelf.massLimit().map(m -> m.grams()).orElse(Long.MAX_VALUE);
          most = Math.max(most, limit / stand.shelvesAt(spot));
        }
      }
    }
    if (grams <= most) {
      return Optional.empty();
    }
    return Optional.of(
        new Refusal(
            Reason.TOO_HEAVY,
            String.format(
                Locale.ROOT,
                "It weighs %.1f kg; the strongest shelf carries %.1f kg.",
                grams / 1000.0,
                most / 1000.0),
            "Get a stronger shelf."));
  }

  private Optional<Refusal> tooWide(StandingWare ware, Form form) {
    BodyKind body = WareTranslator.body(form.name(), ware, form.tolerance(), false);
    if (isSurelyNarrow(body)) {
      return Optional.empty();
    }
    for (Stand stand : stands) {
      for (Spot spot : stand.spots()) {
        ShelfSpace space = emptySpace(stand, spot);
        ShelfQuestion question = ShelfQuestion.of(space, List.of(body), new int[] {1}, 0);
        if (!(packer.pack(question, Effort.NORMAL, 1) instanceof DoesNotFit)) {
          return Optional.empty();
        }
      }
    }
    Length width = ware.bands().get(0).outline().width();
    for (var band : ware.bands()) {
      width = Length.longer(width, band.outline().width());
    }
    return Optional.of(
        new Refusal(
            Reason.TOO_WIDE,
            String.format(
                Locale.ROOT,
                "It is %s wide and finds no place alone on any shelf with the clearances kept.",
                text(width.micrometres())),
            "Fire it in a wider kiln, or on a larger shelf."));
  }

  /**
   * Whether a disc that holds the whole body finds a place: most ware need not be looked at closer.
   */
  private boolean isSurelyNarrow(BodyKind body) {
    double reach = FootprintArea.reach(body);
    if (!discTried) {
      discTried = true;
      double radius = stands.get(0).kiln().chamber().floorPlan().width().millimetres() * NARROW;
      Disc disc = new Disc(0, 0, radius);
      BodyKind round =
          new BodyKind("disc", List.of(new Part(disc, 0, 1)), disc, false, MOST_TOLERANCE);
      Stand stand = stands.get(0);
      for (Spot spot : stand.spots()) {
        ShelfQuestion question =
            ShelfQuestion.of(emptySpace(stand, spot), List.of(round), new int[] {1}, 0);
        if (!(packer.pack(question, Effort.HASTY, 1) instanceof DoesNotFit)) {
          surelyFits = radius;
        }
      }
    }
    return reach <= surelyFits && body.tolerance() <= MOST_TOLERANCE;
  }

  /** A shelf with nothing on it but what the wall and its neighbours ask. */
  private ShelfSpace emptySpace(Stand stand, Spot spot) {
    return spaces
        .computeIfAbsent(stand, s -> new ShelfSpaces(s, 0, s.cupboard().widest()))
        .space(spot, List.of(), stand.ceiling(), 0)
        .space();
  }

  /** Tries every number of empty levels below a level with the piece, and one above or none. */
  private Optional<Refusal> noZone(StandingWare ware, Form form, Optional<Glaze> glaze) {
    Set<Zone> forbidden = glaze.map(Glaze::forbidden).orElse(Set.of());
    if (forbidden.isEmpty()) {
      return Optional.empty();
    }
    long height = ware.height().plus(form.tolerance()).micrometres();
    boolean found =
        stands.stream().anyMatch(stand -> new ZoneSearch(stand).finds(height, forbidden));
    if (found) {
      return Optional.empty();
    }
    return Optional.of(
        new Refusal(
            Reason.NO_ZONE,
            String.format(
                Locale.ROOT,
                "Its glaze %s forbids the zone of every layer that is high enough for it (%s).",
                glaze.map(Glaze::name).orElse(""),
                text(height)),
            "Choose another glaze for so tall a form, or allow it a further zone."));
  }

  private String text(long micrometres) {
    return LengthText.write(new Length(micrometres), request.studio().unit());
  }
}
