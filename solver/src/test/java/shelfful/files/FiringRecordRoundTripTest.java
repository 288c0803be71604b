package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.measure.Cone;
import shelfful.record.FiringCourse;
import shelfful.record.FiringRecord;
import shelfful.record.WitnessCone;

class FiringRecordRoundTripTest {
  @TempDir private Path folder;

  private static FiringRecord noted() {
    return UnpackingNoteTest.record()
        .with(
            new FiringCourse(
                Optional.of("slow 6"),
                List.of(
                    new WitnessCone("top", new Cone("5")), new WitnessCone("low", new Cone("06"))),
                Optional.of(570),
                Optional.of(960),
                Optional.of(41_230_500L),
                Optional.of(41_292_000L)));
  }

  private static ReadResult<FiringRecord> read(String text) {
    return FiringRecordReader.read("f.json", text.getBytes(StandardCharsets.UTF_8));
  }

  private static String text(FiringRecord record) {
    return new String(FiringRecordWriter.bytes(record), StandardCharsets.UTF_8);
  }

  @Test
  void readsWhatItWritesToTheLastByte() {
    for (FiringRecord record : List.of(noted(), UnpackingNoteTest.record())) {
      ReadResult<FiringRecord> read = read(text(record));
      assertThat(read.problems()).isEmpty();
      assertThat(read.found()).contains(record);
      assertThat(text(read.found().get())).isEqualTo(text(record));
    }
  }

  @Test
  void writesNothingThatCouldNotBeReadBack() {
    Path file = folder.resolve("f.firing.json");
    FiringCourse unreadable =
        new FiringCourse(
            Optional.of("two\nlines"),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    assertThatThrownBy(() -> FiringRecordWriter.write(noted().with(unreadable), file))
        .isInstanceOf(SaveFailed.class)
        .hasMessageContainingAll("f.firing.json", "/course/program", "Nothing was saved");
    assertThat(file).doesNotExist();
  }

  @Test
  void usesWhatTheMeterSays() {
    assertThat(noted().course().kilowattHours()).hasValue(61.5);
    assertThat(UnpackingNoteTest.record().course().kilowattHours()).isEmpty();
  }

  @Test
  void namesFieldAndWayOutOfWhatIsWrong() {
    String good = text(noted());
    assertThat(read(good.replace("\"reached\": \"5\"", "\"reached\": \"99\"")).problems())
        .anySatisfy(one -> assertThat(one.sentence()).contains("/course/cones/0/reached"));
    assertThat(read(good.replace("41292", "1")).problems())
        .anySatisfy(one -> assertThat(one.sentence()).contains("less than the one before"));
    assertThat(read(good.replace("\"BK-002\"", "\"BK-001\"")).problems())
        .anySatisfy(
            one ->
                assertThat(one.sentence())
                    .contains("/pieces/1, piece: ", "BK-001 is named twice", "/pieces/0"));
    assertThat(read(good.replace("shelfful firing", "shelfful plan")).found()).isEmpty();
  }
}
