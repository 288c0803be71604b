package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.edit.WorkPlan;
import shelfful.studio.Studio;

/** The schemas in docs/formats say of our files what our readers say of them. */
class PublishedSchemasTest {
  private static final Path FORMATS = Path.of("../docs/formats");
  private static final Path WRONG = Path.of("src/test/resources/shelfful/files/wrong");
  private static final String PREFIX = "urn:shelfful:format:";
  private static final String META_SCHEMA = "https://json-schema.org/draft/2020-12/schema";

  private static final Map<String, String> FILES =
      Map.of(
          PREFIX + "studio:1", "studio.schema.json",
          PREFIX + "batch-list:1", "batch-list.schema.json",
          PREFIX + "plan:1", "plan.schema.json",
          PREFIX + "work:1", "work.schema.json",
          PREFIX + "week:1", "week.schema.json",
          PREFIX + "week-plan:1", "week-plan.schema.json");

  private final SchemaRegistry registry =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          builder ->
              builder.schemas(
                  id -> FILES.containsKey(id) ? text(FORMATS.resolve(FILES.get(id))) : null));

  @ParameterizedTest
  @ValueSource(
      strings = {
        "studio.schema.json",
        "batch-list.schema.json",
        "plan.schema.json",
        "work.schema.json",
        "week.schema.json",
        "week-plan.schema.json"
      })
  void areSchemasThemselves(String file) {
    assertThat(
            registry
                .getSchema(SchemaLocation.of(META_SCHEMA))
                .validate(text(FORMATS.resolve(file)), InputFormat.JSON))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "studio, ../demo-data/studio.json",
    "studio, ../docs/formats/studio.example.json",
    "batch-list, ../docs/formats/batch-list.example.json",
    "plan, ../docs/formats/plan.example.json",
    "work, ../docs/formats/work.example.json",
    "week, ../demo-data/month.json",
    "week, ../docs/formats/week.example.json",
    "week-plan, ../docs/formats/week-plan.example.json"
  })
  void acceptDemoDataAndExamples(String schema, String file) {
    assertThat(errors(schema, text(Path.of(file)))).isEmpty();
  }

  @Test
  void acceptWhatIsWritten() {
    Studio every =
        StudioReader.read(SmallStudio.FILE.resolveSibling("every-shape-studio.json"))
            .found()
            .orElseThrow();

    assertThat(errors("studio", written(StudioWriter.bytes(every)))).isEmpty();
    assertThat(errors("studio", written(StudioWriter.bytes(SmallStudio.demo())))).isEmpty();
    assertThat(errors("plan", written(PlanWriter.bytes(SmallPlan.inspected())))).isEmpty();
    assertThat(errors("plan", written(PlanWriter.bytes(SmallPlan.inspected(SmallPlan.kept())))))
        .isEmpty();
    byte[] work = WorkWriter.bytes(WorkPlan.of(SmallPlan.load()), Optional.of("/home/work.json"));
    assertThat(errors("work", written(work))).isEmpty();
    for (String list : List.of("list-60.csv", "list-200.csv", "list-500.csv")) {
      var batches =
          BatchListReader.read(SmallStudio.DEMO.resolve(list), SmallStudio.demo())
              .found()
              .orElseThrow();
      assertThat(errors("batch-list", written(BatchListWriter.json(batches)))).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bands-and-body",
        "clearance-negative",
        "clearance-too-large",
        "colour-name",
        "cone-23",
        "cone-number",
        "distance-missing",
        "every-zone-forbidden",
        "form-text",
        "forms-object",
        "height-1e999",
        "height-list",
        "height-metres-by-mistake",
        "height-missing",
        "height-nan-text",
        "height-negative",
        "height-no-unit",
        "height-null",
        "height-zero",
        "id-formula",
        "id-path",
        "lug-reach-and-sticks-out",
        "mass-in-ounces",
        "mass-negative",
        "name-10000-characters",
        "name-line-break",
        "name-right-to-left-override",
        "no-bands",
        "no-columns",
        "no-format",
        "outline-without-size",
        "point-of-three",
        "polygon-of-four",
        "posts-half",
        "posts-negative",
        "shrinkage-30",
        "stage-unknown",
        "three-glazes-kept-apart",
        "three-post-pieces",
        "two-posts",
        "unknown-field",
        "unknown-field-at-top",
        "version-text",
        "wrong-format",
        "wrong-version"
      })
  void refuseWhatIsWrongInItself(String file) {
    assertThat(errors("studio", text(WRONG.resolve("studio-" + file + ".json")))).isNotEmpty();
  }

  @Test
  void theExamplesCanBeRead() {
    Studio studio = StudioReader.read(FORMATS.resolve("studio.example.json")).found().orElseThrow();

    for (String list : List.of("batch-list.example.csv", "batch-list.example.json")) {
      assertThat(BatchListReader.read(FORMATS.resolve(list), studio).problems()).isEmpty();
    }
    assertThat(PlanReader.read(FORMATS.resolve("plan.example.json")).problems()).isEmpty();
    assertThat(WorkReader.read(FORMATS.resolve("work.example.json")).problems()).isEmpty();
  }

  private List<Error> errors(String schema, String json) {
    return registry
        .getSchema(SchemaLocation.of(PREFIX + schema + ":1"))
        .validate(json, InputFormat.JSON);
  }

  private static String written(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  private static String text(Path path) {
    try {
      return Files.readString(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
