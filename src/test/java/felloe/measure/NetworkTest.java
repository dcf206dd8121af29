package felloe.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.plate.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The adjustment against a worked network of surveying and against other methods. */
class NetworkTest {

  private static Reading distance(int from, int to, double reads, double sigma) {
    Place place = Place.of("net.yaml", 1, 1);
    return new Reading(
        from, to, Optional.empty(), ReadingKind.CENTRES, reads, Reading.COVERAGE * sigma, place);
  }

  private static Equations equations(int count, List<Reading> readings) {
    List<Integer> group = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      group.add(0);
    }
    return new Equations(new Unknowns(count, group, 1, List.of()), readings);
  }

  private static Adjustment adjust(Equations equations, List<Point> about) {
    double[] z = new double[equations.unknowns().all()];
    for (int i = 0; i < about.size(); i++) {
      z[2 * i] = about.get(i).x();
      z[2 * i + 1] = about.get(i).y();
    }
    return Adjuster.adjust(equations, new Layout.Free(equations.unknowns()), z);
  }

  /**
   * Three known stations and three distances of equal weight to a fourth: the trilateration that
   * Wolf and Ghilani, Adjustment Computations, work through (stations read again in a public course
   * text, distances from memory). The figures beside it were computed anew with a general solver
   * (SciPy). The known stations are held by distances that are a thousand times as good.
   */
  @Test
  void theTextbooksThreeDistancesMeetWhereAGeneralSolverHasThem() {
    List<Point> known =
        List.of(new Point(865.40, 4527.15), new Point(2432.55, 2047.25), new Point(2865.22, 27.15));
    double[] measured = {6049.00, 4736.83, 5446.49};
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < i; j++) {
        readings.add(distance(i, j, known.get(i).distance(known.get(j)), 1e-3));
      }
    }
    for (int i = 0; i < 3; i++) {
      readings.add(distance(i, 3, measured[i], 1));
    }
    List<Point> about = new ArrayList<>(known);
    about.add(new Point(6800, 3800));
    Adjustment net = adjust(equations(4, readings), about);
    double[] z = net.z();
    List<Point> found = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      found.add(new Point(z[2 * i], z[2 * i + 1]));
    }
    Alignment to = Alignment.of(found.subList(0, 3), known, false);
    Point u = to.first().of(found.get(3));
    assertEquals(6861.3168, u.x(), 1e-3);
    assertEquals(3727.8186, u.y(), 1e-3);
    double[] residuals = {0.03737, -0.07679, 0.04737};
    for (int i = 0; i < 3; i++) {
      assertEquals(residuals[i], net.residual(3 + i), 1e-4);
    }
    assertEquals(1, net.freedom());
    assertEquals(0.09766, Math.sqrt(net.cost() / net.freedom()), 1e-4);
  }

  @Test
  void redundancyNumbersAddUpToTheFreedom() {
    List<Point> holes = Calliper.ring(6, 70);
    List<Reading> readings = new Calliper(holes, 5.5, 0.1, null).allPairs().readings();
    List<Reading> centres = new ArrayList<>();
    for (Reading r : readings) {
      centres.add(distance(r.from(), r.to(), r.reads() - 5.5, 0.05));
    }
    Adjustment net = adjust(equations(6, centres), holes);
    double sum = 0;
    for (int k = 0; k < centres.size(); k++) {
      sum += net.redundancy(k);
    }
    assertEquals(15 - (2 * 6 - 3), net.freedom());
    assertEquals(net.freedom(), sum, 1e-9);
  }

  /** A square with both diagonals: each reading is checked by a part that geometry tells. */
  @Test
  void aBracedSquareHasItsClosedRedundancyNumbers() {
    List<Point> square =
        List.of(new Point(0, 0), new Point(1, 0), new Point(1, 1), new Point(0, 1));
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < i; j++) {
        readings.add(distance(i, j, square.get(i).distance(square.get(j)), 0.01));
      }
    }
    Adjustment net = adjust(equations(4, readings), square);
    // One condition: the sides' weights are 1 and the diagonals' -sqrt(2), squares sum to 8.
    for (int k = 0; k < readings.size(); k++) {
      boolean side = readings.get(k).reads() < 1.2;
      assertEquals(side ? 1.0 / 8 : 2.0 / 8, net.redundancy(k), 1e-9);
    }
  }

  @Test
  void innerConstraintsMakeTheSumOfTheSquaredErrorsLeast() {
    List<Point> holes = Calliper.ring(5, 70);
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      readings.add(distance(i, (i + 1) % 5, holes.get(i).distance(holes.get((i + 1) % 5)), 0.05));
      readings.add(distance(i, (i + 2) % 5, holes.get(i).distance(holes.get((i + 2) % 5)), 0.05));
    }
    Adjustment net = adjust(equations(5, readings), holes);
    double[][] motions = net.equations().unknowns().motions(net.z());
    double trace = 0;
    for (int i = 0; i < 10; i++) {
      trace += net.covariance(i, i);
      // No error shows along a shift or a turn of the whole.
      for (double[] motion : motions) {
        double along = 0;
        for (int j = 0; j < 10; j++) {
          along += net.covariance(i, j) * motion[j];
        }
        assertEquals(0, along, 1e-12);
      }
    }
    assertTrue(trace > 0);
    // By symmetry each hole is as sure as the others.
    for (int i = 1; i < 5; i++) {
      double here = net.covariance(2 * i, 2 * i) + net.covariance(2 * i + 1, 2 * i + 1);
      assertEquals(trace / 5, here, 1e-12);
    }
  }

  /** Pope's tau from Student's t: its square is at most the freedom. */
  @Test
  void tauOfOneIsBoundedByItsFreedom() {
    for (int freedom = 2; freedom < 40; freedom++) {
      double tau = OutlierDetection.tau(freedom, 0.05);
      assertTrue(tau < Math.sqrt(freedom) && tau > 1, freedom + " " + tau);
    }
    assertEquals(1.96, OutlierDetection.tau(100_000, 0.05), 0.001);
  }

  @Test
  void conicsMakeACompleteBipartiteNetworkLooseThoughItHasEnoughReadings() {
    List<Point> holes = Calliper.ring(6, 70);
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < 6; i += 2) {
      for (int j = 1; j < 6; j += 2) {
        readings.add(distance(i, j, holes.get(i).distance(holes.get(j)), 0.05));
      }
    }
    // Nine distances for nine unknowns, yet on a circle such a network can bend (Bolker and Roth,
    // 1980).
    Adjustment net = adjust(equations(6, readings), holes);
    assertTrue(!ObservabilityTest.all(net));
  }
}
