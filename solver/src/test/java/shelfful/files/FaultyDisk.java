package shelfful.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * A real folder in which the calls fail that a test names; a failing write leaves half of its
 * bytes.
 */
class FaultyDisk implements SavingDisk {
  private final LocalDisk disk = new LocalDisk();
  private int calls;
  private int failAt;
  private int cutAt;
  private int denials;
  private Path held;
  private long paused;

  FaultyDisk failAt(int call) {
    failAt = call;
    return this;
  }

  FaultyDisk cutPowerAt(int call) {
    cutAt = call;
    return this;
  }

  FaultyDisk denyReplaces(int times) {
    denials = times;
    return this;
  }

  FaultyDisk denyReplacesOf(Path file) {
    held = file;
    return this;
  }

  long paused() {
    return paused;
  }

  private void count() throws IOException {
    calls++;
    if (cutAt > 0 && calls >= cutAt) {
      throw new PowerCut();
    }
    if (calls == failAt) {
      throw new IOException("no space left");
    }
  }

  @Override
  public Path resolved(Path path) throws IOException {
    count();
    return disk.resolved(path);
  }

  @Override
  public boolean exists(Path path) {
    return disk.exists(path);
  }

  @Override
  public boolean isFolder(Path path) {
    return disk.isFolder(path);
  }

  @Override
  public boolean mayBeWritten(Path path) {
    return disk.mayBeWritten(path);
  }

  @Override
  public byte[] read(Path path) throws IOException {
    count();
    return disk.read(path);
  }

  @Override
  public void writeNew(Path path, byte[] bytes) throws IOException {
    try {
      count();
    } catch (IOException | PowerCut e) {
      disk.writeNew(path, Arrays.copyOf(bytes, bytes.length / 2));
      throw e;
    }
    disk.writeNew(path, bytes);
  }

  @Override
  public void takeRights(Path from, Path to) throws IOException {
    count();
    disk.takeRights(from, to);
  }

  @Override
  public void replace(Path from, Path to) throws IOException {
    count();
    if (denials-- > 0 || to.equals(held)) {
      throw new AccessDeniedException(to.toString());
    }
    disk.replace(from, to);
  }

  @Override
  public void deleteIfThere(Path path) throws IOException {
    count();
    disk.deleteIfThere(path);
  }

  @Override
  public void forceFolder(Path path) {
    disk.forceFolder(path);
  }

  @Override
  public void pause(long milliseconds) {
    paused += milliseconds;
  }
}
