package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.load.Load;

class PlanRoundTripTest {

  @Test
  void readsBackWhatItWrote() {
    byte[] once = PlanWriter.bytes(SmallPlan.inspected());

    ReadResult<Load> result = PlanReader.read("plan.json", once);

    assertThat(result.problems()).isEmpty();
    assertThat(result.found()).contains(SmallPlan.load());
    assertThat(PlanWriter.bytes(SmallPlan.inspected(result.found().orElseThrow()))).isEqualTo(once);
  }

  /** A locked layer holds the one under it: both come back locked, whoever wrote the file. */
  @Test
  void readsBackWhatStays() {
    Load load = SmallPlan.kept();

    byte[] bytes = PlanWriter.bytes(SmallPlan.inspected(load));
    String text = new String(bytes, StandardCharsets.UTF_8);

    assertThat(text).containsOnlyOnce("\"pinned\": true");
    assertThat(text.split("\"locked\": true", -1)).hasSize(3);
    assertThat(PlanReader.read("plan.json", bytes).found()).contains(load);
    assertThat(read(text.replaceFirst("\"locked\": true", "\"locked\": false")).found())
        .contains(load);
  }

  @Test
  void keepsNothingWhereNothingIsSaid() {
    assertThat(text()).doesNotContain("pinned").doesNotContain("locked");
    assertThat(read(text()).found().orElseThrow().request().kept()).isEmpty();
  }

  @Test
  void refusesAMarkThatIsNeitherTrueNorFalse() {
    String pinned = text().replaceFirst("\"catcher\": true", "\"catcher\": true, \"pinned\": 1");
    String locked = text().replaceFirst("\"shelf\": \"full\"", "$0, \"locked\": \"yes\"");

    assertThat(read(pinned).problems())
        .extracting(Problem::where)
        .containsExactly("/layers/0/pieces/2/pinned");
    assertThat(read(locked).problems())
        .extracting(Problem::where)
        .containsExactly("/layers/0/locked");
  }

  @Test
  void savesAndKeepsTheVersionBefore(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("plan.json");
    Files.writeString(file, "before");

    PlanWriter.write(SmallPlan.inspected(), file);

    assertThat(PlanReader.read(file).found()).contains(SmallPlan.load());
    assertThat(folder.resolve("plan.json.bak")).hasContent("before");
  }

  @Test
  void saysForEveryPieceWhereItStands() {
    assertThat(text())
        .contains("\"piece\": \"B1-001\"")
        .contains("\"form\": \"mug\"")
        .contains("\"x\": -150.5")
        .contains("\"turn\": 90.5")
        .contains("\"catcher\": true")
        .contains("\"reason\": \"other-cone\"");
  }

  @Test
  void writesEachPieceOnALineOfItsOwn() {
    assertThat(
            text()
                .lines()
                .filter(line -> line.contains("\"piece\"") && line.contains("\"catcher\"")))
        .hasSize(4);
  }

  @Test
  void refusesAPieceThatTheBatchesDoNotHave() {
    ReadResult<Load> result =
        read(text().replaceFirst("\"piece\": \"B1-001\"", "\"piece\": \"B1-004\""));

    assertThat(result.found()).isEmpty();
    assertThat(result.problems())
        .extracting(Problem::where)
        .containsExactly("/layers/0/pieces/0/piece");
  }

  @Test
  void refusesAFormOrHeightThatDoesNotAgreeWithTheRest() {
    String otherForm = text().replaceFirst("\"form\": \"mug\"", "\"form\": \"tumbler\"");
    String otherHeight = text().replaceFirst("(?s)(\"pieces\".*?\"z\": )44.4", "$145.4");

    assertThat(read(otherForm).problems()).extracting(Problem::field).containsExactly("form");
    assertThat(read(otherHeight).problems()).extracting(Problem::field).containsExactly("z");
  }

  @Test
  void tellsWhatIsWrongWithTheStudioWithinByItsPath() {
    ReadResult<Load> result = read(text().replace("\"id\": \"egg-cup\"", "\"id\": \"mug\""));

    assertThat(result.found()).isEmpty();
    assertThat(result.problems()).extracting(Problem::where).contains("/studio/forms/15/id");
  }

  private static ReadResult<Load> read(String text) {
    return PlanReader.read("plan.json", text.getBytes(StandardCharsets.UTF_8));
  }

  private static String text() {
    return new String(PlanWriter.bytes(SmallPlan.inspected()), StandardCharsets.UTF_8);
  }
}
