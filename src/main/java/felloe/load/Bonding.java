package felloe.load;

import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.grips.GripBodies;
import felloe.grips.GripPlan;
import felloe.grips.GripSection;
import felloe.grips.PlacedGrip;
import felloe.plate.Face;
import felloe.plate.Grip;
import felloe.plate.Plate;
import felloe.plate.Printer;
import felloe.plate.Requested;
import java.util.ArrayList;
import java.util.List;

/**
 * What is glued to a plate: layers of it where they lie.
 *
 * @param patches each with its layers; none for a bare plate
 */
public record Bonding(List<Patch> patches) {

  /** Nothing is glued on. */
  public static final Bonding NONE = new Bonding(List.of());

  /** Poisson's ratio of wood across and of plastics, about: from memory; it hardly counts. */
  private static final double NU = 0.3;

  public Bonding {
    patches = List.copyOf(patches);
  }

  /**
   * Layers over a part of the plate.
   *
   * @param over what they cover
   * @param layers at most one on each face
   */
  public record Patch(List<Region> over, List<Layer> layers) {

    public Patch {
      over = List.copyOf(over);
      layers = List.copyOf(layers);
    }

    /** Whether they lie over a point. */
    public boolean covers(Point p) {
      return over.stream()
          .anyMatch(
              region ->
                  region.outer().contains(p)
                      && region.holes().stream().noneMatch(hole -> hole.contains(p)));
    }
  }

  /**
   * A layer, the same in all directions.
   *
   * @param face that it lies on
   * @param thickness mm
   * @param modulus Young's modulus, MPa
   */
  public record Layer(Face face, double thickness, double modulus) {

    /** Poisson's ratio. */
    double nu() {
      return NU;
    }
  }

  /** What is glued to a plate. */
  public static Bonding of(Plate plate) {
    if (plate.grips().stream().noneMatch(Grip::bonded)) {
      return NONE;
    }
    List<Patch> patches = new ArrayList<>();
    for (PlacedGrip grip : GripPlan.of(plate).grips()) {
      // Between two pieces the plate is alone.
      Printer printer = Requested.or(plate.making().printer(), Printer.USUAL);
      if (grip.grip().bonded() && GripBodies.pieces(grip, printer) == 1) {
        List<Layer> layers = new ArrayList<>();
        for (Face face : grip.grip().on()) {
          double thick = thickness(grip, face);
          layers.add(new Layer(face, thick, grip.grip().material().modulus()));
        }
        patches.add(new Patch(grip.footprint(), layers));
      }
    }
    return new Bonding(patches);
  }

  /** As thick as it is on the mean across its section, where it is thinnest. */
  private static double thickness(PlacedGrip grip, Face face) {
    double least = Double.POSITIVE_INFINITY;
    for (double s : grip.breaks()) {
      GripSection section = grip.section(s);
      double outer = section.round(face);
      double inner = section.innerRound(face);
      double lost = (1 - Math.PI / 4) * (outer * outer + inner * inner);
      least = Math.min(least, section.height(face) - lost / section.breadth());
    }
    return least;
  }
}
