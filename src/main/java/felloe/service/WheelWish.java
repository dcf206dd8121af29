package felloe.service;

/**
 * What a maker says of a wheel before there is a shape.
 *
 * @param name of the shape file
 * @param family of the outline
 * @param hub a known hub, or a hub file in the folder
 * @param material of the plate
 * @param width over all, mm; a floor where the rest takes more
 * @param hand that holds it
 * @param legs room between its lower edge and the driver's legs
 * @param use how hard it is used
 * @param holes how the hub's holes get their places
 */
public record WheelWish(
    String name,
    String family,
    String hub,
    String material,
    double width,
    Hand hand,
    Legs legs,
    Use use,
    Holes holes) {

  /** The narrowest that is asked for, mm: hand wheels of small vehicles, common practice. */
  public static final double NARROWEST = 260;

  public static final double WIDEST = 360;

  /**
   * A hand, by its breadth across the knuckles. 75 mm is half of British women, 95 mm 95 of 100
   * British men (City University of Hong Kong tables); 85 mm half of British men (published
   * anthropometry). A protective glove adds 25 mm (the same tables). Openings are never shorter
   * than the review asks for a gloved hand of 95 mm, since others hold the wheel too. Grips are 95
   * to 125 mm round (common practice), the wider the hand, the thicker.
   */
  public enum Hand {
    SMALL(75, 120, 52, 101),
    MEDIUM(85, 120, 52, 109),
    LARGE(95, 128, 56, 117);

    /** What a protective glove adds, mm (City University of Hong Kong tables). */
    public static final double GLOVE = 25;

    private final double breadth;
    private final double length;
    private final double depth;
    private final double girth;

    Hand(double breadth, double length, double depth, double girth) {
      this.breadth = breadth;
      this.length = length;
      this.depth = depth;
      this.girth = girth;
    }

    /** Across the knuckles, bare, up to so much, mm. */
    public double breadth() {
      return breadth;
    }

    /** Of an opening along the rim, mm. */
    public double length() {
      return length;
    }

    /** Of an opening behind the rim, mm. */
    public double depth() {
      return depth;
    }

    /** Once round rim and grips, mm. */
    public double girth() {
      return girth;
    }
  }

  /** The same of another stock. */
  WheelWish of(String other) {
    return new WheelWish(name, family, hub, other, width, hand, legs, use, holes);
  }

  /** Room for the legs. */
  public enum Legs {
    PLENTY,
    LITTLE
  }

  /** How hard it is used. */
  public enum Use {
    /** What is judged where nothing is said. */
    USUAL,
    /** Both hands pull and push with half as much again besides. */
    HARD
  }

  /** How the hub's holes get their places. */
  public enum Holes {
    /** Marked through the paper. */
    BY_HAND,
    /** By a router or the like. */
    BY_MACHINE
  }
}
