package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import shelfful.inspect.InspectedLoad;
import shelfful.measure.LengthUnit;

class SvgSurfaceTest {
  private static List<Sheet> sheets(InspectedLoad load) {
    return LoadDrawing.of(load, PaperSize.A4, LengthUnit.MILLIMETRES).sheets();
  }

  private static Document parse(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }

  private static List<Element> elements(Document document) {
    List<Element> elements = new ArrayList<>();
    NodeList nodes = document.getElementsByTagName("*");
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  @Test
  void paintsOneElementForEachMark() throws Exception {
    for (Sheet sheet : sheets(Loads.drum())) {
      // The image itself and its white ground come on top.
      assertThat(elements(parse(SvgSurface.image(sheet)))).hasSize(sheet.marks().size() + 2);
    }
  }

  @Test
  void isAsLargeAsThePaper() throws Exception {
    Element image = parse(SvgSurface.image(sheets(Loads.small()).get(0))).getDocumentElement();
    assertThat(image.getAttribute("width")).isEqualTo("210mm");
    assertThat(image.getAttribute("viewBox")).isEqualTo("0 0 210 297");
  }

  @Test
  void holdsNothingButShapesAndTextWhateverTheNamesAre() throws Exception {
    for (Sheet sheet : sheets(Loads.hostile())) {
      List<Element> elements = elements(parse(SvgSurface.image(sheet)));
      assertThat(elements)
          .extracting(Element::getLocalName)
          .isSubsetOf("svg", "rect", "path", "circle", "ellipse", "text");
      assertThat(elements)
          .allSatisfy(element -> assertThat(element.hasAttribute("onerror")).isFalse());
    }
  }

  @Test
  void writesNamesAsTheyAre() throws Exception {
    Document image = parse(SvgSurface.image(sheets(Loads.hostile()).get(0)));
    assertThat(image.getDocumentElement().getTextContent()).contains("<img src=x");
  }
}
