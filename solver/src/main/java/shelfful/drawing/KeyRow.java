package shelfful.drawing;

/** One line of a layer's key. */
interface KeyRow {
  /** From one line to the next, in millimetres. */
  double PITCH = 3.9;

  /** More room over a heading. */
  double OVER_HEADING = 1.8;

  /** Draws the line on a base line that starts at a spot, within a width. */
  void draw(SheetDraft sheet, Spot at, double width);

  /** How it hangs together with the lines round it. */
  default Kind kind() {
    return Kind.PLAIN;
  }

  default double height() {
    return kind() == Kind.HEADING ? PITCH + OVER_HEADING : PITCH;
  }

  /** A line of a certain kind. */
  static KeyRow of(Kind kind, Drawing drawing) {
    return new KeyRow() {
      @Override
      public void draw(SheetDraft sheet, Spot at, double width) {
        drawing.draw(sheet, at, width);
      }

      @Override
      public Kind kind() {
        return kind;
      }
    };
  }

  /** What a line paints. */
  interface Drawing {
    void draw(SheetDraft sheet, Spot at, double width);
  }

  /** Kinds of lines. */
  enum Kind {
    /** Starts a group; never the last line of a column. */
    HEADING,
    /** Says more about the group; never the last line of a column. */
    SUBHEADING,
    /** One or several members of the group. */
    PLAIN
  }
}
