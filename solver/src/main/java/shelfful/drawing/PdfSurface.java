package shelfful.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Paints a drawing as PDF, a page for each sheet at its true size. The typeface is embedded as far
 * as it is used. The file holds no date and no random number: one drawing, one sequence of bytes.
 */
public final class PdfSurface {
  private static final long DOCUMENT_ID = 0;

  private PdfSurface() {}

  /** The whole file. */
  public static byte[] bytes(LoadDrawing drawing) {
    try (PDDocument document = new PDDocument();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      document.setDocumentId(DOCUMENT_ID);
      document.getDocumentInformation().setTitle(drawing.title());
      document.getDocumentInformation().setCreator("Shelfful");
      Map<Weight, PDFont> fonts = new EnumMap<>(Weight.class);
      for (Weight weight : Weight.values()) {
        fonts.put(weight, PDType0Font.load(document, Typeface.parse(weight), true));
      }
      for (Sheet sheet : drawing.sheets()) {
        page(document, sheet, fonts);
      }
      document.save(out);
      return out.toByteArray();
    } catch (IOException fault) {
      throw new UncheckedIOException("The sheets could not be written as PDF", fault);
    }
  }

  private static void page(PDDocument document, Sheet sheet, Map<Weight, PDFont> fonts)
      throws IOException {
    PDPage page =
        new PDPage(
            new PDRectangle(PdfBrush.points(sheet.width()), PdfBrush.points(sheet.height())));
    document.addPage(page);
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.setLineCapStyle(1);
      content.setLineJoinStyle(1);
      PdfBrush brush = new PdfBrush(content, sheet.height(), fonts);
      for (Mark mark : sheet.marks()) {
        brush.paint(mark);
      }
    }
  }
}
