package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Forms;
import shelfful.load.LeftOut;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;
import shelfful.ware.Batch;
import shelfful.ware.Glaze;
import shelfful.ware.KeptApart;
import shelfful.ware.LidPlace;
import shelfful.ware.Piece;
import shelfful.ware.Stage;

class LotSorterTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  private static ReadyWare sort(Scene scene) {
    return new LotSorter(scene.request()).sort(piece -> Optional.empty());
  }

  private static Scene cups() {
    return new Scene()
        .cup("a", 60, 50)
        .cup("twin", 60, 50)
        .glaze("plain", Set.of(), Set.of())
        .glaze("other", Set.of(), Set.of());
  }

  private static Glaze spaced(String id, Optional<Length> gap, boolean runny) {
    return new Glaze(
        id,
        id,
        id,
        "#808080",
        Scene.SIX,
        Optional.empty(),
        gap,
        runny,
        Length.ZERO,
        Set.of(),
        Set.of());
  }

  private static Batch with(
      Batch batch, int priority, Optional<LocalDate> due, Optional<String> set) {
    return new Batch(
        batch.id(),
        batch.formId(),
        batch.glazeId(),
        batch.quantity(),
        batch.stage(),
        batch.cone(),
        batch.mustGo(),
        priority,
        due,
        batch.order(),
        set,
        LidPlace.BESIDE);
  }

  @Test
  void whatIsTheSameToTheShelfIsOneKind() {
    ReadyWare ware =
        sort(cups().batch("A", "a", "plain", 2).batch("B", "a", "other", 3).batch("C", "twin", 1));
    assertThat(ware.lots()).extracting(Lot::size).containsExactly(2, 3, 1);
    assertThat(ware.kinds()).hasSize(1);
    assertThat(ware.pieces()).isEqualTo(6);
  }

  @Test
  void aGlazeThatAsksForMoreRoomIsAnotherKind() {
    ReadyWare ware =
        sort(
            cups()
                .glaze(spaced("wide", Optional.of(Scene.mm(20)), false))
                .batch("A", "a", "plain", 2)
                .batch("B", "a", "wide", 3));
    assertThat(ware.kinds()).hasSize(2);
  }

  @Test
  void glazesKeptApartByDistanceAreKindsOfTheirOwn() {
    KeptApart far =
        new KeptApart("plain", "other", KeptApart.Apartness.BY_DISTANCE, Optional.of(Scene.mm(80)));
    ReadyWare ware =
        sort(cups().apart(far).batch("A", "a", "plain", 2).batch("B", "a", "other", 3));
    assertThat(ware.kinds()).hasSize(2);
    KeptApart layer =
        new KeptApart("plain", "other", KeptApart.Apartness.NOT_ON_ONE_LAYER, Optional.empty());
    assertThat(
            sort(cups().apart(layer).batch("A", "a", "plain", 2).batch("B", "a", "other", 3))
                .kinds())
        .hasSize(1);
  }

  @Test
  void aCatcherLiftsAndWidens() {
    ReadyWare ware =
        sort(cups().glaze(spaced("rain", Optional.empty(), true)).batch("A", "a", "rain", 2));
    Lot lot = ware.lots().get(0);
    assertThat(lot.height()).isEqualTo(54_000);
    assertThat(lot.grams()).isEqualTo(1100);
    assertThat(lot.kind().ware().foot()).isEqualTo(Forms.round(80));
  }

  @Test
  void lidsBesideGoWithTheirPots() {
    Scene scene = new Scene().form(Forms.jar()).batch("J", "jar", 3);
    ReadyWare ware = sort(scene.but(batch -> with(batch, 1, Optional.empty(), Optional.empty())));
    assertThat(ware.lots()).hasSize(2);
    assertThat(ware.bundles()).isEqualTo(1);
  }

  @Test
  void setsOfOneMakeUpAreOneBundle() {
    Scene scene = cups().batch("A", "a", 3);
    scene.but(batch -> with(batch, 1, Optional.empty(), Optional.of("tea")));
    scene.batch("B", "twin", 2);
    scene.but(batch -> with(batch, 1, Optional.empty(), Optional.of("tea")));
    ReadyWare ware = sort(scene);
    // Two whole sets, and a third of which only one piece was made.
    assertThat(ware.lots()).extracting(Lot::size).containsExactlyInAnyOrder(2, 1, 2);
    assertThat(ware.bundles()).isEqualTo(2);
  }

  @Test
  void worthIsPriorityAndDoubleWhenDueSoon() {
    Scene scene = cups();
    for (int days : List.of(-3, 7, 8)) {
      scene.batch("D" + days, "a", 1);
      scene.but(batch -> with(batch, 2, Optional.of(DAY.plusDays(days)), Optional.empty()));
    }
    LoadRequest plain = scene.request();
    LoadRequest dated =
        new LoadRequest(
            plain.studio(),
            plain.batches(),
            plain.firing(),
            Optional.empty(),
            Optional.of(DAY),
            1,
            0);
    assertThat(new LotSorter(dated).sort(piece -> Optional.empty()).lots())
        .extracting(Lot::worth)
        .containsExactly(400L, 400L, 200L);
    assertThat(new LotSorter(plain).sort(piece -> Optional.empty()).lots())
        .extracting(Lot::worth)
        .containsExactly(200L, 200L, 200L);
  }

  @Test
  void aPieceWaitsForTheRestOfItsSet() {
    Scene scene = cups().batch("A", "a", 2);
    scene.but(batch -> with(batch, 1, Optional.empty(), Optional.of("tea")));
    scene.batch(
        new Batch(
            "B",
            "twin",
            Optional.empty(),
            1,
            Stage.BISQUE,
            Optional.empty(),
            false,
            1,
            Optional.empty(),
            Optional.empty(),
            Optional.of("tea"),
            LidPlace.ON));
    ReadyWare ware = sort(scene);
    assertThat(ware.waiting())
        .extracting(LeftOut::reason)
        .containsExactlyInAnyOrder(LeftOut.Reason.NOT_READY, LeftOut.Reason.SET_WAITS);
    assertThat(ware.lots()).hasSize(1);
    assertThat(ware.lots().get(0).pieces()).extracting(Piece::id).containsExactly("A-002");
  }
}
