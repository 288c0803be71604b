package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import shelfful.inspect.InspectedLoad;
import shelfful.measure.LengthUnit;

class PhonePageTest {
  private static final Set<String> TAGS =
      Set.of(
          "html head meta title style body nav div button span section h1 h2 h3 p bdi ul li svg path"
              .split(" "));
  private static final Set<String> MORE_TAGS =
      Set.of(
          "circle ellipse rect text ol label input footer small script b select option datalist textarea a"
              .split(" "));

  private static String page(InspectedLoad load) {
    return PhonePage.html(load, Printing.plain(PaperSize.A4, LengthUnit.MILLIMETRES));
  }

  private static Document parse(String html) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
  }

  private static List<Element> all(Document page, String tag) {
    List<Element> elements = new ArrayList<>();
    NodeList nodes = page.getElementsByTagName(tag);
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  @Test
  void asksForNothingFromOutside() {
    for (InspectedLoad load : List.of(Loads.drum(), Loads.hostile())) {
      assertThat(page(load))
          .doesNotContain("http:")
          .doesNotContain("https:")
          .doesNotContain("url(")
          .doesNotContain(" href=")
          .doesNotContain("@import")
          .contains("default-src 'none'");
    }
  }

  @Test
  void letsNothingRunButItsOwnScriptAndStyle() throws Exception {
    String html = page(Loads.hostile());
    Document page = parse(html);
    String policy =
        all(page, "meta").stream()
            .filter(meta -> meta.getAttribute("http-equiv").equals("Content-Security-Policy"))
            .map(meta -> meta.getAttribute("content"))
            .findFirst()
            .orElseThrow();
    assertThat(policy)
        .isEqualTo(
            "default-src 'none'; style-src '"
                + hash(between(html, "<style>", "</style>"))
                + "'; script-src '"
                + hash(between(html, "<script>", "</script>"))
                + "'");
    assertThat(all(page, "script")).hasSize(1);
  }

  private static String between(String text, String from, String to) {
    int start = text.indexOf(from) + from.length();
    return text.substring(start, text.indexOf(to, start));
  }

  private static String hash(String text) throws Exception {
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return "sha256-" + Base64.getEncoder().encodeToString(digest);
  }

  @Test
  void isWellFormedAndHoldsNoElementOrActionThatANameBrought() throws Exception {
    for (Element element : all(parse(page(Loads.hostile())), "*")) {
      assertThat(TAGS.contains(element.getTagName()) || MORE_TAGS.contains(element.getTagName()))
          .as(element.getTagName())
          .isTrue();
      for (int i = 0; i < element.getAttributes().getLength(); i++) {
        String name = element.getAttributes().item(i).getNodeName();
        assertThat(name).doesNotStartWith("on").isNotIn("src", "href", "style", "srcdoc");
      }
    }
  }

  @Test
  void showsHostileNamesAsReadableTextWithoutDirectionOrControlCharacters() throws Exception {
    String text = parse(page(Loads.hostile())).getDocumentElement().getTextContent();
    assertThat(text).contains("<img src=x onerror=alert(1)>", "漢字", "🔥", "very long very long");
    assertThat(text.codePoints().filter(letter -> letter != '\n'))
        .noneMatch(
            letter ->
                Character.getType(letter) == Character.CONTROL
                    || Character.getType(letter) == Character.FORMAT
                    || Character.getType(letter) == Character.SURROGATE);
  }

  @Test
  void hasATickForEachShelfAndEachPieceInTheOrderOfTheSheets() throws Exception {
    Setting setting = new Setting(Loads.drum());
    Document page = parse(page(Loads.drum()));
    List<String> expected = new ArrayList<>();
    for (int layer = 0; layer < setting.layers().size(); layer++) {
      expected.add("t" + (layer + 1) + "-0");
      for (SetPiece piece : setting.on(setting.layers().get(layer))) {
        expected.add("t" + (layer + 1) + "-" + piece.number());
      }
    }
    assertThat(
            all(page, "input").stream()
                .filter(input -> input.getAttribute("type").equals("checkbox"))
                .map(input -> input.getAttribute("id")))
        .containsExactlyElementsOf(expected);
    assertThat(all(page, "input").stream().filter(input -> input.hasAttribute("data-piece")))
        .hasSize(Loads.drum().load().placed());
    List<String> spots =
        all(page, "circle").stream()
            .filter(circle -> circle.getAttribute("class").equals("spot"))
            .map(circle -> circle.getAttribute("id").replace("at-", ""))
            .toList();
    assertThat(spots).isSubsetOf(expected).hasSize(Loads.drum().load().placed());
  }

  @Test
  void offersEachPieceOnceForUnpackingUnderTheMarkOfThePlan() throws Exception {
    InspectedLoad load = Loads.drum();
    Document page = parse(page(load));
    List<String> standing =
        load.load().layers().stream()
            .flatMap(layer -> layer.placements().stream())
            .map(one -> one.pieceId())
            .toList();
    assertThat(
            all(page, "li").stream()
                .filter(row -> row.hasAttribute("data-out"))
                .map(row -> row.getAttribute("data-out")))
        .containsExactlyInAnyOrderElementsOf(standing);
    assertThat(all(page, "body").get(0).getAttribute("data-mark"))
        .isEqualTo(PlanMark.of(load.load()).shortForm());
  }

  @Test
  void isAPlainListWithoutScript() throws Exception {
    List<String> hidden =
        all(parse(page(Loads.drum())), "*").stream()
            .filter(element -> element.hasAttribute("hidden"))
            .map(element -> element.getAttribute("id"))
            .toList();
    assertThat(hidden).containsExactlyInAnyOrder("top", "bar", "kept", "unpacking");
  }

  @Test
  void keepsTicksOfAnotherPlanOrRevisionApart() throws Exception {
    assertThat(key(Loads.drum(), Edition.UNSAID)).isEqualTo(key(Loads.drum(), Edition.UNSAID));
    Edition second = new Edition(Optional.of("2"), Optional.empty());
    assertThat(
            Set.of(
                key(Loads.drum(), Edition.UNSAID),
                key(Loads.drum(), second),
                key(Loads.alike(0), Edition.UNSAID),
                key(Loads.alike(0.1), Edition.UNSAID)))
        .hasSize(4);
  }

  private static String key(InspectedLoad load, Edition edition) throws Exception {
    Printing printing =
        new Printing(
            SheetFormat.upright(PaperSize.A4), LengthUnit.MILLIMETRES, edition, ProgramNote.BLANK);
    return all(parse(PhonePage.html(load, printing)), "body").get(0).getAttribute("data-plan");
  }

  @Test
  void warnsBeforeTheFirstLayer() {
    String html = page(Loads.small()).replace("&#39;", "'");
    for (String caution : Cautions.LINES) {
      assertThat(html.indexOf(caution)).isBetween(1, html.indexOf("<h2>"));
    }
  }

  @Test
  void tellsWhatWaitsAndWhatWouldHelp() {
    assertThat(page(Loads.small()))
        .contains("Bottle vase, Celadon, batch B3", "Two more posts of 25.4 mm would make");
  }

  @Test
  void fiveHundredPiecesStayUnderAMegabyte() {
    assertThat(page(Loads.fiveHundred()).getBytes(StandardCharsets.UTF_8).length)
        .isLessThan(1_000_000);
  }

  @Test
  void isTheSameInEveryLanguage() {
    String plain = page(Loads.small());
    Locale language = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(page(Loads.small())).isEqualTo(plain);
    } finally {
      Locale.setDefault(language);
    }
  }
}
