package shelfful.files;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import shelfful.record.Grade;
import shelfful.record.PieceResult;

/**
 * One line of an unpacking: an object of JSON on one line whose last field is the CRC-32 (ISO 3309,
 * as in ITU-T V.42) of everything before it, so that a torn or changed line is noticed.
 */
final class UnpackingLine {
  private static final Pattern SUMMED =
      Pattern.compile("(\\{[^\\r\\n]*),\"crc\":\"([0-9a-f]{8})\"\\}");

  private UnpackingLine() {}

  static String of(PieceResult result) {
    FieldWriter fields =
        new FieldWriter().text("piece", result.pieceId()).word("grade", result.grade());
    fields.text("cause", result.cause());
    String whole = fields.object().toString();
    String body = whole.substring(0, whole.length() - 1);
    return body + ",\"crc\":\"" + sum(body) + "\"}";
  }

  /** The result a line tells, or empty with the reason noted at its line number. */
  static Optional<PieceResult> read(String line, int number, Problems problems) {
    Matcher parts = SUMMED.matcher(line);
    if (!parts.matches() || !sum(parts.group(1)).equals(parts.group(2))) {
      problems.warn(
          "line " + number,
          "",
          "The line is torn or was changed; it is passed over.",
          "Mark that piece again.");
      return Optional.empty();
    }
    byte[] body = (parts.group(1) + "}").getBytes(StandardCharsets.UTF_8);
    Problems inside = new Problems("");
    Optional<PieceResult> result =
        FieldReader.ofDocument(body, inside).flatMap(UnpackingLine::result);
    if (result.isEmpty()) {
      inside
          .all()
          .forEach(one -> problems.warn("line " + number, one.field(), one.wrong(), one.mend()));
    }
    return result;
  }

  private static Optional<PieceResult> result(FieldReader fields) {
    String piece = fields.name("piece");
    Grade grade = fields.choice("grade", Grade.class);
    Optional<String> cause =
        fields.optional("cause", node -> FieldReader.text(node).then(FileName::name));
    return fields.make(() -> new PieceResult(piece, grade, cause));
  }

  static String sum(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return String.format(Locale.ROOT, "%08x", crc.getValue());
  }
}
