package shelfful.files;

import java.io.IOException;
import java.nio.file.Path;

/** The few things a save asks of a file system, so that each can be made to fail in a test. */
interface SavingDisk {

  /** The file itself where the path is a symbolic link, so that the link survives. */
  Path resolved(Path path) throws IOException;

  boolean exists(Path path);

  boolean isFolder(Path path);

  boolean mayBeWritten(Path path);

  byte[] read(Path path) throws IOException;

  /** Makes a file that must not exist yet, writes every byte and forces them to the disk. */
  void writeNew(Path path, byte[] bytes) throws IOException;

  /** Gives a file the access rights of another where the system has such rights. */
  void takeRights(Path from, Path to) throws IOException;

  /** Puts a file in the place of another in one step, or not at all. */
  void replace(Path from, Path to) throws IOException;

  void deleteIfThere(Path path) throws IOException;

  /**
   * Forces the names in a folder to the disk where the system can; says nothing where it cannot.
   */
  void forceFolder(Path folder);

  void pause(long milliseconds);
}
