package felloe.load;

import felloe.mesh.PlateMesh;
import java.util.List;

/**
 * What a plate does under its load cases.
 *
 * @param section the plate through its thickness
 * @param support how it is held
 * @param mesh the mesh of the last reckoning
 * @param cases what each load case does, in their order
 * @param changes how much each case's figures changed from a coarser mesh, in the same order
 * @param unknowns that the last reckoning solved for
 * @param settled whether no figure changed by more than was asked
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
   * Changes from the mesh before to the last, as parts of the last figures: an estimate, on the
   * safe side where the figures settle steadily, of how wrong they are.
   *
   * @param deflection of the deflection at the load
   * @param use of the highest use
   */
  public record Change(double deflection, double use) {}

  /** The largest change of a deflection; 0 after a single mesh. */
  public double deflectionChange() {
    return changes.stream().mapToDouble(Change::deflection).max().orElse(0);
  }

  /** The largest change of a highest use, of the cases that come near the worst; 0 as above. */
  public double useChange() {
    double most = worst().worst().use();
    double change = 0;
    for (int i = 0; i < changes.size(); i++) {
      boolean matters = cases.get(i).worst().use() >= LoadStudy.MATTERS * most;
      change = matters ? Math.max(change, changes.get(i).use()) : change;
    }
    return change;
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
