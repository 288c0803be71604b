package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Loads;
import shelfful.load.Load;
import shelfful.load.Pile;
import shelfful.studio.Studio;
import shelfful.ware.BisqueSetting;
import shelfful.ware.Form;

/** Forms that may be piled, and plans with piles, in their files. */
class PilesInFilesTest {
  private static final Load PILES = Loads.piles();

  private static String text() {
    return new String(PlanWriter.bytes(SmallPlan.inspected(PILES)), StandardCharsets.UTF_8);
  }

  private static ReadResult<Load> read(String text) {
    return PlanReader.read("plan.json", text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<String> where(String text) {
    return read(text).problems().stream().map(Problem::where).toList();
  }

  @Test
  void aPlanWithPilesComesBackAsItWas() {
    ReadResult<Load> result = read(text());
    assertThat(result.problems()).isEmpty();
    assertThat(result.found()).contains(PILES);
  }

  @Test
  void everyPieceSaysItsHeightAndOnlyThoseInPilesWhatTheyRestOn() {
    String text = text();
    assertThat(text).contains("\"on\": \"DW-001\"", "\"way\": \"nested\"", "\"way\": \"inside\"");
    int resting = 0;
    for (var layer : PILES.layers()) {
      for (Pile pile : Pile.of(layer.placements())) {
        resting += (int) pile.pieces().stream().filter(one -> !one.rest().isPlain()).count();
      }
    }
    assertThat(text.split("\"rest\": ", -1)).hasSize(resting + 1);
  }

  @Test
  void aWayWithoutAPieceIsRefused() {
    String broken = text().replaceFirst("\"on\": \"DW-001\", ", "");
    assertThat(where(broken)).containsExactly("/layers/0/pieces/1/rest/on");
  }

  @Test
  void anUnknownWayIsRefusedWithTheNearestWord() {
    String broken = text().replaceFirst("\"way\": \"nested\"", "\"way\": \"nestd\"");
    Problem problem = read(broken).problems().get(0);
    assertThat(problem.where()).isEqualTo("/layers/0/pieces/1/rest/way");
    assertThat(problem.mend()).contains("nested");
  }

  @Test
  void aPieceOnTheShelfMayNotHangOverIt() {
    Load load = PILES;
    String z = FileNumber.written(load.layers().get(0).z());
    String broken = text().replaceFirst("\"z\": " + z + "(,\\s+\"turn\")", "\"z\": 99$1");
    assertThat(where(broken)).contains("/layers/0/pieces/0/z");
  }

  @Test
  void theDemoStudioKeepsWhatItsFormsSay() {
    Studio demo = SmallStudio.demo();
    Studio again = StudioReader.read("studio.json", StudioWriter.bytes(demo)).found().orElseThrow();
    assertThat(again).isEqualTo(demo);
    assertThat(demo.forms().stream().map(Form::bisque).filter(one -> !one.isAlone()))
        .hasSizeGreaterThan(5);
  }

  @Test
  void whatAFormMayNotSayIsToldWithItsPath() {
    assertThat(problems("\"piled\": {\"mostHigh\": 1, \"increment\": 20}"))
        .containsExactly("/forms/0/bisque/piled/mostHigh");
    assertThat(problems("\"piled\": {\"mostHigh\": 3, \"increment\": 2000}"))
        .containsExactly("/forms/0");
    assertThat(problems("\"carries\": 1")).containsExactly("/forms/0/bisque");
    assertThat(problems("\"hollow\": {\"diameter\": 30, \"deep\": 20, \"forms\": [\"nobody\"]}"))
        .containsExactly("/forms/0/bisque/hollow/forms");
    assertThat(problems("\"hollow\": {\"diameter\": 30, \"deep\": 20, \"forms\": []}"))
        .containsExactly("/forms/0/bisque/hollow");
    assertThat(problems("\"hollow\": {\"diameter\": 300, \"deep\": 20, \"forms\": [\"mug\"]}"))
        .containsExactly("/forms/0");
  }

  /** The demo's first form with another setting. */
  private static List<String> problems(String bisque) {
    Studio demo = SmallStudio.demo();
    String text = new String(StudioWriter.bytes(demo), StandardCharsets.UTF_8);
    String plain =
        text.replaceFirst(
            "(?s)\"bisque\": \\{[^{}]*\\{[^{}]*\\}[^{}]*\\}", "\"bisque\": {" + bisque + "}");
    assertThat(plain).isNotEqualTo(text);
    return SmallStudio.read(plain).problems().stream().map(Problem::where).toList();
  }

  @Test
  void nothingSaidIsNothingWritten() {
    String text = new String(PlanWriter.bytes(SmallPlan.inspected()), StandardCharsets.UTF_8);
    assertThat(text).doesNotContain("\"rest\"");
    assertThat(BisqueSetting.ALONE.isAlone()).isTrue();
  }
}
