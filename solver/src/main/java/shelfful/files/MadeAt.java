package shelfful.files;

import java.util.IdentityHashMap;
import java.util.Map;

/**
 * Remembers at which path of a file each domain object was written, so that later checks can name
 * it.
 */
final class MadeAt {
  private final Map<Object, String> paths = new IdentityHashMap<>();

  void put(Object made, String path) {
    paths.put(made, path);
  }

  String pathOf(Object made) {
    return paths.getOrDefault(made, "");
  }
}
