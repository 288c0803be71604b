package shelfful.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shelfful.kiln.Kiln;
import shelfful.load.Firing;
import shelfful.load.LeftOut;
import shelfful.load.LoadRequest;
import shelfful.measure.Cone;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;
import shelfful.ware.Stage;

/**
 * Into which firing a waiting piece would go: the same again where only the room was lacking; one
 * of its own cone, atmosphere or kind where that was the reason.
 */
final class LaterFiring {
  private final LoadRequest request;

  LaterFiring(LoadRequest request) {
    this.request = request;
  }

  /** The firings worth trying, the same kiln first; empty when no firing takes the piece. */
  List<Firing> of(WaitingGroup group) {
    Batch batch = group.batch();
    if (batch.stage() == Stage.FINISHED) {
      return List.of();
    }
    FiringKind kind = kind(group);
    Optional<Cone> cone = cone(group, kind);
    List<Firing> firings = new ArrayList<>();
    if (cone.isPresent()) {
      kilns(cone.get())
          .forEach(
              kiln ->
                  firings.add(
                      new Firing(
                          kiln.id(),
                          kind,
                          cone.get(),
                          request.firing().coneTolerance(),
                          air(batch, kind))));
    }
    return firings;
  }

  /** Why no firing takes a group, as far as its cone and stage tell; empty text otherwise. */
  String whyNone(WaitingGroup group) {
    if (group.batch().stage() == Stage.FINISHED) {
      return "It is finished.";
    }
    Optional<Cone> cone = cone(group, kind(group));
    if (cone.isEmpty()) {
      return "Neither its batch nor its glaze says to what cone it is fired.";
    }
    return kilns(cone.get()).findAny().isPresent()
        ? ""
        : "No kiln of the studio may be fired to cone " + cone.get().number() + ".";
  }

  private FiringKind kind(WaitingGroup group) {
    boolean glaze = group.batch().glazeId().isPresent();
    boolean pastBisque = group.batch().stage().compareTo(Stage.BISQUE) >= 0;
    return group.reason().reason() == LeftOut.Reason.NOT_READY && (glaze || pastBisque)
        ? FiringKind.GLAZE
        : request.firing().kind();
  }

  private Optional<Cone> cone(WaitingGroup group, FiringKind kind) {
    Batch batch = group.batch();
    Optional<Cone> own =
        batch
            .cone()
            .or(() -> kind == FiringKind.GLAZE ? glaze(batch).map(Glaze::cone) : Optional.empty());
    Cone planned = request.firing().cone();
    if (own.isEmpty()) {
      return kind == request.firing().kind() ? Optional.of(planned) : Optional.empty();
    }
    boolean sameWillDo = kind == request.firing().kind() && request.firing().takes(own.get());
    return Optional.of(sameWillDo ? planned : own.get());
  }

  private Atmosphere air(Batch batch, FiringKind kind) {
    return kind == FiringKind.GLAZE
        ? glaze(batch).flatMap(Glaze::atmosphere).orElse(request.firing().atmosphere())
        : request.firing().atmosphere();
  }

  private Optional<Glaze> glaze(Batch batch) {
    return batch.glazeId().flatMap(request.studio()::glaze);
  }

  private Stream<Kiln> kilns(Cone cone) {
    String own = request.firing().kilnId();
    List<Kiln> kilns = request.studio().kilns();
    return Stream.concat(
            kilns.stream().filter(kiln -> kiln.id().equals(own)),
            kilns.stream().filter(kiln -> !kiln.id().equals(own)))
        .filter(kiln -> kiln.hottest().map(most -> !cone.isHotterThan(most)).orElse(true));
  }
}
