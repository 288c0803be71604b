package shelfful.drawing;

import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Reads what a PDF page paints, as boxes in millimetres from the top left corner of the paper. */
final class PaperReader extends PDFGraphicsStreamEngine {
  private static final double MILLIMETRES_PER_POINT = 25.4 / 72;

  private final List<Box> curved = new ArrayList<>();
  private final List<Box> straight = new ArrayList<>();
  private final double height;
  private GeneralPath path = new GeneralPath();
  private boolean hasCurves;

  private PaperReader(PDPage page) {
    super(page);
    height = page.getMediaBox().getHeight();
  }

  static PaperReader read(PDPage page) throws IOException {
    PaperReader reader = new PaperReader(page);
    reader.processPage(page);
    return reader;
  }

  /** Everything with curves: circles, ovals, capsules. */
  List<Box> curved() {
    return curved;
  }

  /** Everything of straight lines only. */
  List<Box> straight() {
    return straight;
  }

  private void end() {
    if (path.getCurrentPoint() != null) {
      Rectangle2D bounds = bounds();
      Box box =
          new Box(
              bounds.getMinX() * MILLIMETRES_PER_POINT,
              (height - bounds.getMaxY()) * MILLIMETRES_PER_POINT,
              bounds.getMaxX() * MILLIMETRES_PER_POINT,
              (height - bounds.getMinY()) * MILLIMETRES_PER_POINT);
      (hasCurves ? curved : straight).add(box);
    }
    path = new GeneralPath();
    hasCurves = false;
  }

  /** Of the curves themselves, not of the handles that bend them; to a hundredth of a point. */
  private Rectangle2D bounds() {
    Rectangle2D bounds = null;
    double[] at = new double[6];
    for (PathIterator i = path.getPathIterator(null, 0.001); !i.isDone(); i.next()) {
      if (i.currentSegment(at) != PathIterator.SEG_CLOSE) {
        Rectangle2D corner = new Rectangle2D.Double(at[0], at[1], 0, 0);
        bounds = bounds == null ? corner : bounds.createUnion(corner);
      }
    }
    return bounds;
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    path.curveTo(x1, y1, x2, y2, x3, y3);
    hasCurves = true;
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    path.closePath();
  }

  @Override
  public void endPath() {
    end();
  }

  @Override
  public void strokePath() {
    end();
  }

  @Override
  public void fillPath(int windingRule) {
    end();
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    end();
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    throw new IllegalStateException("No surface paints rectangles");
  }

  @Override
  public void drawImage(PDImage image) {
    throw new IllegalStateException("No sheet holds images");
  }

  @Override
  public void clip(int windingRule) {
    throw new IllegalStateException("No surface clips");
  }

  @Override
  public void shadingFill(COSName name) {
    throw new IllegalStateException("No surface shades");
  }
}
