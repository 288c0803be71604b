package shelfful.drawing;

import java.util.List;
import shelfful.measure.Angle;
import shelfful.ware.Outline;

/**
 * The words on one piece: its number, its glaze's letter beside it and its form's name under both,
 * as large as the piece allows. Where the name does not fit it is left to the key, then the letter.
 */
final class PieceLabel {
  /** Sizes to try, the largest first; numbers are read at arm's length, so they come first. */
  private static final List<Sizes> SIZES =
      List.of(
          new Sizes(TextStyle.HEAD, TextStyle.BODY),
          new Sizes(TextStyle.SECTION, TextStyle.SMALL),
          new Sizes(TextStyle.SMALL_STRONG, TextStyle.SMALL));

  private static final double SPACE = 1;
  private static final double PADDING = 0.5;
  private static final double ASCENT = 0.76;
  private static final double DESCENT = 0.24;

  private final SheetDraft sheet;
  private final Spot centre;
  private final Outline body;
  private final Angle turn;
  private final Shapes shapes;
  private final Longest longest;

  PieceLabel(SheetDraft sheet, PlanView view, SetPiece piece, Longest longest) {
    this.sheet = sheet;
    this.longest = longest;
    this.shapes = new Shapes(view);
    this.centre = view.at(piece.placement().at());
    this.body = piece.body();
    this.turn = piece.placement().turn();
  }

  /** The widest words that any piece of the layer carries. */
  record Longest(String number, String letter) {}

  private record Sizes(TextStyle number, TextStyle words) {
    double topWidth(String number, String letter) {
      double width = number().wording().width(number);
      return letter.isEmpty() ? width : width + SPACE + words().wording().width(letter);
    }
  }

  void draw(int order, String letter, String name) {
    String number = Integer.toString(order);
    if (triedWithName(number, letter, name)
        || triedOnOneLine(number, letter)
        || triedOnOneLine(number, "")) {
      return;
    }
    Sizes smallest = SIZES.get(SIZES.size() - 1);
    Spot base = base(smallest.number(), 0);
    if (sheet.isFree(around(base, smallest.topWidth(number, ""), smallest.number()))) {
      top(base, number, "", smallest);
    }
  }

  private boolean triedWithName(String number, String letter, String name) {
    for (Sizes sizes : SIZES) {
      String words = sizes.words().wording().clean(name);
      double topWidth = sizes.topWidth(number, letter);
      double nameWidth = sizes.words().wording().width(words);
      double topHeight = sizes.number().pitch() * 0.85;
      double height = topHeight + sizes.words().pitch() * 0.85;
      double widest = Math.max(sizes.topWidth(longest.number(), longest.letter()), nameWidth);
      if (!shapes.holds(body, turn, widest + PADDING, height)) {
        continue;
      }
      Spot upper = base(sizes.number(), -height / 2 + topHeight / 2);
      Spot lower = base(sizes.words(), height / 2 - (height - topHeight) / 2);
      Box upperBox = around(upper, topWidth, sizes.number());
      Box lowerBox = around(lower, nameWidth, sizes.words());
      if (sheet.isFree(upperBox) && sheet.isFree(lowerBox)) {
        patch(upperBox);
        patch(lowerBox);
        top(upper, number, letter, sizes);
        sheet.text(lower, words, sizes.words(), Anchor.MIDDLE, nameWidth + 1);
        return true;
      }
    }
    return false;
  }

  private boolean triedOnOneLine(String number, String letter) {
    for (Sizes sizes : SIZES) {
      double room = sizes.topWidth(longest.number(), letter.isEmpty() ? "" : longest.letter());
      Spot base = base(sizes.number(), 0);
      Box box = around(base, sizes.topWidth(number, letter), sizes.number());
      if (shapes.holds(body, turn, room + PADDING, box.height() * 0.8) && sheet.isFree(box)) {
        patch(box);
        top(base, number, letter, sizes);
        return true;
      }
    }
    return false;
  }

  private void top(Spot base, String number, String letter, Sizes sizes) {
    Spot left = base.plus(-sizes.topWidth(number, letter) / 2, 0);
    double end = sheet.text(left, number, sizes.number());
    if (!letter.isEmpty()) {
      sheet.text(new Spot(end + SPACE, left.y()), letter, sizes.words());
    }
  }

  /**
   * The base line that sets a line of figures and capitals in the middle of a height over or under
   * the axis.
   */
  private Spot base(TextStyle style, double down) {
    double capitals = 0.73 * style.size() * Typeface.MILLIMETRES_PER_POINT;
    return centre.plus(0, down + capitals / 2);
  }

  private static Box around(Spot base, double width, TextStyle style) {
    double unit = style.size() * Typeface.MILLIMETRES_PER_POINT;
    return new Box(
        base.x() - width / 2,
        base.y() - ASCENT * unit,
        base.x() + width / 2,
        base.y() + DESCENT * unit);
  }

  /** White under words, so that hatching does not run through them. */
  private void patch(Box words) {
    Box wider =
        new Box(words.left() - PADDING, words.top() - 0.1, words.right() + PADDING, words.bottom());
    sheet.box(wider, Look.filled(Ink.WHITE));
  }
}
