package shelfful.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shelfful.app.Opened;
import shelfful.app.WorkFile;

/**
 * Wrong files of every kind, each given to the command that reads it: it ends as bad input, with
 * lines that name the file, the place and a way to mend it, and with no fault of the program.
 */
class WrongFilesByCommandTest {
  private static final Path FORMATS = Path.of("..", "docs", "formats");
  private static final String STUDIO = FORMATS.resolve("studio.example.json").toString();
  private static final String LIST = FORMATS.resolve("batch-list.example.csv").toString();
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  /** A kind of JSON file, with a number in it, a list of things with ids, and who reads it. */
  enum Kind {
    STUDIO_FILE("studio", "/forms/0/mass", "/forms"),
    LIST("batch-list", "/batches/0/quantity", "/batches"),
    PLAN("plan", "/layers/0/z", "/layers"),
    WORK("work", "/layers/0/z", "/layers"),
    WEEK("week", "/batches/0/quantity", "/batches"),
    WEEK_PLAN("week-plan", "/batches/0/quantity", "/batches"),
    FIRING("firing", "/waited", "/pieces");

    private final String name;
    private final String number;
    private final String list;

    Kind(String name, String number, String list) {
      this.name = name;
      this.number = number;
      this.list = list;
    }

    String text() throws IOException {
      return Files.readString(FORMATS.resolve(name + ".example.json"));
    }

    String[] command(Path file, Path folder) {
      String wrong = file.toString();
      String into = folder.resolve("into").toString();
      return switch (this) {
        case STUDIO_FILE -> new String[] {"plan", wrong, WrongFilesByCommandTest.LIST};
        case LIST ->
            new String[] {"plan", STUDIO, wrong, "--steps", "0", "--quiet", "--into", into};
        case PLAN -> new String[] {"inspect", wrong, "--no-limit"};
        case WEEK ->
            new String[] {"week", "plan", wrong, "--rounds", "0", "--quiet", "--into", into};
        case WEEK_PLAN -> new String[] {"week", "inspect", wrong};
        case FIRING -> new String[] {"record", "show", wrong};
        case WORK -> throw new IllegalStateException("no command reads work");
      };
    }
  }

  private int run(String... args) {
    err.reset();
    return Shelfful.run(args, new PrintStream(new ByteArrayOutputStream()), new PrintStream(err));
  }

  private List<String> told() {
    return err.toString(StandardCharsets.UTF_8).lines().toList();
  }

  /** What the reader of a kind says of bytes; work is read by the desk alone. */
  private List<String> told(Kind kind, byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("wrong.json"), bytes);
    if (kind == Kind.WORK) {
      Opened<WorkFile.OpenWork> opened = WorkFile.open(file);
      assertThat(opened).isInstanceOf(Opened.Refused.class);
      return ((Opened.Refused<WorkFile.OpenWork>) opened).sentences();
    }
    int code = run(kind.command(file, folder));
    assertThat(code).as(told().toString()).isEqualTo(ExitCodes.BAD_INPUT);
    return told();
  }

  /** Each line names the file, then what is wrong and how to mend it, in a sentence each. */
  static void speakToPeople(String name, String variant, List<String> told) {
    assertThat(told).as(variant).isNotEmpty();
    for (String line : told) {
      assertThat(line)
          .as(variant)
          .startsWith(name)
          .matches("[^:]+: .+[.?] .+[.?]")
          .hasSizeLessThan(400)
          .doesNotContain("Exception", "fault of the program", "java.", "jackson");
    }
  }

  @ParameterizedTest
  @EnumSource
  void aWrongFileIsToldByItsFilePlaceAndMend(Kind kind) throws IOException {
    for (Map.Entry<String, byte[]> wrong : wrong(kind).entrySet()) {
      String[] variant = wrong.getKey().split(" @ ", 2);
      List<String> told = told(kind, wrong.getValue());
      speakToPeople("wrong.json", kind + ": " + variant[0], told);
      assertThat(told)
          .as(kind + ": " + variant[0])
          .anySatisfy(line -> assertThat(line).contains(variant[1]));
    }
  }

  /** Wrong files by what is wrong, with what must be named of the place after an @. */
  private static Map<String, byte[]> wrong(Kind kind) throws IOException {
    Map<String, byte[]> wrong = new LinkedHashMap<>();
    String text = kind.text();
    int half = text.length() / 2;
    wrong.put("empty @ wrong.json", new byte[0]);
    wrong.put("torn @ line", bytes(text.substring(0, half)));
    wrong.put(
        "last bracket torn @ line", bytes(text.strip().substring(0, text.strip().length() - 1)));
    wrong.put("binary @ line", binary());
    wrong.put(
        "a picture @ line", bytes("\u0089PNG\r\n\u001a\n" + text, StandardCharsets.ISO_8859_1));
    wrong.put(
        "an old encoding @ line",
        bytes(text.replaceFirst("\\{", "{\"\u00e4\": 1,"), StandardCharsets.ISO_8859_1));
    wrong.put("UTF-16 without mark @ line", bytes(text, StandardCharsets.UTF_16LE));
    wrong.put("a list @ wrong.json", bytes("[" + text + "]"));
    wrong.put("null @ wrong.json", bytes("null"));
    wrong.put("nothing in it @ format", bytes("{}"));
    wrong.put("bottomless @ line", bytes("{\"a\":".repeat(100_000)));
    wrong.put("a field twice @ version", bytes(text.replaceFirst("\"version\": 1,", "$0 $0")));
    wrong.put(
        "another kind @ format", bytes(text.replaceFirst("shelfful [a-z ]+", "shelfful pot")));
    wrong.put("a newer version @ version", bytes(text.replaceFirst("\"version\": 1", "$09")));
    wrong.put("NaN @ line", with(kind, TextNode.valueOf("NaN"), true));
    wrong.put("a number without end @ line", with(kind, TextNode.valueOf("Infinity"), true));
    wrong.put("another type @ " + kind.number, with(kind, BooleanNode.TRUE, false));
    wrong.put("null for a number @ " + kind.number, with(kind, NullNode.instance, false));
    wrong.put("a text for a number @ " + kind.number, with(kind, TextNode.valueOf("many"), false));
    wrong.put(
        "an absurd number @ " + kind.number,
        with(kind, DecimalNode.valueOf(new BigDecimal("1e300")), false));
    wrong.put("a missing field @ " + kind.number, with(kind, null, false));
    wrong.put("an unknown field @ /catsName", changed(kind, root -> root.put("catsName", "Tom")));
    wrong.put("a list that is none @ " + kind.list, changed(kind, root -> set(root, kind.list)));
    if (!kind.list.equals("/layers")) {
      wrong.put("an id twice @ " + kind.list + "/", changed(kind, root -> twice(root, kind)));
    }
    return wrong;
  }

  static byte[] bytes(String text, Charset... charset) {
    return text.getBytes(charset.length == 0 ? StandardCharsets.UTF_8 : charset[0]);
  }

  static byte[] binary() {
    byte[] bytes = new byte[2000];
    new Random(4).nextBytes(bytes);
    return bytes;
  }

  private interface Spoiling {
    void spoil(ObjectNode root);
  }

  private static byte[] changed(Kind kind, Spoiling spoiling) throws IOException {
    ObjectNode root = (ObjectNode) JSON.readTree(kind.text());
    spoiling.spoil(root);
    return JSON.writeValueAsBytes(root);
  }

  private static byte[] with(Kind kind, JsonNode value, boolean bare) throws IOException {
    int cut = kind.number.lastIndexOf('/');
    String field = kind.number.substring(cut + 1);
    byte[] bytes =
        changed(
            kind,
            root -> {
              ObjectNode parent =
                  cut == 0 ? root : (ObjectNode) root.at(kind.number.substring(0, cut));
              assertThat(parent.has(field)).isTrue();
              if (value == null) {
                parent.remove(field);
              } else {
                parent.set(field, value);
              }
            });
    String word = value == null ? "" : value.asText();
    return bare
        ? bytes(new String(bytes, StandardCharsets.UTF_8).replace("\"" + word + "\"", word))
        : bytes;
  }

  private static void set(ObjectNode root, String list) {
    root.put(list.substring(1), "none");
  }

  private static void twice(ObjectNode root, Kind kind) {
    ArrayNode list = (ArrayNode) root.at(kind.list);
    list.add(list.get(0).deepCopy());
  }

  /** A layer of a plan that is there twice can be read; it is the judge who refuses it. */
  @Test
  void aLayerTwiceBreaksARule() throws IOException {
    Path file = folder.resolve("wrong.json");
    Files.write(file, changed(Kind.PLAN, root -> twice(root, Kind.PLAN)));
    assertThat(run(Kind.PLAN.command(file, folder))).isEqualTo(ExitCodes.RULE_BROKEN);
  }

  /** A folder and a name of nothing in place of a file, for every command that reads one. */
  @Test
  void whatIsNoFileIsTold() throws IOException {
    Path inTheWay = Files.createDirectory(folder.resolve("wrong.json"));
    for (Kind kind : Kind.values()) {
      for (Path file : List.of(inTheWay, folder.resolve("wrong.none"))) {
        if (kind != Kind.WORK) {
          assertThat(run(kind.command(file, folder))).isEqualTo(ExitCodes.BAD_INPUT);
          speakToPeople("wrong", kind + " " + file.getFileName(), told());
        }
      }
    }
  }
}
