package shelfful.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The bundled typeface (DejaVu Sans, licence beside the files): which letters it has and how wide
 * they are, so that every surface lays text out alike. Safe for use by several threads.
 */
public final class Typeface {
  /** 1 pt = 1/72 in. */
  public static final double MILLIMETRES_PER_POINT = 25.4 / 72;

  private static final Map<Weight, Typeface> LOADED = new ConcurrentHashMap<>();

  private final CmapLookup glyphs;
  private final TrueTypeFont font;
  private final double unitsPerEm;
  private final Map<Integer, Double> advances = new ConcurrentHashMap<>();

  private Typeface(Weight weight) {
    try {
      font = parse(weight);
      glyphs = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
    } catch (IOException fault) {
      throw new UncheckedIOException("The bundled typeface cannot be read", fault);
    }
  }

  static Typeface of(Weight weight) {
    return LOADED.computeIfAbsent(weight, Typeface::new);
  }

  /** The font file, to be closed by the caller. */
  public static InputStream file(Weight weight) {
    String name = weight == Weight.BOLD ? "DejaVuSans-Bold.ttf" : "DejaVuSans.ttf";
    InputStream stream = Typeface.class.getResourceAsStream(name);
    if (stream == null) {
      throw new IllegalStateException("The bundled typeface is missing: " + name);
    }
    return stream;
  }

  /**
   * A fresh copy of the font for a document. Ligatures stay off: they would make words narrower
   * than measured.
   */
  static TrueTypeFont parse(Weight weight) throws IOException {
    try (InputStream stream = file(weight)) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(stream));
      font.setEnableGsub(false);
      return font;
    }
  }

  boolean has(int codePoint) {
    return glyphs.getGlyphId(codePoint) > 0;
  }

  /** The width of words in millimetres at a size in points. */
  double width(String words, double size) {
    double ems = words.codePoints().mapToDouble(this::advance).sum();
    return ems * size * MILLIMETRES_PER_POINT;
  }

  private double advance(int codePoint) {
    return advances.computeIfAbsent(codePoint, this::readAdvance);
  }

  private double readAdvance(int codePoint) {
    synchronized (font) {
      try {
        return font.getAdvanceWidth(glyphs.getGlyphId(codePoint)) / unitsPerEm;
      } catch (IOException fault) {
        throw new UncheckedIOException("The bundled typeface cannot be read", fault);
      }
    }
  }
}
