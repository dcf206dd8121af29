package felloe.load;

import felloe.geometry.Point;
import felloe.mesh.PlateMesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a load case does to a meshed plate.
 *
 * @param load which case
 * @param deflections of the nodes toward the driver, mm
 * @param slides how far the nodes move in the plane of the plate, mm
 * @param beside places where judging begins beside what is rigid or sharp, which no node need be at
 * @param strains of the middle plane at the nodes and then at the places beside, three each: x, y,
 *     whole shear angle
 * @param curvatures at the same, three each, 1/mm: -w,xx, -w,yy, -2 w,xy
 * @param uses of the material at the same, 1 at failure
 * @param atLoads how far each force moves its point along itself, mm
 * @param peakDeflection the largest movement of all nodes, mm
 * @param peakDeflectionAt where
 * @param worst the highest use and what it is
 * @param worstAt where
 * @param bolts forces of the bolts; empty when the plate is clamped
 * @param hub what the hub gives in all
 * @param shearShare energy of shear across the thickness over that of bending: about what part of
 *     the deflection it is
 * @param judged nodes and places whose use counts for the worst; others lie beside something rigid
 *     or sharp
 */
public record CaseField(
    LoadCase load,
    double[] deflections,
    double[] slides,
    List<Point> beside,
    double[] strains,
    double[] curvatures,
    double[] uses,
    List<Double> atLoads,
    double peakDeflection,
    Point peakDeflectionAt,
    Strength.Worst worst,
    Point worstAt,
    List<BoltForce> bolts,
    HubForce hub,
    double shearShare,
    BitSet judged) {

  /** Copies the lists, not the arrays. */
  public CaseField {
    beside = List.copyOf(beside);
    atLoads = List.copyOf(atLoads);
    bolts = List.copyOf(bolts);
  }

  /** The same under so many times the load: everything grows in step with it. */
  public CaseField times(double factor) {
    List<HandForce> forces =
        load.forces().stream()
            .map(f -> new HandForce(f.at(), f.x() * factor, f.y() * factor, f.z() * factor))
            .toList();
    return new CaseField(
        new LoadCase(load.name(), load.title(), forces, load.patch(), load.basis()),
        Arrays.stream(deflections).map(w -> w * factor).toArray(),
        Arrays.stream(slides).map(s -> s * factor).toArray(),
        beside,
        Arrays.stream(strains).map(e -> e * factor).toArray(),
        Arrays.stream(curvatures).map(k -> k * factor).toArray(),
        Arrays.stream(uses).map(u -> u * factor).toArray(),
        atLoads.stream().map(w -> w * factor).toList(),
        peakDeflection * factor,
        peakDeflectionAt,
        new Strength.Worst(
            worst.use() * factor,
            worst.z(),
            worst.ply(),
            worst.measure(),
            worst.stress() * factor,
            worst.strain() * factor),
        worstAt,
        bolts.stream()
            .map(b -> new BoltForce(b.label(), b.tension() * factor, b.shear() * factor))
            .toList(),
        new HubForce(
            hub.x() * factor,
            hub.y() * factor,
            hub.z() * factor,
            hub.tiltX() * factor,
            hub.tiltY() * factor,
            hub.torque() * factor),
        shearShare,
        judged);
  }

  /** Of two ways to be held the worse, case by case; the first where there is no other. */
  static List<CaseField> worse(List<CaseField> some, Optional<List<CaseField>> others) {
    return IntStream.range(0, some.size())
        .mapToObj(i -> others.map(o -> some.get(i).worse(o.get(i))).orElse(some.get(i)))
        .toList();
  }

  /**
   * The worse of two ways to be held, figure by figure: movement from the one that moves its hands
   * more, use of the material from the one that uses it more, and each screw's larger forces.
   */
  CaseField worse(CaseField other) {
    CaseField moves = atLoad() >= other.atLoad() ? this : other;
    CaseField used = worst.use() >= other.worst.use() ? this : other;
    List<Double> most = new ArrayList<>();
    for (int i = 0; i < atLoads.size(); i++) {
      most.add(Math.max(atLoads.get(i), other.atLoads.get(i)));
    }
    return new CaseField(
        load,
        moves.deflections,
        moves.slides,
        used.beside,
        used.strains,
        used.curvatures,
        used.uses,
        most,
        moves.peakDeflection,
        moves.peakDeflectionAt,
        used.worst,
        used.worstAt,
        BoltForce.larger(bolts, other.bolts),
        hub,
        moves.shearShare,
        used.judged);
  }

  /** Where it is told: a node, or beyond their number a place beside. */
  Point place(PlateMesh mesh, int number) {
    return place(mesh, beside, number);
  }

  static Point place(PlateMesh mesh, List<Point> beside, int number) {
    return number < mesh.nodes() ? mesh.point(number) : beside.get(number - mesh.nodes());
  }

  /** The largest movement at a force, mm. */
  public double atLoad() {
    return atLoads.stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }

  /**
   * What a bolt gives.
   *
   * @param label of its hole
   * @param tension N, with what the plate's prying on the hub's face adds
   * @param shear N
   */
  public record BoltForce(String label, double tension, double shear) {

    /** For each bolt of the first list the larger forces of both. */
    static List<BoltForce> larger(List<BoltForce> some, List<BoltForce> others) {
      List<BoltForce> all = new ArrayList<>();
      for (BoltForce one : some) {
        BoltForce larger = one;
        for (BoltForce other : others) {
          if (other.label.equals(one.label)) {
            larger =
                new BoltForce(
                    one.label,
                    Math.max(one.tension, other.tension),
                    Math.max(one.shear, other.shear));
          }
        }
        all.add(larger);
      }
      return all;
    }
  }

  /**
   * What the hub gives to the plate in all, about the hub axis: it balances the hands.
   *
   * @param x N
   * @param y N
   * @param z N
   * @param tiltX moment about x, N mm
   * @param tiltY moment about y, N mm
   * @param torque moment about z, N mm
   */
  public record HubForce(double x, double y, double z, double tiltX, double tiltY, double torque) {}
}
