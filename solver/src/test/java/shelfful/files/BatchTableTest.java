package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.measure.Cone;
import shelfful.ware.Batch;
import shelfful.ware.LidPlace;
import shelfful.ware.Stage;

class BatchTableTest {
  private static final String[] LINES = {
    "Batch;Order;form;GLAZE;Quantity;cone",
    "B1;F\u00fcr Zo\u00eb;cup;white;12;06",
    "",
    "B2;;Bowl;GREEN;3,0;5,5"
  };

  static List<Arguments> writings() {
    List<Arguments> writings = new ArrayList<>();
    for (String delimiter : List.of(",", ";", "\t")) {
      for (String end : List.of("\n", "\r\n", "\r")) {
        for (String encoding :
            List.of("UTF-8", "UTF-8 marked", "UTF-16LE marked", "UTF-16BE marked")) {
          writings.add(Arguments.of(delimiter, end, encoding));
        }
      }
    }
    return writings;
  }

  @ParameterizedTest
  @MethodSource("writings")
  void readsEveryUsualWritingOfATable(String delimiter, String end, String encoding) {
    String text = String.join(end, LINES);
    String table =
        delimiter.equals(",")
            ? text.replace("3,0", "3.0").replace("5,5", "\"5,5\"").replace(";", ",")
            : text.replace(";", delimiter);

    ReadResult<List<Batch>> result = read(bytes(table, encoding));

    assertThat(result.problems()).isEmpty();
    assertThat(result.found().orElseThrow())
        .containsExactly(
            batch("B1", "cup", "white", 12, "06", Optional.of("F\u00fcr Zo\u00eb")),
            batch("B2", "bowl", "green", 3, "5.5", Optional.empty()));
  }

  @Test
  void obeysALineThatNamesTheSignBetweenCells() {
    ReadResult<List<Batch>> result = read("sep=;\r\nform;quantity\r\ncup;5\r\ncup;0\r\n");

    assertThat(result.found().orElseThrow()).hasSize(1);
    assertThat(result.problems()).extracting(Problem::where).containsExactly("line 4, column 2");
  }

  @Test
  void answersALineOfAMegabyte() {
    ReadResult<List<Batch>> result = read("form,quantity\ncup,5\n" + "c".repeat(1 << 20) + ",5\n");

    assertThat(result.found().orElseThrow()).hasSize(1);
    assertThat(result.problems()).hasSize(1);
    assertThat(result.problems().get(0).sentence()).hasSizeLessThan(200);
  }

  @Test
  void refusesATableOfTooManyRows() {
    assertThat(read("form,quantity\n" + "cup,1\n".repeat(100_000)).problems())
        .extracting(Problem::wrong)
        .containsExactly("The table has more than 20000 rows.");
  }

  @Test
  void refusesLettersOfAnOlderEncodingWithTheReason() {
    ReadResult<List<Batch>> result =
        read(String.join("\n", LINES).getBytes(Charset.forName("windows-1252")));

    assertThat(result.found()).isEmpty();
    assertThat(result.problems()).extracting(Problem::where).containsExactly("line 2");
  }

  @Test
  void readsPlainLettersOfAnOlderEncoding() {
    byte[] bytes = "form;quantity\ncup;5\n".getBytes(Charset.forName("windows-1252"));

    assertThat(read(bytes).found().orElseThrow()).hasSize(1);
  }

  @Test
  void readsEveryColumn() {
    String table =
        "lid,set,order,due,priority,Must Go,cone,stage,quantity,glaze,form,batch\n"
            + "beside,tea,O-1,2026-06-05,4,x,04,bone dry,2,white,cup,B7\n";

    assertThat(read(table).found().orElseThrow())
        .containsExactly(
            new Batch(
                "B7",
                "cup",
                Optional.of("white"),
                2,
                Stage.BONE_DRY,
                Optional.of(new Cone("04")),
                true,
                4,
                Optional.of(LocalDate.of(2026, 6, 5)),
                Optional.of("O-1"),
                Optional.of("tea"),
                LidPlace.BESIDE));
  }

  @Test
  void makesUpAnIdFromTheLineWhereThereIsNone() {
    assertThat(read("form,quantity\ncup,5\n\nbowl,2\n").found().orElseThrow())
        .extracting(Batch::id)
        .containsExactly("line-2", "line-4");
  }

  @Test
  void findsAFormByItsNameAsWell() {
    assertThat(read("form,quantity\nCUP,5\n").found().orElseThrow().get(0).formId())
        .isEqualTo("cup");
  }

  @Test
  void countsLinesWithinAQuotedCell() {
    String table = "set,form,quantity\n\"a\r\nb\",cup,1\n\n\"ok\",cup,0\n";

    assertThat(read(table).problems())
        .extracting(Problem::where)
        .containsExactly("line 2, column 1", "line 5, column 3");
  }

  @ParameterizedTest
  @CsvSource({"list-60.csv,60", "list-200.csv,200", "list-500.csv,500"})
  void readsTheDemoListsWhole(String file, int pieces) {
    ReadResult<List<Batch>> result =
        BatchListReader.read(SmallStudio.DEMO.resolve(file), SmallStudio.demo());

    assertThat(result.problems()).isEmpty();
    assertThat(result.found().orElseThrow().stream().mapToInt(Batch::quantity).sum())
        .isEqualTo(pieces);
  }

  @ParameterizedTest
  @CsvSource({"list-60.csv", "list-200.csv", "list-500.csv"})
  void readsBackWhatItWroteAsATableAndAsJson(String file) {
    List<Batch> batches =
        BatchListReader.read(SmallStudio.DEMO.resolve(file), SmallStudio.demo())
            .found()
            .orElseThrow();

    byte[] table = BatchListWriter.table(batches);
    byte[] json = BatchListWriter.json(batches);

    assertThat(BatchListReader.read("a.csv", table, SmallStudio.demo()).found()).contains(batches);
    assertThat(BatchListReader.read("a.json", json, SmallStudio.demo()).found()).contains(batches);
    assertThat(BatchListReader.read("pasted", json, SmallStudio.demo()).found()).contains(batches);
    assertThat(BatchListWriter.table(batches)).isEqualTo(table);
  }

  @Test
  void saysWhenThereIsNoSuchFile() {
    ReadResult<List<Batch>> result =
        BatchListReader.read(Path.of("no-such-list.csv"), SmallStudio.studio());

    assertThat(result.problems())
        .extracting(Problem::sentence)
        .containsExactly("no-such-list.csv: There is no such file. Check its name and folder.");
  }

  @Test
  void tellsAHundredProblemsAndCountsTheRest() {
    ReadResult<List<Batch>> result = read("form,quantity\n" + "cap,5\n".repeat(150));

    assertThat(result.problems()).hasSize(101);
    assertThat(result.problems().get(100).wrong()).isEqualTo("There are 50 more problems.");
  }

  private static Batch batch(
      String id, String form, String glaze, int quantity, String cone, Optional<String> order) {
    return new Batch(
        id,
        form,
        Optional.of(glaze),
        quantity,
        Stage.GLAZED,
        Optional.of(new Cone(cone)),
        false,
        1,
        Optional.empty(),
        order,
        Optional.empty(),
        LidPlace.ON);
  }

  private static byte[] bytes(String text, String encoding) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    boolean marked = encoding.endsWith(" marked");
    Charset charset = Charset.forName(encoding.replace(" marked", ""));
    bytes.writeBytes((marked ? "\ufeff" + text : text).getBytes(charset));
    return bytes.toByteArray();
  }

  private static ReadResult<List<Batch>> read(byte[] bytes) {
    return BatchListReader.read("list.csv", bytes, SmallStudio.studio());
  }

  private static ReadResult<List<Batch>> read(String text) {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }
}
