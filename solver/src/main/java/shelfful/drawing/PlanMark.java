package shelfful.drawing;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import shelfful.load.Load;

/**
 * A short name made from what a plan says (SHA-256 of firing, list, layers, posts and what waits):
 * the same plan has the same mark on every computer, and a plan of which anything was moved has
 * another, so that a sheet from an older plan is noticed.
 *
 * @param hash as 64 digits of base 16
 */
public record PlanMark(String hash) {
  /** Without letters and digits that are taken for each other. */
  private static final String LETTERS = "23456789ABCDEFGHJKMNPQRSTVWXYZ";

  private static final int SHORT = 6;

  /** The mark of a load. */
  public static PlanMark of(Load load) {
    String told =
        load.request().firing()
            + "\n"
            + load.request().batches()
            + "\n"
            + load.columnPlanId()
            + "\n"
            + load.layers()
            + "\n"
            + load.posts()
            + "\n"
            + load.leftOut();
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] bytes = digest.digest(told.getBytes(StandardCharsets.UTF_8));
      return new PlanMark(HexFormat.of().formatHex(bytes));
    } catch (NoSuchAlgorithmException lacking) {
      throw new IllegalStateException("Every Java has SHA-256", lacking);
    }
  }

  /** Six letters and digits for people: {@code 7K3-QM2}. One in 700 million. */
  public String shortForm() {
    long number = Long.parseUnsignedLong(hash.substring(0, 15), 16);
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < SHORT; i++) {
      letters.append(LETTERS.charAt((int) (number % LETTERS.length())));
      number /= LETTERS.length();
    }
    return letters.insert(SHORT / 2, '-').toString();
  }
}
