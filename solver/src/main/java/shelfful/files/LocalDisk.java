package shelfful.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/** The file system of this computer. */
final class LocalDisk implements SavingDisk {
  private static final int MOST_LINKS = 16;

  @Override
  public Path resolved(Path path) throws IOException {
    Path file = path.toAbsolutePath();
    for (int i = 0; i < MOST_LINKS && Files.isSymbolicLink(file); i++) {
      file = file.resolveSibling(Files.readSymbolicLink(file)).normalize();
    }
    return file;
  }

  @Override
  public boolean exists(Path path) {
    return Files.exists(path);
  }

  @Override
  public boolean isFolder(Path path) {
    return Files.isDirectory(path);
  }

  @Override
  public boolean mayBeWritten(Path path) {
    return Files.isWritable(path);
  }

  @Override
  public byte[] read(Path path) throws IOException {
    return Files.readAllBytes(path);
  }

  @Override
  public void writeNew(Path path, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    }
  }

  @Override
  public void takeRights(Path from, Path to) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (view != null) {
      view.setPermissions(Files.getPosixFilePermissions(from));
    }
  }

  @Override
  public void replace(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
  }

  @Override
  public void deleteIfThere(Path path) throws IOException {
    Files.deleteIfExists(path);
  }

  @Override
  public void forceFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Not every system can; the file itself is on the disk already.
      return;
    }
  }

  @Override
  public void pause(long milliseconds) {
    try {
      Thread.sleep(milliseconds);
    } catch (InterruptedException e) {
      // Whoever wants the thread to end will see it; the save goes on without waiting.
      Thread.currentThread().interrupt();
    }
  }
}
