package shelfful.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Saves a file so that at every moment, even when the power fails, either the whole old or the
 * whole new version is there. The version before it is kept beside it as {@code name.bak}. A
 * symbolic link stays a link; the file behind it is replaced.
 */
public final class AtomicSave {
  /**
   * Virus scanners and synchronised folders hold a file for a moment: wait 10, 20, 40 … ms, two
   * seconds in all.
   */
  private static final int MOST_TRIES = 9;

  private static final long FIRST_PAUSE = 10;

  private static final AtomicLong NEXT = new AtomicLong();

  private final SavingDisk disk;

  AtomicSave(SavingDisk disk) {
    this.disk = disk;
  }

  /**
   * Saves the bytes as this file.
   *
   * @throws SaveFailed with the old version untouched; the sentence says where the new one is, if
   *     anywhere
   */
  public static void save(Path file, byte[] bytes) throws SaveFailed {
    new AtomicSave(new LocalDisk()).put(file, bytes);
  }

  void put(Path file, byte[] bytes) throws SaveFailed {
    Path target = target(file);
    Path fresh = beside(target);
    write(fresh, bytes, target);
    try {
      if (disk.exists(target)) {
        if (Arrays.equals(disk.read(target), bytes)) {
          disk.deleteIfThere(fresh);
          return;
        }
        keepPrevious(target);
        disk.takeRights(target, fresh);
      }
    } catch (IOException e) {
      discard(fresh);
      throw failed(
          target, "the version before it could not be kept as " + backup(target).getFileName(), e);
    }
    moveIntoPlace(fresh, target);
    disk.forceFolder(target.getParent());
  }

  private Path target(Path file) throws SaveFailed {
    Path target;
    try {
      target = disk.resolved(file);
    } catch (IOException e) {
      throw failed(file, "the link could not be followed", e);
    }
    Path folder = target.getParent();
    if (folder == null || !disk.isFolder(folder)) {
      throw failed(target, "its folder is not there", null);
    }
    if (disk.isFolder(target)) {
      throw failed(target, "a folder of this name is in the way", null);
    }
    if (disk.exists(target) && !disk.mayBeWritten(target)) {
      throw failed(target, "the file there is write-protected", null);
    }
    return target;
  }

  private void write(Path fresh, byte[] bytes, Path target) throws SaveFailed {
    try {
      disk.writeNew(fresh, bytes);
      if (!Arrays.equals(disk.read(fresh), bytes)) {
        throw new IOException("what was written reads back differently");
      }
    } catch (IOException e) {
      discard(fresh);
      throw failed(
          target, "the folder could not be written to; it may be full or write-protected", e);
    }
  }

  private void keepPrevious(Path target) throws IOException {
    Path copy = beside(target);
    try {
      disk.writeNew(copy, disk.read(target));
      replaceWithPatience(copy, backup(target));
    } catch (IOException e) {
      discard(copy);
      throw e;
    }
  }

  private void moveIntoPlace(Path fresh, Path target) throws SaveFailed {
    try {
      replaceWithPatience(fresh, target);
    } catch (AtomicMoveNotSupportedException e) {
      throw kept(fresh, target, "this disk cannot replace a file in one step", e);
    } catch (IOException e) {
      throw kept(fresh, target, "another program may have the file open", e);
    }
  }

  private void replaceWithPatience(Path from, Path to) throws IOException {
    long pause = FIRST_PAUSE;
    for (int attempt = 1; ; attempt++) {
      try {
        disk.replace(from, to);
        return;
      } catch (AccessDeniedException e) {
        if (attempt == MOST_TRIES) {
          throw e;
        }
        disk.pause(pause);
        pause = Math.min(2 * pause, 500);
      }
    }
  }

  private void discard(Path path) {
    try {
      disk.deleteIfThere(path);
    } catch (IOException e) {
      // A left-over of ours does no harm, and the failure that led here is the one to tell.
      return;
    }
  }

  private static Path backup(Path target) {
    return target.resolveSibling(target.getFileName() + ".bak");
  }

  /** A name of our own, short, so that it fits wherever the target's does. */
  private static Path beside(Path target) {
    return target.resolveSibling(
        ".shelfful-" + ProcessHandle.current().pid() + "-" + NEXT.incrementAndGet() + ".tmp");
  }

  private static SaveFailed failed(Path target, String why, Throwable cause) {
    return new SaveFailed(
        target.getFileName()
            + " was not saved: "
            + reason(why, cause)
            + ". Nothing was changed; choose another folder or name.",
        cause);
  }

  private static SaveFailed kept(Path fresh, Path target, String why, Throwable cause) {
    return new SaveFailed(
        target.getFileName()
            + " was not replaced: "
            + why
            + ". The old version is untouched; the new one is beside it as "
            + fresh.getFileName()
            + ".",
        cause);
  }

  private static String reason(String why, Throwable cause) {
    return cause instanceof NoSuchFileException ? "its folder is gone" : why;
  }
}
