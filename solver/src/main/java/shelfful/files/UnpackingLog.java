package shelfful.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.record.PieceResult;

/**
 * The results of one unpacking, a line each, only ever added to. A line that was torn when the
 * power failed costs that line alone: before anything is added, a file that does not end with a
 * line break is given one, and readers pass over what they cannot read and tell it.
 */
public final class UnpackingLog {
  private UnpackingLog() {}

  /**
   * Adds results and forces them to the disk.
   *
   * @throws SaveFailed when they could not be written or could not be read back; what was in the
   *     file before is still there
   */
  public static void append(List<PieceResult> results, Path file) throws SaveFailed {
    StringBuilder lines = new StringBuilder();
    for (PieceResult result : results) {
      lines.append(readable(result, file)).append('\n');
    }
    try (FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
      long end = channel.size();
      String separator = endsInTheMiddle(channel, end) ? "\n" : "";
      ByteBuffer bytes = ByteBuffer.wrap((separator + lines).getBytes(StandardCharsets.UTF_8));
      while (bytes.hasRemaining()) {
        end += channel.write(bytes, end);
      }
      channel.force(true);
    } catch (IOException e) {
      throw new SaveFailed(
          FileBytes.nameOf(file)
              + " could not be added to; the folder may be full, gone or write-protected. What was"
              + " in it before is still there.",
          e);
    }
  }

  private static String readable(PieceResult result, Path file) throws SaveFailed {
    String line = UnpackingLine.of(result);
    Problems problems = new Problems(FileBytes.nameOf(file));
    if (UnpackingLine.read(line, 1, problems).isEmpty()) {
      Problem problem = problems.all().get(0);
      String where = "piece " + Shown.text(result.pieceId());
      throw SaveFailed.unreadable(
          new Problem(problem.file(), where, problem.field(), problem.wrong(), problem.mend()));
    }
    return line;
  }

  private static boolean endsInTheMiddle(FileChannel channel, long size) throws IOException {
    if (size == 0) {
      return false;
    }
    ByteBuffer last = ByteBuffer.allocate(1);
    channel.read(last, size - 1);
    return last.get(0) != '\n';
  }

  /** Reads every line that is whole; a file that is not there holds none. */
  public static ReadResult<List<PieceResult>> read(Path file) {
    Problems problems = new Problems(FileBytes.nameOf(file));
    if (Files.notExists(file)) {
      return problems.result(Optional.of(List.of()));
    }
    return problems.result(FileBytes.of(file, problems).map(bytes -> results(bytes, problems)));
  }

  /** Lines are parted before they are decoded, so that a torn letter spoils its own line alone. */
  private static List<PieceResult> results(byte[] bytes, Problems problems) {
    List<PieceResult> results = new ArrayList<>();
    int number = 0;
    int from = 0;
    while (from < bytes.length) {
      int to = from;
      while (to < bytes.length && bytes[to] != '\n') {
        to++;
      }
      number++;
      String line = new String(bytes, from, to - from, StandardCharsets.UTF_8);
      if (!line.isBlank()) {
        UnpackingLine.read(line, number, problems).ifPresent(results::add);
      }
      from = to + 1;
    }
    return List.copyOf(results);
  }
}
