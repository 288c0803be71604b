package shelfful.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static shelfful.cli.WrongFilesByCommandTest.binary;
import static shelfful.cli.WrongFilesByCommandTest.bytes;
import static shelfful.cli.WrongFilesByCommandTest.speakToPeople;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Wrong tables, notes and lines of results, each given to the command that reads it. */
class WrongTextsByCommandTest {
  private static final Path FORMATS = Path.of("..", "docs", "formats");
  private static final String STUDIO = FORMATS.resolve("studio.example.json").toString();

  @TempDir private Path folder;
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    err.reset();
    return Shelfful.run(args, new PrintStream(new ByteArrayOutputStream()), new PrintStream(err));
  }

  private List<String> told() {
    return err.toString(StandardCharsets.UTF_8).lines().toList();
  }

  @Test
  void aWrongTableIsToldByItsLineAndColumn() throws IOException {
    String head = "batch,form,glaze,quantity,stage\n";
    String good = head + "B1,cup,white,12,glazed\n";
    Map<String, byte[]> wrong = new LinkedHashMap<>();
    wrong.put("empty @ wrong.csv", new byte[0]);
    wrong.put("binary @ line", binary());
    wrong.put(
        "an old encoding @ line 3",
        bytes(good + "B2,t\u00e4sse,white,1,glazed\n", StandardCharsets.ISO_8859_1));
    wrong.put("UTF-16 without mark @ line", bytes(good, StandardCharsets.UTF_16LE));
    wrong.put("torn in a quoted cell @ line 1", bytes(head + "B1,cup,\"white"));
    wrong.put("a column missing @ quantity", bytes("batch,form\nB1,cup\n"));
    wrong.put("an unknown column @ cats", bytes("cats," + head + "3,B1,cup,white,12,glazed\n"));
    wrong.put("a column twice @ line 1", bytes("form," + head + "cup,B1,cup,white,12,glazed\n"));
    wrong.put("a word for a number @ line 2, column 4", bytes(good.replace("12", "many")));
    wrong.put("an absurd number @ line 2, column 4", bytes(good.replace("12", "1e300")));
    wrong.put("NaN @ line 2, column 4", bytes(good.replace("12", "NaN")));
    wrong.put("a negative number @ line 2, column 4", bytes(good.replace("12", "-3")));
    wrong.put("an unknown form @ line 2, column 2", bytes(good.replace("cup", "cap")));
    wrong.put("an id twice @ line 3, batch", bytes(good + "B1,cup,white,1,glazed\n"));
    wrong.put("a cell too many @ line 2", bytes(good.replace("glazed\n", "glazed,more\n")));
    for (Map.Entry<String, byte[]> one : wrong.entrySet()) {
      String[] variant = one.getKey().split(" @ ", 2);
      Path file = Files.write(folder.resolve("wrong.csv"), one.getValue());
      int code =
          run(
              "plan",
              STUDIO,
              file.toString(),
              "--steps",
              "0",
              "--quiet",
              "--into",
              folder.toString());
      assertThat(code).as(variant[0]).isEqualTo(ExitCodes.BAD_INPUT);
      List<String> ofTheFile = told().stream().filter(line -> line.startsWith("wrong")).toList();
      speakToPeople("wrong.csv", variant[0], ofTheFile);
      assertThat(ofTheFile).as(variant[0]).anySatisfy(l -> assertThat(l).contains(variant[1]));
    }
  }

  private static byte[] note(String... lines) {
    String body = String.join("\n", lines) + "\n";
    CRC32 crc = new CRC32();
    crc.update(bytes(body));
    return bytes(body + String.format(Locale.ROOT, "sum %08x%n", crc.getValue()));
  }

  @Test
  void aWrongNoteIsToldByItsLineAndAddsNothing() throws IOException {
    Path firing = folder.resolve("f.firing.json");
    Files.copy(FORMATS.resolve("firing.example.json"), firing);
    String first = "shelfful unpacking 1";
    String plan = "plan 7K3-QM2";
    byte[] good = note(first, plan, "B1-001 | lost | cracked");
    Map<String, byte[]> wrong = new LinkedHashMap<>();
    wrong.put("empty @ line 1", new byte[0]);
    wrong.put("binary @ line", binary());
    wrong.put("torn @ line", Arrays.copyOf(good, good.length - 4));
    wrong.put(
        "changed @ sum", bytes(new String(good, StandardCharsets.UTF_8).replace("lost", "good")));
    wrong.put(
        "UTF-16 without mark @ line",
        bytes(new String(good, StandardCharsets.UTF_8), StandardCharsets.UTF_16LE));
    wrong.put(
        "an old encoding @ line 3",
        bytes(first + "\n" + plan + "\nB\u00e4\nsum 0\n", StandardCharsets.ISO_8859_1));
    wrong.put("a page @ line 1", bytes("<html>\n<body>\n</body>\n</html>\n"));
    wrong.put("another plan @ line 2, plan", note(first, "plan AAA-AAA", "B1-001 | lost"));
    wrong.put("no such piece @ line 3, piece", note(first, plan, "B9-001 | lost"));
    wrong.put("a piece twice @ line 4, piece", note(first, plan, "B1-001 | lost", "B1-001 | good"));
    wrong.put("no such grade @ line 3, grade", note(first, plan, "B1-001 | 1e300"));
    wrong.put("a cause of a good piece @ line 3, cause", note(first, plan, "B1-001 | good | NaN"));
    wrong.put(
        "a long cause @ line 3, cause", note(first, plan, "B1-001 | lost | " + "c".repeat(81)));
    wrong.put("a cell too many @ line 3", note(first, plan, "B1-001 | lost | a | b"));
    wrong.put("a cell missing @ line 3", note(first, plan, "B1-001"));
    for (Map.Entry<String, byte[]> one : wrong.entrySet()) {
      String[] variant = one.getKey().split(" @ ", 2);
      Path file = Files.write(folder.resolve("wrong.txt"), one.getValue());
      assertThat(run("record", "unpack", firing.toString(), file.toString()))
          .as(variant[0])
          .isEqualTo(ExitCodes.BAD_INPUT);
      speakToPeople("wrong.txt", variant[0], told());
      assertThat(told()).as(variant[0]).anySatisfy(l -> assertThat(l).contains(variant[1]));
      assertThat(folder.resolve("f.unpacking.jsonl")).doesNotExist();
    }
  }

  /** Results that were torn cost their own line alone, and are told. */
  @Test
  void aWrongLineOfResultsIsTold() throws IOException {
    Path firing = folder.resolve("f.firing.json");
    Files.copy(FORMATS.resolve("firing.example.json"), firing);
    assertThat(run("record", "unpack", firing.toString(), "--piece", "B1-001=lost")).isZero();
    Path log = folder.resolve("f.unpacking.jsonl");
    byte[] whole = Files.readAllBytes(log);
    for (byte[] spoilt :
        List.of(
            bytes("{\"piece\":\"B1-002\""),
            bytes("not JSON"),
            binary(),
            bytes("{\"piece\":3,\"crc\":\"00000000\"}"))) {
      Files.write(log, joined(whole, spoilt));
      assertThat(run("record", "show", firing.toString())).isZero();
      speakToPeople("f.unpacking.jsonl", "results", told());
      assertThat(told()).anySatisfy(line -> assertThat(line).contains("line 2"));
    }
  }

  private static byte[] joined(byte[] first, byte[] second) {
    byte[] all = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, all, first.length, second.length);
    return all;
  }
}
