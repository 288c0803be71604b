package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import shelfful.learning.Proportion;
import shelfful.learning.Sighting;
import shelfful.record.Ring;
import shelfful.record.UnpackedFiring;
import shelfful.studio.Studio;
import shelfful.ware.Zone;

class MadeUpYearTest {
  private static final Studio STUDIO = studio();
  private static final List<UnpackedFiring> YEAR = MadeUpYear.of(STUDIO);

  private static Studio studio() {
    try {
      byte[] bytes = Files.readAllBytes(Path.of("..", "demo-data", "studio.json"));
      return ((Opened.Ready<Studio>) KeepAStudio.open("studio.json", bytes)).value();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  @Test
  void theSameStudioGivesTheSameYear() {
    assertThat(MadeUpYear.of(STUDIO)).isEqualTo(YEAR);
  }

  @Test
  void itsFiringsLieWithinAYearAndEveryPieceWasLookedAt() {
    LocalDate first = YEAR.get(0).record().day();
    LocalDate last = YEAR.get(YEAR.size() - 1).record().day();
    assertThat(last).isBefore(first.plusYears(1));
    assertThat(YEAR).allMatch(one -> one.results().size() == one.record().pieces().size());
    assertThat(YEAR)
        .allMatch(one -> one.record().limit().orElseThrow() >= one.record().pieces().size());
  }

  /** Where nothing is planted the share lies in the exact 99.9 % interval round the usual rate. */
  @Test
  void whereNothingIsPlantedFlawsComeAtTheUsualRate() {
    String cold = MadeUpYear.coolGlaze(STUDIO).id();
    String weak = STUDIO.forms().get(2).id();
    Proportion plain =
        proportion(
            one ->
                !(one.piece().zone() == Zone.TOP && one.piece().ring() == Ring.EDGE)
                    && !one.piece().glazeId().orElseThrow().equals(cold)
                    && !one.piece().formId().equals(weak));
    assertThat(plain.of()).isGreaterThan(3000);
    assertThat(plain.exact(0.999).holds(MadeUpYear.USUAL)).isTrue();
  }

  @Test
  void whatIsPlantedComesAtItsRate() {
    String cold = MadeUpYear.coolGlaze(STUDIO).id();
    String weak = STUDIO.forms().get(2).id();
    Proportion hot =
        proportion(
            one ->
                one.piece().zone() == Zone.TOP
                    && one.piece().ring() == Ring.EDGE
                    && !one.piece().formId().equals(weak));
    assertThat(hot.exact(0.999).holds(MadeUpYear.USUAL + MadeUpYear.HOT)).isTrue();
    Proportion cool =
        proportion(
            one ->
                one.piece().zone() == Zone.BOTTOM
                    && one.piece().glazeId().orElseThrow().equals(cold)
                    && !one.piece().formId().equals(weak));
    assertThat(cool.exact(0.999).holds(MadeUpYear.USUAL + MadeUpYear.COOL_GLAZE)).isTrue();
  }

  private static Proportion proportion(Predicate<Sighting> wanted) {
    List<Sighting> some = Sighting.of(YEAR).stream().filter(wanted).toList();
    int flawed = (int) some.stream().filter(one -> one.grade().isFlawed()).count();
    return new Proportion(flawed, some.size());
  }
}
