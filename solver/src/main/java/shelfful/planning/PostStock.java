package shelfful.planning;

import java.util.ArrayList;
import java.util.List;

/** The posts that are still in the cupboard while a stack is being built, by kind. */
final class PostStock {
  private final int[] stock;

  PostStock(int[] stock) {
    this.stock = stock;
  }

  /**
   * Takes equal posts out of the stock, as many of the simplest making as there are; empty if too
   * few.
   */
  List<int[]> take(PostLength length, int wanted) {
    List<int[]> taken = new ArrayList<>();
    for (int[] making : length.makings()) {
      while (taken.size() < wanted && isThere(making)) {
        takeOut(making);
        taken.add(making);
      }
    }
    if (taken.size() == wanted) {
      return taken;
    }
    taken.forEach(this::putBack);
    return List.of();
  }

  private boolean isThere(int[] making) {
    if (making.length == 2 && making[0] == making[1]) {
      return stock[making[0]] >= 2;
    }
    for (int kind : making) {
      if (stock[kind] < 1) {
        return false;
      }
    }
    return true;
  }

  void putBack(int[] making) {
    for (int kind : making) {
      stock[kind]++;
    }
  }

  /** Takes one post out that must be there. */
  void takeOut(int[] making) {
    for (int kind : making) {
      stock[kind]--;
    }
  }
}
