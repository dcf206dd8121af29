package felloe.drawing;

/**
 * Line types after ISO 128, with the width and dashes that they are drawn with: the line group of
 * 0.35 mm (wide lines 0.35 mm, narrow lines 0.18 mm), so that a wide line can still be cut along
 * its middle.
 */
public enum LineType {
  /** Visible edges: the finish line. */
  EDGE(0.35),
  /** Dimension, leader and thin outlines. */
  THIN(0.18),
  /** Centre lines and pitch circles: long dash, dot. */
  CENTRE(0.18, 8, 1, 0.5, 1),
  /** The rough line: long dash, two dots. */
  ROUGH(0.25, 6, 1, 0.5, 1, 0.5, 1),
  /** Seams, glue lines and other lines that are not cut: dashes. */
  DASHED(0.18, 3, 1);

  private final double width;
  private final double[] dashes;

  LineType(double width, double... dashes) {
    this.width = width;
    this.dashes = dashes;
  }

  /** Width of the ink, mm. */
  public double width() {
    return width;
  }

  /** Lengths of dash and gap in turn, mm; empty for a continuous line. */
  public double[] dashes() {
    return dashes.clone();
  }
}
