package shelfful.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.KeepFirings;
import shelfful.app.Opened;
import shelfful.files.UnpackingNote;
import shelfful.record.Grade;
import shelfful.record.PieceResult;
import shelfful.record.UnpackedFiring;

/** From plan to table by the command line, nothing typed twice. */
class RecordsTest {
  private static final String PLAN = "src/test/resources/shelfful/drawing/list-60.plan.json";

  private static final List<String> SOUND =
      List.of("slow | 6", "Gro\u0308\u00dfe", " a ", "a".repeat(61), "b".repeat(80));

  private static final List<String> ODD_TEXTS =
      Stream.concat(
              Stream.of(
                  "",
                  "   ",
                  "c".repeat(81),
                  "two\nlines",
                  "tab\there",
                  "bell\u0007",
                  "\u202eturned",
                  "zero\u200bwide",
                  "half \ud800 letter",
                  "line\u2028separator",
                  "mark\ufeff"),
              SOUND.stream())
          .toList();

  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private String firing;

  private int run(String... args) {
    out.reset();
    err.reset();
    return Shelfful.run(args, new PrintStream(out), new PrintStream(err));
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String told() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @BeforeEach
  void beginAFiring() {
    int code = run("record", "begin", PLAN, "--day", "2026-06-01", "--into", folder.toString());
    assertThat(code).as(told()).isZero();
    firing = said().strip();
    assertThat(Path.of(firing)).isNotEmptyFile();
  }

  private UnpackedFiring opened() {
    return ((Opened.Ready<UnpackedFiring>) KeepFirings.open(Path.of(firing))).value();
  }

  @Test
  void notesHowItWentAndKeepsWhatIsNotGivenAgain() {
    assertThat(
            run(
                "record",
                "note",
                firing,
                "--cone",
                "top=5",
                "--cone",
                "low=06",
                "--hours-up",
                "9.5",
                "--meter-start",
                "1000.5"))
        .as(told())
        .isZero();
    assertThat(run("record", "note", firing, "--meter-end", "1060.5")).as(told()).isZero();
    assertThat(run("record", "show", firing)).isZero();
    assertThat(said())
        .contains("60 pieces in")
        .contains("Cone 5 at top")
        .contains("Cone 06 at low")
        .contains("9.5 hours up")
        .contains("60.0 kWh")
        .contains("60 not looked at");
  }

  @Test
  void refusesAMeterThatRunsBackwardsAndAConeThatIsNone() throws IOException {
    byte[] before = Files.readAllBytes(Path.of(firing));
    assertThat(run("record", "note", firing, "--meter-start", "9", "--meter-end", "8"))
        .isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(run("record", "note", firing, "--cone", "top=60")).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains("no cone 60");
    assertThat(Path.of(firing)).hasBinaryContent(before);
  }

  /**
   * Texts of every odd kind: those that are taken are read back, those that are not change nothing.
   */
  @Test
  void whateverIsNotedIsReadBack() throws IOException {
    for (String text : ODD_TEXTS) {
      for (String[] given :
          List.of(
              new String[] {"record", "note", firing, "--program", text},
              new String[] {"record", "note", firing, "--cone", text + "=6"})) {
        byte[] before = Files.readAllBytes(Path.of(firing));
        int code = run(given);
        assertThat(code).as(given[3] + " " + text).isIn(ExitCodes.DONE, ExitCodes.BAD_INPUT);
        assertThat(code == ExitCodes.DONE).as(text).isEqualTo(SOUND.contains(text));
        assertThat(KeepFirings.open(Path.of(firing))).as(text).isInstanceOf(Opened.Ready.class);
        if (code != ExitCodes.DONE) {
          assertThat(told()).contains(given[3]).doesNotContain("fault of the program");
          assertThat(Path.of(firing)).hasBinaryContent(before);
        }
      }
    }
    assertThat(opened().record().course().program()).contains("b".repeat(80));
    assertThat(opened().record().course().cones().get(0).place()).isEqualTo("b".repeat(80));
  }

  @Test
  void whateverCauseIsTakenIsReadBack() {
    String piece = opened().record().pieces().get(3).pieceId();
    for (String text : ODD_TEXTS) {
      List<PieceResult> before = opened().results();
      int code = run("record", "unpack", firing, "--piece", piece + "=lost:" + text);
      Opened.Ready<UnpackedFiring> read =
          (Opened.Ready<UnpackedFiring>) KeepFirings.open(Path.of(firing));
      assertThat(read.notes()).as(text).isEmpty();
      if (text.isBlank() || SOUND.contains(text)) {
        assertThat(code).as(told()).isEqualTo(ExitCodes.DONE);
        assertThat(read.value().result(piece).orElseThrow().cause().orElse(""))
            .isEqualTo(Normalizer.normalize(text.strip(), Normalizer.Form.NFC));
      } else {
        assertThat(code).as(text).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(told()).contains("--piece " + piece).contains("cause");
        assertThat(read.value().results()).isEqualTo(before);
      }
    }
  }

  @Test
  void takesThePhonesNoteAndSinglePieces() throws IOException {
    UnpackedFiring before = opened();
    String piece = before.record().pieces().get(3).pieceId();
    Path note = folder.resolve("note.txt");
    Files.writeString(
        note,
        UnpackingNote.write(
            before.record(),
            List.of(new PieceResult(piece, Grade.SECOND, java.util.Optional.of("pinholes")))));
    assertThat(run("record", "unpack", firing, note.toString())).as(told()).isZero();
    String other = before.record().pieces().get(5).pieceId();
    assertThat(run("record", "unpack", firing, "--piece", other + "=lost:cracked", "--rest-good"))
        .as(told())
        .isZero();
    assertThat(opened().count(Grade.GOOD)).isEqualTo(58);
    assertThat(opened().result(piece).orElseThrow().cause()).contains("pinholes");
    assertThat(opened().result(other).orElseThrow().grade()).isEqualTo(Grade.LOST);
  }

  /** A file that was renamed is written where it is, and what was marked before is still known. */
  @Test
  void aRenamedFiringStaysOneFiring() throws IOException {
    String first = opened().record().pieces().get(0).pieceId();
    String second = opened().record().pieces().get(1).pieceId();
    run("record", "unpack", firing, "--piece", first + "=lost");
    for (String name : List.of("june.firing.json", "june.json")) {
      Path renamed = folder.resolve(name);
      Files.move(Path.of(firing), renamed);
      firing = renamed.toString();
      assertThat(run("record", "note", firing, "--program", name)).as(told()).isZero();
      assertThat(run("record", "unpack", firing, "--piece", second + "=second")).isZero();
      assertThat(opened().record().course().program()).contains(name);
      assertThat(opened().results()).hasSize(2);
      try (Stream<Path> files = Files.list(folder)) {
        assertThat(files.map(Path::toString).filter(one -> one.endsWith(".json")))
            .containsExactly(firing);
      }
    }
  }

  @Test
  void refusesATornNoteAndAStrangePieceAndAddsNothing() throws IOException {
    Path note = folder.resolve("note.txt");
    String whole = UnpackingNote.write(opened().record(), List.of());
    Files.writeString(note, whole.substring(0, whole.length() - 3));
    assertThat(run("record", "unpack", firing, note.toString())).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains("not whole");
    assertThat(run("record", "unpack", firing, "--piece", "nobody=lost"))
        .isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains("nobody");
    assertThat(opened().results()).isEmpty();
  }

  @Test
  void tellsFiguresAndHabitsOfWhatIsKept() throws IOException {
    run("record", "unpack", firing, "--rest-good");
    Path table = folder.resolve("firings.csv");
    assertThat(run("figures", folder.toString(), "--per-firing", "30", "--to", table.toString()))
        .as(told())
        .isZero();
    assertThat(Files.readAllLines(table).get(1))
        .contains("2026-06-01,60,60,1.000,60,0,0,,30.00,0.500");
    Path sheet = folder.resolve("figures.pdf");
    assertThat(run("figures", folder.toString(), "--sheet", sheet.toString())).as(told()).isZero();
    assertThat(sheet).isNotEmptyFile();
    assertThat(run("habits", folder.toString())).as(told()).isZero();
    assertThat(said()).contains("60 pieces of 1 firings").contains("too few yet");
    assertThat(run("habits", folder.toString(), "--accept", "1")).isEqualTo(ExitCodes.BAD_INPUT);
  }

  @Test
  void saysThatAFolderIsNotThere() {
    String none = folder.resolve("none").toString();
    for (String command : List.of("figures", "habits")) {
      assertThat(run(command, none)).isEqualTo(ExitCodes.BAD_INPUT);
      assertThat(told()).contains("There is no folder").contains("record begin");
    }
  }

  @Test
  void everyCommandRefusesAFileOfAnotherKind() {
    Stream.of("note", "unpack", "show")
        .forEach(
            command ->
                assertThat(run("record", command, PLAN))
                    .as(command)
                    .isEqualTo(ExitCodes.BAD_INPUT));
    assertThat(run("why", firing)).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(run("why", PLAN, "--apply", "0")).isEqualTo(ExitCodes.BAD_INPUT);
  }
}
