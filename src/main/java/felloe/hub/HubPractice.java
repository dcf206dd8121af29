package felloe.hub;

import felloe.plate.Basis;
import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import java.util.List;
import java.util.Optional;

/**
 * Figures that the hub fit needs and that no drawing states, from the resource {@code
 * hub-practice.yaml}.
 *
 * @param drilling ways to make the holes; the first is the usual one
 * @param turn how far the wheel may sit turned on the hub before it is worth a caution, degrees
 * @param centre how far off the hub's axis, mm
 * @param slot the longest shift that a slot may give, as a part of the hole's diameter
 * @param web least material between hub holes or to an edge, in hole diameters
 * @param basis where the four figures come from
 */
public record HubPractice(
    List<DrillingMethod> drilling,
    double turn,
    double centre,
    double slot,
    double web,
    Basis basis) {

  private static final String RESOURCE = "/felloe/hub-practice.yaml";

  public HubPractice {
    drilling = List.copyOf(drilling);
  }

  /** The program's own figures. Read anew at each call; keep it. */
  public static HubPractice standard() {
    Problems problems = new Problems();
    Fields top = BuiltIn.tree(RESOURCE).fields(problems);
    List<DrillingMethod> drilling = top.list("drilling").atLeast(1).each(HubPractice::method);
    Fields fit = top.group("fit");
    double turn = fit.angle("turn").positive().required();
    double centre = fit.length("centre").positive().required();
    double slot = fit.number("slot").positive().required();
    double web = fit.number("web").positive().required();
    Optional<Basis> basis = BasisEntry.read(fit.entry("basis"));
    top.done();
    problems.throwIfAny();
    return new HubPractice(drilling, turn, centre, slot, web, basis.orElseThrow());
  }

  private static Optional<DrillingMethod> method(Fields f) {
    String name = f.text("name").required();
    String title = f.text("title").required();
    double zone = f.length("zone").notNegative().required();
    Optional<Basis> basis = BasisEntry.read(f.entry("basis"));
    return f.build(() -> new DrillingMethod(name, title, zone, basis.orElseThrow()));
  }

  /** The way of drilling with a name, if there is one. */
  public Optional<DrillingMethod> drilling(String name) {
    return drilling.stream().filter(method -> method.name().equals(name)).findFirst();
  }
}
