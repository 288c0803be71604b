package shelfful.ui.worth;

import shelfful.purchase.PurchaseEffort;

/** How much is planned for one purchase: more takes longer and tells smaller gains from chance. */
public enum Thoroughness {
  QUICK(new PurchaseEffort(2, 10)),
  USUAL(PurchaseEffort.USUAL),
  THOROUGH(new PurchaseEffort(6, 60));

  private final PurchaseEffort effort;

  Thoroughness(PurchaseEffort effort) {
    this.effort = effort;
  }

  PurchaseEffort effort() {
    return effort;
  }
}
