package shelfful.choice;

/** What one piece more of each kind is worth, two more and so on, while so many are used. */
final class WorthOfMore {
  private final KindWorth worth;
  private final int[] used;
  private final int stride;

  /** For kind k and n more, cell k * stride + n; n is never over the number there are. */
  final double[] cells;

  /**
   * Ready to add up.
   *
   * @param used how many of each kind are used at first
   */
  WorthOfMore(KindWorth worth, int[] used) {
    this.worth = worth;
    this.used = used.clone();
    int most = 0;
    for (int kind = 0; kind < used.length; kind++) {
      most = Math.max(most, worth.most(kind));
    }
    this.stride = most + 1;
    this.cells = new double[used.length * stride];
    for (int kind = 0; kind < used.length; kind++) {
      reckon(kind);
    }
  }

  /** What all that is used is worth. */
  double ofUsed() {
    return worth.of(used);
  }

  double of(KnownLayer layer) {
    int[] kinds = layer.kinds();
    int[] each = layer.each();
    double sum = 0;
    for (int i = 0; i < kinds.length; i++) {
      sum += cells[cell(kinds[i], each[i])];
    }
    return sum;
  }

  /** Writes the cells that a content adds up; returns where they end. */
  int cells(KnownLayer layer, int[] into, int from) {
    int[] kinds = layer.kinds();
    int[] each = layer.each();
    for (int i = 0; i < kinds.length; i++) {
      into[from + i] = cell(kinds[i], each[i]);
    }
    return from + kinds.length;
  }

  /** Uses what a content holds, so many times; negative to give it back. */
  void use(KnownLayer layer, int times) {
    layer.addTo(used, times);
    for (int kind : layer.kinds()) {
      reckon(kind);
    }
  }

  private int cell(int kind, int count) {
    return kind * stride + Math.min(count, worth.most(kind));
  }

  private void reckon(int kind) {
    double had = worth.of(kind, used[kind]);
    int most = worth.most(kind);
    for (int count = 1; count <= most; count++) {
      cells[kind * stride + count] = worth.of(kind, used[kind] + count) - had;
    }
  }
}
