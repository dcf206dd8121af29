package felloe.laminate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Plies on each other, from the back face to the driver's: ply 1 lies at z = -h/2.
 *
 * @param plies 1 to {@value #MOST}, from the back
 */
public record Stack(List<Ply> plies) {

  /** The most plies of a stack. */
  public static final int MOST = 1000;

  /**
   * @throws IllegalArgumentException when there is no ply, or more than {@value #MOST}
   */
  public Stack {
    plies = List.copyOf(plies);
    if (plies.isEmpty() || plies.size() > MOST) {
      throw new IllegalArgumentException(
          "plies must be from 1 to " + MOST + ", not " + plies.size());
    }
  }

  /**
   * A stack of plies of one material and thickness.
   *
   * @param angles degrees, from the back
   */
  public static Stack of(PlyMaterial material, double thickness, double... angles) {
    List<Ply> plies = new ArrayList<>();
    for (double angle : angles) {
      plies.add(new Ply(material, thickness, angle));
    }
    return new Stack(plies);
  }

  /** The stack, so many times on each other. */
  public Stack repeated(int times) {
    List<Ply> all = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      all.addAll(plies);
    }
    return new Stack(all);
  }

  /** The stack and, on top of it, its mirror image: twice the plies, symmetric. */
  public Stack mirrored() {
    List<Ply> all = new ArrayList<>(plies);
    List<Ply> back = new ArrayList<>(plies);
    Collections.reverse(back);
    all.addAll(back);
    return new Stack(all);
  }

  /** Thickness h of all plies, mm. */
  public double thickness() {
    double sum = 0;
    for (Ply ply : plies) {
      sum += ply.thickness();
    }
    return sum;
  }

  /** Heights of the faces between plies, mm: one more than plies, from -h/2 to h/2. */
  public double[] faces() {
    double[] z = new double[plies.size() + 1];
    double half = thickness() / 2;
    z[0] = -half;
    for (int i = 0; i < plies.size(); i++) {
      z[i + 1] = z[i] + plies.get(i).thickness();
    }
    z[plies.size()] = half;
    return z;
  }

  /** Whether it reads the same from both faces. */
  public boolean isSymmetric() {
    for (int i = 0, j = plies.size() - 1; i < j; i++, j--) {
      if (!plies.get(i).sameAs(plies.get(j))) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether it is balanced: pulled along x or y, it does not shear (A16 and A26 are nothing). Each
   * ply at an angle has its twin at the opposite angle; a cloth at 45 degrees is its own twin.
   */
  public boolean isBalanced() {
    PlaneStiffness a = Laminate.of(this).a();
    return a.m16() == 0 && a.m26() == 0;
  }
}
