package felloe.out;

import java.util.Locale;

/**
 * What a line of a cut file is for: one layer each. The order is the order of cutting: what lies
 * inside goes first.
 */
public enum CutRole {
  /** Crosses at the centres of holes, for a drill or a centre punch; not cut. */
  CENTRES(5, "#0000ff"),
  /** Texts and marks that go shallow into the front face; never cut through. */
  ENGRAVING(2, "#a0a000"),
  /** Holes to drill in the waste, where a saw starts or turns. */
  WASTE_HOLES(4, "#008080"),
  /** Holes for the screws into the hub. */
  BOLT_HOLES(1, "#ff0000"),
  /** The centre opening. */
  BORE(1, "#ff0000"),
  /** Holes for the screws through a grip. */
  GRIP_HOLES(1, "#ff0000"),
  /** Any other round hole. */
  HOLES(1, "#ff0000"),
  /** Windows. */
  WINDOWS(3, "#008000"),
  /** The outer edge. */
  OUTLINE(7, "#000000"),
  /** Material that the cutter cannot reach and a file takes off; not cut. */
  LEFT_OVERS(6, "#ff00ff"),
  /** The edge of the sheet; not cut. */
  SHEET(8, "#808080");

  private final int colourNumber;
  private final String colour;

  CutRole(int colourNumber, String colour) {
    this.colourNumber = colourNumber;
    this.colour = colour;
  }

  /** Colour of the layer in a DXF file: 1 red, 3 green, 5 blue, 6 magenta, 7 black or white. */
  int colourNumber() {
    return colourNumber;
  }

  /** Colour of the group in an SVG file. */
  String colour() {
    return colour;
  }

  /** The role as the id of a group, such as {@code bolt-holes}. */
  String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
