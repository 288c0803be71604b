package shelfful.files;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Turns the bytes of a file into text without ever guessing silently: UTF-8 with or without a byte
 * order mark, or UTF-16 with one. Anything else is refused with the place of the first byte that
 * does not belong.
 */
final class FileText {
  private static final String MEND =
      "Save it as \"CSV UTF-8\" or with the encoding UTF-8 and read it again.";

  private FileText() {}

  static Optional<String> of(byte[] bytes, Problems problems) {
    if (!FileBytes.fits(bytes, problems)) {
      return Optional.empty();
    }
    if (startsWith(bytes, 0xef, 0xbb, 0xbf)) {
      return decoded(ByteBuffer.wrap(bytes, 3, bytes.length - 3), StandardCharsets.UTF_8, problems);
    }
    if (startsWith(bytes, 0xff, 0xfe, 0, 0) || startsWith(bytes, 0, 0, 0xfe, 0xff)) {
      problems.add("", "", "The text is encoded as UTF-32.", MEND);
      return Optional.empty();
    }
    if (startsWith(bytes, 0xff, 0xfe)) {
      return decoded(
          ByteBuffer.wrap(bytes, 2, bytes.length - 2), StandardCharsets.UTF_16LE, problems);
    }
    if (startsWith(bytes, 0xfe, 0xff)) {
      return decoded(
          ByteBuffer.wrap(bytes, 2, bytes.length - 2), StandardCharsets.UTF_16BE, problems);
    }
    return decoded(ByteBuffer.wrap(bytes), StandardCharsets.UTF_8, problems);
  }

  private static boolean startsWith(byte[] bytes, int... mark) {
    if (bytes.length < mark.length) {
      return false;
    }
    for (int i = 0; i < mark.length; i++) {
      if ((bytes[i] & 0xff) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static Optional<String> decoded(ByteBuffer bytes, Charset charset, Problems problems) {
    CharsetDecoder decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    int from = bytes.position();
    try {
      String text = decoder.decode(bytes).toString();
      return withoutNul(text, problems);
    } catch (CharacterCodingException e) {
      String before = textBefore(bytes, from, charset);
      problems.add(
          "line " + lineAtEndOf(before),
          "",
          "The text is not encoded as " + charset.name() + guess(charset) + ".",
          MEND);
      return Optional.empty();
    }
  }

  private static String guess(Charset charset) {
    return charset == StandardCharsets.UTF_8
        ? "; it looks like an older Windows or Mac encoding"
        : "";
  }

  private static Optional<String> withoutNul(String text, Problems problems) {
    int nul = text.indexOf('\0');
    if (nul < 0) {
      return Optional.of(text);
    }
    problems.add(
        "line " + lineAtEndOf(text.substring(0, nul)),
        "",
        "There is a zero byte in the text, so it is damaged or not a text file.",
        MEND);
    return Optional.empty();
  }

  /** What could be decoded before the first wrong byte; the decoder stops with the buffer there. */
  private static String textBefore(ByteBuffer bytes, int from, Charset charset) {
    ByteBuffer good = bytes.duplicate();
    good.limit(bytes.position());
    good.position(from);
    CharBuffer text = charset.decode(good);
    return text.toString();
  }

  /**
   * The number of the line that a text ends in, as an editor counts: CRLF, LF and CR each end a
   * line.
   */
  static int lineAtEndOf(String text) {
    return 1 + breaksIn(text);
  }

  static int breaksIn(String text) {
    int breaks = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean loneCarriageReturn =
          c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n');
      if (c == '\n' || loneCarriageReturn) {
        breaks++;
      }
    }
    return breaks;
  }
}
