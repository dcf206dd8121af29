package felloe.laminate;

import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A stack on its own, as a file tells it.
 *
 * <pre>{@code
 * ply: {E1: 60 GPa, E2: 60 GPa, nu12: 0.03, G12: 2.7 GPa, thickness: 0.24}   # for all plies
 * stack:                     # ply 1, at the back face, first
 *   - {angle: 0}
 *   - {angle: 45}
 * repeat: 5                  # the list so many times on itself, before it is mirrored
 * symmetric: true            # then mirrored
 * load: {N: [1, 0, 0], M: [0, 0, 0]}
 * cooling: 60                # kelvin, from where the resin set
 * }</pre>
 *
 * @param stack the whole stack, repeated and mirrored
 * @param load forces and moments per width; a unit pull along x where the file gives none
 * @param cooling by how many kelvin it has cooled since the resin set; not negative
 */
public record StackFile(Stack stack, LaminateLoad load, OptionalDouble cooling) {

  private static final double GREATEST_LOAD = 1e6;

  /**
   * Reads one.
   *
   * @throws felloe.plate.BadInput with every problem of the file
   */
  public static StackFile read(YamlTree tree) {
    Problems problems = new Problems();
    Fields f = tree.fields(problems);
    PlyReader reader = PlyReader.of(f);
    List<Entry> items = f.list("stack").atLeast(1).atMost(Stack.MOST).entries();
    List<Ply> plies = new ArrayList<>();
    for (Entry item : items) {
      item.mapping().optional().flatMap(reader::ply).ifPresent(plies::add);
    }
    int repeat = f.integer("repeat").between(1, Stack.MOST).or(1);
    boolean symmetric = f.bool("symmetric").or(false);
    long count = (long) items.size() * repeat * (symmetric ? 2 : 1);
    if (count > Stack.MOST) {
      f.problem(
          "repeat",
          "makes " + count + " plies, which is more than " + Stack.MOST,
          "lower it or shorten the list");
    }
    Optional<LaminateLoad> load =
        f.has("load")
            ? f.mapping("load").optional().flatMap(StackFile::load)
            : Optional.of(LaminateLoad.UNIT);
    OptionalDouble cooling = f.number("cooling").between(0, 1000).optional();
    if (cooling.isPresent()
        && f.good()
        && plies.stream().anyMatch(ply -> ply.material().expansion().isEmpty())) {
      f.problem(
          "cooling",
          "needs the thermal expansion of every ply",
          "add 'expansion: {along1: 0.02e-6, along2: 22.5e-6}', say");
    }
    f.done();
    problems.throwIfAny();
    Stack listed = new Stack(plies).repeated(repeat);
    return new StackFile(
        symmetric ? listed.mirrored() : listed, load.orElse(LaminateLoad.UNIT), cooling);
  }

  private static Optional<LaminateLoad> load(Fields f) {
    double[] n = three(f, "N");
    double[] m = three(f, "M");
    return f.build(() -> new LaminateLoad(n[0], n[1], n[2], m[0], m[1], m[2]));
  }

  private static double[] three(Fields f, String key) {
    double[] three = new double[3];
    if (!f.has(key)) {
      return three;
    }
    List<Entry> items = new ArrayList<>(f.list(key).exactly(3).entries());
    for (int i = 0; i < items.size(); i++) {
      three[i] = items.get(i).number().between(-GREATEST_LOAD, GREATEST_LOAD).required();
    }
    return three;
  }
}
