package shelfful.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.List;

/** The most memory in use since a moment, garbage not yet collected included. */
final class Heap {
  private static final long MEGABYTE = 1 << 20;

  private Heap() {}

  /** Collects garbage and starts measuring anew. */
  static void forget() {
    System.gc();
    pools().forEach(MemoryPoolMXBean::resetPeakUsage);
  }

  /** The sum of the pools' peaks, which is never less than the true peak. */
  static long peakMegabytes() {
    return pools().stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() / MEGABYTE;
  }

  private static List<MemoryPoolMXBean> pools() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP)
        .toList();
  }
}
