package felloe.cutting;

/** The figures and choices that a cut is asked for with, so that a fault can name one of them. */
public enum CutFigure {
  PROCESS("the process"),
  CUTTER("the cutter's diameter"),
  KERF("the kerf"),
  FLUTES("the cutter's edges"),
  FLUTE_LENGTH("the length of the cutter's edges"),
  SPEED("the spindle speed"),
  HIGHEST_SPEED("the spindle's highest speed"),
  FEED("the feed"),
  RAMP_FEED("the feed on the way down"),
  STEP_DOWN("the depth of a pass"),
  RAMP("the ramp"),
  LEAD("the lead"),
  THICKNESS("the stock's thickness"),
  BREAKTHROUGH("how far the last pass goes below the stock"),
  BED("what may be cut below the stock"),
  CLEARANCE("the travel height"),
  APPROACH("the approach height"),
  TABS("the tabs"),
  TAB_WIDTH("the tabs' width"),
  TAB_HEIGHT("the tabs' height"),
  DRILLS("the drills at hand"),
  LARGEST_DRILL("the largest drilled hole"),
  DRILL_SURFACE_SPEED("the surface speed of drills"),
  DRILL_FEED("the feed of drills"),
  V_ANGLE("the V tool's angle"),
  V_TIP("the width of the V tool's tip"),
  TRAVEL("the travel speed"),
  OWNER_CONSENTS("the owner's consent"),
  BLADE("the blade's width"),
  TURN("the least radius of the blade"),
  SHEET("the sheet"),
  SHEET_MARGIN("the sheet's margin"),
  SPACING("the room between parts"),
  KEEP_OUT("the places of clamps");

  private final String words;

  CutFigure(String words) {
    this.words = words;
  }

  /** In words, with the article: {@code the depth of a pass}. */
  public String words() {
    return words;
  }
}
