package felloe.plate;

import felloe.geometry.Numbers;

/**
 * The printer that the maker has: what its bed takes, and how it prints.
 *
 * @param width of the bed in its x, mm
 * @param depth of the bed in its y, mm
 * @param height that it prints, mm
 * @param nozzle width of the nozzle, and so of one line of plastic, mm
 * @param clearance gap that two printed parts need between them on each side to slide together, mm
 */
public record Printer(double width, double depth, double height, double nozzle, double clearance) {

  /**
   * What is taken where the shape file says nothing: the bed of a small printer for the desk, its
   * usual nozzle, and a gap with which parts slide without play to be felt; common practice.
   */
  public static final Printer USUAL = new Printer(220, 220, 250, 0.4, 0.2);

  /**
   * Refuses sizes that are not above zero and a clearance below zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Printer {
    Numbers.positive("width", width);
    Numbers.positive("depth", depth);
    Numbers.positive("height", height);
    Numbers.positive("nozzle", nozzle);
    Numbers.notNegative("clearance", clearance);
  }

  /** The thinnest wall that holds, mm: two lines of the nozzle side by side; common practice. */
  public double thinnestWall() {
    return 2 * nozzle;
  }
}
