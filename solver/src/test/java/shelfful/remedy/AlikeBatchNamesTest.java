package shelfful.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Batches;
import shelfful.fixture.Firings;
import shelfful.fixture.LoadDraft;
import shelfful.fixture.Studios;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.ware.Batch;

/** A batch whose name begins with another's name and a hyphen is another batch. */
class AlikeBatchNamesTest {
  private static final Batch ONE = Batches.glazed("a", "beaker", "chalk", 1);
  private static final Batch OTHER = Batches.glazed("a-b", "beaker", "chalk", 1);

  private static LoadDraft draft() {
    return new LoadDraft(Studios.studio(), Firings.glaze("round"), "full", ONE, OTHER)
        .level("F", "1in")
        .level("F", "4in");
  }

  private static InspectedLoad judged(Load load) {
    return ((Inspection.Passed) new Inspector().inspect(load)).load();
  }

  private static WaitingCase oneWaits() {
    InspectedLoad start = judged(draft().place("F1", "a-b-001", 0, 0, 0).load());
    WaitingGroup group = WaitingGroup.of(start.load()).get(0);
    return new WaitingCase(start, group, RemedyEffort.USUAL, new Runs());
  }

  @Test
  void theLayerToldIsTheOneThatTookThePieceOfTheGroup() {
    InspectedLoad after =
        judged(draft().place("F1", "a-001", 0, 0, 0).place("F2", "a-b-001", 0, 0, 0).load());
    assertThat(new Telling(oneWaits(), after).where()).isEqualTo("F1");
  }

  @Test
  void theReasonToldIsThatOfTheGroup() {
    Load none = draft().load();
    Load alone =
        new Load(
            none.request(),
            none.columnPlanId(),
            none.layers(),
            none.posts(),
            List.of(
                new LeftOut("a-b-001", LeftOut.Reason.TOO_TALL, "It is too tall.", ""),
                new LeftOut("a-001", LeftOut.Reason.TOO_WIDE, "It is too wide.", "")));
    assertThat(NextFiring.reason(oneWaits(), alone)).contains("It is too wide.");
  }
}
