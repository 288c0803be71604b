package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import shelfful.fixture.RandomRequest;
import shelfful.load.LeftOut;
import shelfful.load.LeftOut.Reason;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.planning.LoadPlanner;
import shelfful.planning.SearchBudget;
import shelfful.ware.Batch;
import shelfful.ware.Piece;

class TooLargeTest {
  private static final int REQUESTS = 60;
  private static final Set<Reason> SIZES =
      EnumSet.of(Reason.TOO_TALL, Reason.TOO_WIDE, Reason.TOO_HEAVY);

  /** What stands in a load is not too large, and what a load leaves out for its size is. */
  @Test
  void agreesWithLoadsOfRandomRequests() {
    int placed = 0;
    int refused = 0;
    for (long seed = 0; seed < REQUESTS; seed++) {
      LoadRequest request = RandomRequest.of(seed);
      TooLarge tooLarge = new TooLarge(request.studio());
      Load load = new LoadPlanner(request).plan(SearchBudget.ofSteps(0), better -> {});
      Map<String, Batch> batches =
          request.pieces().stream().collect(Collectors.toMap(Piece::id, Piece::batch));
      for (String piece : load.standing()) {
        assertThat(tooLarge.refuses(batches.get(piece))).as("%s of seed %d", piece, seed).isEmpty();
        placed++;
      }
      boolean anyPlan = request.columnPlanId().isEmpty();
      for (LeftOut left : load.leftOut()) {
        if (SIZES.contains(left.reason()) && anyPlan && request.studio().kilns().size() == 1) {
          assertThat(tooLarge.refuses(batches.get(left.pieceId())))
              .as("%s of seed %d", left, seed)
              .map(LeftOut::reason)
              .contains(left.reason());
          refused++;
        }
      }
    }
    assertThat(placed).isPositive();
    assertThat(refused).isPositive();
  }
}
