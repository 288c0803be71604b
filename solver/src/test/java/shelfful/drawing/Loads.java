package shelfful.drawing;

import java.util.List;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LeftOut;
import shelfful.measure.Point;
import shelfful.studio.Studio;
import shelfful.ware.Form;
import shelfful.ware.Glaze;

/** The loads the drawing tests draw. */
final class Loads {
  static final String HOSTILE =
      "<img src=x onerror=alert(1)>\u202Eeht\u0000\u0007\uD800 \uD83D\uDD25 漢字 & \"quotes\" ' ]]> "
          + "very long ".repeat(20);

  private Loads() {}

  /** Two layers, five pieces: small enough to read its golden. */
  static InspectedLoad small() {
    return new HandMadeLoad(Pottery.studio(), "drum")
        .batch("B1", "mug", "tenmoku", 4, "Vale")
        .batch("B2", "tray", "chun", 1, null)
        .batch("B3", "vase", "celadon", 2, null)
        .set("B1", 90, 100, 45, false)
        .set("B1", -80, 110, 200, false)
        .set("B2", 0, -60, 30, true)
        .layer("L1", "base", 1, 0, 69.8, "p51")
        .figures(8.4, 152.4, 2.2)
        .set("B1", -150, 20, 90, false)
        .set("B3", -110, -110)
        .layer("L2", "left", 1, 69.8, 69.8 + 152.4 + 25.4 + 19, "p152", "p25")
        .figures(31.7, 419.4, 1.1)
        .layer("L3", "right", 1, 69.8, 69.8 + 152.4 + 25.4 + 19, "p152", "p25")
        .waits(
            "B3",
            LeftOut.Reason.TOO_TALL,
            "It stands 210 mm high with 12.7 mm of headroom; the tallest layer left has 203.2 mm.",
            "Two more posts of 25.4 mm would make a layer tall enough.")
        .waits("B1", LeftOut.Reason.NO_ROOM, "The room went to other ware.", "Fire it next time.")
        .stamped();
  }

  /** A full round kiln: a full shelf with 16 pieces, four half shelves at heights of their own. */
  static InspectedLoad drum() {
    HandMadeLoad load =
        new HandMadeLoad(Pottery.studio(), "drum")
            .batch("B1", "mug", "tenmoku", 24, "Vale")
            .batch("B2", "mug", "celadon", 12, "Harbour Tea Room")
            .batch("B3", "bowl", "shino", 9, null)
            .batch("B4", "tray", "ash", 4, null)
            .batch("B5", "vase", "chun", 5, null)
            .batch("B6", "cup", "iron", 30, "Vale")
            .batch("B7", "jar", "matt", 4, null)
            .batch("B8", "cup", "nuka", 12, null)
            .batch("B9", "thimble", "ochre", 4, null);
    bowlsAndCups(load);
    load.layer("L1", "base", 1, 0, 69.8, "p51").figures(7.1, 203.2, 12.4);
    half(load, -1, "B1", "B6", "B2");
    load.layer("L2", "left", 1, 69.8, 292, "p203").figures(6.9, 152.4, 6.2);
    half(load, 1, "B2", "B5", "B1");
    load.layer("L3", "right", 1, 69.8, 266.6, "p152", "p25").figures(9.2, 203.2, 7.0);
    half(load, -1, "B8", "B7", "B6");
    load.layer("L4", "left", 2, 292, 463.4, "p152").figures(6.4, 197.4, 3.9);
    half(load, 1, "B6", "B1", "B2");
    load.layer("L5", "right", 2, 266.6, 488.8, "p203").figures(6.6, 172, 4.4);
    return load.waits(
            "B1",
            LeftOut.Reason.NO_ROOM,
            "It would fit alone, but the room went to others.",
            "Fire it next time, or give it a higher priority.")
        .waits(
            "B3",
            LeftOut.Reason.NO_ROOM,
            "It would fit alone, but the room went to others.",
            "Fire it next time.")
        .waits(
            "B4",
            LeftOut.Reason.TOO_WIDE,
            "At 220 mm it is wider than the 214 mm left between wall and posts.",
            "Use the full shelf.")
        .wish("L4", "3 pieces of Nuka would rather be at the top; layer L4 is in the middle.")
        .stamped();
  }

  private static void bowlsAndCups(HandMadeLoad load) {
    for (int i = 0; i < 4; i++) {
      double angle = Math.toRadians(45 + 90 * i);
      load.set("B3", 172 * Math.cos(angle), 172 * Math.sin(angle));
      load.set(
          "B6", 165 * Math.cos(Math.toRadians(90 * i)), 165 * Math.sin(Math.toRadians(90 * i)));
      load.set("B9", 84 * Math.cos(Math.toRadians(90 * i)), 84 * Math.sin(Math.toRadians(90 * i)));
    }
    load.set("B3", 0, 0);
  }

  private static void half(HandMadeLoad load, int side, String first, String second, String third) {
    double out = side > 0 ? 0 : 180;
    load.set(first, side * 75, 140, 90, first.equals("B5"));
    load.set(first, side * 170, 105, out, first.equals("B5"));
    load.set(second, side * 90, 20, 90 + side * 25, second.equals("B5"));
    load.set(third, side * 165, -105, out - 20, third.equals("B5"));
    load.set(third, side * 70, -130, 225, third.equals("B5"));
  }

  /** A front-loader with two columns of three shelves, every glaze in use. */
  static InspectedLoad cabinet() {
    Studio studio = Pottery.studio();
    HandMadeLoad load = new HandMadeLoad(studio, "cabinet");
    List<String> glazes = studio.glazes().stream().map(glaze -> glaze.id()).toList();
    for (int i = 0; i < glazes.size(); i++) {
      load.batch(
          "B" + (i + 1),
          i % 3 == 2 ? "tray" : "mug",
          glazes.get(i),
          30,
          i % 2 == 0 ? "Vale" : null);
    }
    double[] z = {50.8, 221.2, 442.4};
    String[] post = {"p25", "p152", "p203"};
    for (int level = 1; level <= 3; level++) {
      for (String column : List.of("A", "B")) {
        double middle = column.equals("A") ? -215 : 215;
        int turn = level + (column.equals("A") ? 0 : 3);
        String tray = List.of("B3", "B6", "B9").get(turn % 3);
        load.set(tray, middle - 60, 170, 0, tray.equals("B3"));
        for (int i = 0; i < 10; i++) {
          String mug = List.of("B1", "B2", "B4", "B5", "B7", "B8").get((i + turn) % 6);
          double x = i == 0 ? 110 : 115 * ((i - 1) % 3 - 1);
          double y = i == 0 ? 145 : 40 - 105 * ((i - 1) / 3);
          load.set(mug, middle + x, y, 45 + 90 * (i % 4), false);
        }
        double base = level == 1 ? 0 : z[level - 2];
        load.layer(
                (column.equals("A") ? "L" : "M") + level,
                column,
                level,
                base,
                z[level - 1],
                post[level - 1])
            .figures(6.4 + level, 152.4, 5.5);
      }
    }
    return load.stamped();
  }

  /** One round shelf with 60 small pieces of ten batches. */
  static InspectedLoad sixty() {
    HandMadeLoad load = new HandMadeLoad(Pottery.studio(), "drum");
    List<String> glazes = Pottery.glazes().stream().map(glaze -> glaze.id()).toList();
    for (int i = 0; i < 10; i++) {
      load.batch(
          "B" + (i + 1),
          i % 4 == 3 ? "thimble" : "cup",
          glazes.get(i % 9),
          6,
          i % 2 == 0 ? "Vale" : null);
    }
    List<Point> spots = honeycomb(58, 245);
    for (int i = 0; i < 60; i++) {
      Point at = spots.get(i % spots.size());
      load.set("B" + (i % 10 + 1), at.x().millimetres(), at.y().millimetres());
    }
    return load.layer("L1", "base", 1, 0, 69.8, "p51").figures(6.4, 591, 9).stamped();
  }

  /** Five hundred tiny pieces on one shelf, so that its key runs over several pages. */
  static InspectedLoad crowd() {
    HandMadeLoad load =
        new HandMadeLoad(Pottery.studio(), "drum").batch("B1", "thimble", "ash", 500, null);
    List<Point> spots = honeycomb(20, 250);
    for (int i = 0; i < 500; i++) {
      Point at = spots.get(i % spots.size());
      load.set("B1", at.x().millimetres(), at.y().millimetres());
    }
    return load.layer("L1", "base", 1, 0, 69.8, "p51").stamped();
  }

  /** Five hundred pieces on ten shelves of two columns. */
  static InspectedLoad fiveHundred() {
    HandMadeLoad load = new HandMadeLoad(Pottery.studio(), "cabinet");
    List<String> glazes = Pottery.glazes().stream().map(glaze -> glaze.id()).toList();
    for (int i = 0; i < 20; i++) {
      load.batch(
          "B" + (i + 1), i % 2 == 0 ? "cup" : "thimble", glazes.get(i % 9), 25, "Order " + i);
    }
    int set = 0;
    for (int level = 1; level <= 5; level++) {
      for (String column : List.of("A", "B")) {
        double middle = column.equals("A") ? -215 : 215;
        for (int i = 0; i < 50; i++) {
          load.set("B" + (set++ % 20 + 1), middle - 130 + 65 * (i % 5), 190 - 42 * (i / 5));
        }
        double base = level == 1 ? 0 : 120.6 * (level - 1);
        load.layer(column + level, column, level, base, 120.6 * level, "p102");
      }
    }
    return load.stamped();
  }

  private static List<Point> honeycomb(double pitch, double radius) {
    java.util.ArrayList<Point> spots = new java.util.ArrayList<>();
    int rows = (int) (radius / pitch) + 2;
    for (int row = rows; row >= -rows; row--) {
      for (int i = -rows; i <= rows; i++) {
        double x = (i + Math.floorMod(row, 2) / 2.0) * pitch;
        double y = row * pitch * Math.sqrt(3) / 2;
        if (Math.hypot(x, y) <= radius) {
          spots.add(Point.ofMillimetres(x, y));
        }
      }
    }
    return List.copyOf(spots);
  }

  /** Every name, id, order and sentence as bad as it gets. */
  static InspectedLoad hostile() {
    Glaze glaze = Pottery.glaze("g" + HOSTILE, HOSTILE, HOSTILE, HOSTILE, true);
    Form form =
        Pottery.form("f" + HOSTILE, HOSTILE, Pottery.round(60), Pottery.round(90), 90, List.of());
    Studio plain = Pottery.studio();
    Studio studio = Pottery.studio(HOSTILE, List.of(form), List.of(glaze), Pottery.drum(HOSTILE));
    String batch = "b" + HOSTILE;
    return new HandMadeLoad(studio, plain.kilns().get(0).id())
        .batch(batch, form.id(), glaze.id(), 4, HOSTILE)
        .set(batch, 0, 0, 0, true)
        .set(batch, 120, 60, 0, true)
        .layer("layer " + HOSTILE, "base", 1, 0, 70, "p51")
        .figures(5, 100, 3)
        .waits(batch, LeftOut.Reason.NO_ROOM, HOSTILE, HOSTILE)
        .wish("layer " + HOSTILE, HOSTILE)
        .stamped();
  }

  /**
   * Three layers over each other with the same ware in the same places, the third under the lid.
   *
   * @param off by which a piece of the second is moved, in millimetres
   */
  static InspectedLoad alike(double off) {
    HandMadeLoad load =
        new HandMadeLoad(Pottery.studio(), "cabinet").batch("B1", "mug", "ash", 6, null);
    for (int level = 1; level <= 3; level++) {
      double base = level == 1 ? 0 : 69.8 + 171.4 * (level - 2);
      load.set("B1", -115, 100, 45, false)
          .set("B1", -285 + (level == 2 ? off : 0), 20, 200, false)
          .layer("L" + level, "A", level, base, 69.8 + 171.4 * (level - 1), "p152")
          .figures(6.4, 152.4, 1.2);
    }
    return load.stamped();
  }

  /** Nothing goes in. */
  static InspectedLoad empty() {
    return new HandMadeLoad(Pottery.studio(), "drum")
        .batch("B1", "mug", "tenmoku", 3, null)
        .waits("B1", LeftOut.Reason.TOO_WIDE, "Too wide.", "Make it narrower.")
        .stamped();
  }

  /**
   * Many low layers in each of two columns, more than there is room for words beside the picture.
   */
  static InspectedLoad tower() {
    HandMadeLoad load =
        new HandMadeLoad(Pottery.studio(), "cabinet").batch("B1", "thimble", "ash", 40, null);
    for (int level = 1; level <= 18; level++) {
      for (String column : List.of("A", "B")) {
        load.set("B1", column.equals("A") ? -215 : 215, 0);
        double base = level == 1 ? 0 : 44.4 * (level - 1);
        load.layer(column + level, column, level, base, 44.4 * level, "p25");
      }
    }
    return load.stamped();
  }
}
