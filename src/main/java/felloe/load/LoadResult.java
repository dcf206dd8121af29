package felloe.load;

import felloe.mesh.PlateMesh;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What a plate does under its load cases.
 *
 * @param section the plate through its thickness
 * @param support how it is held
 * @param mesh the mesh of the last reckoning
 * @param cases what each load case does, in their order
 * @param changes how much each case's figures changed from a coarser mesh, in the same order
 * @param unknowns that the last reckoning solved for
 * @param settled whether no figure is likely to be farther off than was asked
 */
public record LoadResult(
    PlateSection section,
    Support support,
    PlateMesh mesh,
    List<CaseField> cases,
    List<Change> changes,
    int unknowns,
    boolean settled) {

  /** Copies the lists. */
  public LoadResult {
    cases = List.copyOf(cases);
    changes = List.copyOf(changes);
  }

  /**
   * Changes from the mesh before to the last, as parts of the last figures.
   *
   * @param deflection of the deflection at the load: on the safe side where figures settle
   *     steadily, an estimate of how wrong it is
   * @param use of the highest use
   * @param left what an estimate leaves of that, since the mesh became much finer where it is
   *     highest
   */
  public record Change(double deflection, double use, double left) {}

  /** The largest change of a deflection; 0 after a single mesh. */
  public double deflectionChange() {
    return changes.stream().mapToDouble(Change::deflection).max().orElse(0);
  }

  /** The largest change of a highest use, of the cases that come near the worst; 0 as above. */
  public double useChange() {
    return most(Change::use);
  }

  /** The most that is left of such a change, by estimate; 0 as above. */
  public double useLeft() {
    return most(Change::left);
  }

  private double most(ToDoubleFunction<Change> figure) {
    double most = worst().worst().use();
    return IntStream.range(0, changes.size())
        .filter(i -> cases.get(i).worst().use() >= LoadStudy.MATTERS * most)
        .mapToDouble(i -> figure.applyAsDouble(changes.get(i)))
        .max()
        .orElse(0);
  }

  /** The case with the highest use. */
  public CaseField worst() {
    CaseField worst = cases.get(0);
    for (CaseField field : cases) {
      worst = field.worst().use() > worst.worst().use() ? field : worst;
    }
    return worst;
  }
}
