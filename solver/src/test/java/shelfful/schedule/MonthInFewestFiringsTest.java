package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.optaplanner.core.config.solver.EnvironmentMode;
import shelfful.files.WeekReader;
import shelfful.ware.FiringKind;
import shelfful.week.WeekRequest;

/** The demo month given out by estimates of room alone, against what can be counted. */
class MonthInFewestFiringsTest {
  private static final int EVALUATIONS = 20_000;

  /** A tenth more room than first guessed: there the count below can be reached. */
  private static final int STRETCH = 110;

  private static Board board() {
    WeekRequest month =
        WeekReader.request(Path.of("../demo-data/month.json")).found().orElseThrow();
    Ground ground = new Ground(month);
    RoomBook room = new RoomBook(month, ground.kinds()).forSearched();
    List<Chunk> chunks = new ChunkMaker(ground, room, List.of(), Map.of()).chunks();
    return new BoardMaker(ground, room, STRETCH)
        .board(chunks, List.of(List.of(), List.of()), List.of());
  }

  /**
   * No assignment has fewer: each share takes at least so much of a firing wherever it goes, and a
   * firing is of one kind.
   */
  private static long fewest(Board board) {
    long fewest = 0;
    for (FiringKind kind : FiringKind.values()) {
      double firings = 0;
      for (Share share : board.shares()) {
        if (share.kind() == kind) {
          firings +=
              board.programs().stream()
                  .filter(share::fits)
                  .mapToDouble(p -> share.usage(p.kiln()) / (double) board.goesIn().get(p.index()))
                  .min()
                  .orElse(0);
        }
      }
      fewest += (long) Math.ceil(firings - 1e-9);
    }
    return fewest;
  }

  private static List<Turn> fired(Reckoning found) {
    return found.board().turns().stream()
        .filter(turn -> found.times(turn.index()) != null)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void asFewFiringsAsRoomAllowsAreFound(long seed) {
    Board board = board();

    Reckoning found =
        new WeekSearch(EnvironmentMode.REPRODUCIBLE)
            .run(Opening.sketch(board), EVALUATIONS, seed)
            .reckoning();

    assertThat(fired(found)).hasSize((int) fewest(board));
    for (Turn turn : fired(found)) {
      KilnProgram program = found.program(turn.index());
      long used = 0;
      for (int share : found.sharesOf(turn.index())) {
        used += found.goes(board.shares().get(share)) ? board.table().usage(share, turn.kiln()) : 0;
      }
      assertThat(used).isLessThanOrEqualTo(board.goesIn().get(program.index()));
    }
    for (Share share : board.shares()) {
      boolean takenSomewhere = share.taken().contains(true);
      assertThat(found.goes(share)).as("share %d", share.index()).isEqualTo(takenSomewhere);
      if (takenSomewhere) {
        long day = board.clock().day(found.times(found.turnOf(share)).unpacked());
        share.due().forEach(due -> assertThat(day).isLessThanOrEqualTo(due.day()));
      }
    }
  }

  @Test
  void wholeFiringsMovedAreMovedBackExactly() {
    Board board = board();

    WeekSketch end = new WeekSearch(EnvironmentMode.FULL_ASSERT).run(Opening.sketch(board), 500, 1);

    assertThat(WeekScorer.score(end.reckoning()))
        .isGreaterThanOrEqualTo(WeekScorer.score(Opening.sketch(board).reckoning()));
  }
}
