package felloe.job;

import felloe.geometry.Tolerances;
import felloe.layup.Supply;
import felloe.plate.MaterialKind;
import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import java.util.List;
import java.util.Optional;

/**
 * Something that a job takes beside stock, screws and drills, from the resource {@code
 * job/consumables.yaml}.
 *
 * @param what its name
 * @param act that it is for
 * @param kinds of stock that it is for; empty for all
 * @param per what it grows with
 * @param amount for each of these
 * @param unit of the amount; empty for pieces
 * @param step the amount is a whole number of these
 * @param spent whether it is used up
 * @param basis where the figure comes from
 */
record Consumable(
    String what,
    Act act,
    List<MaterialKind> kinds,
    Per per,
    double amount,
    String unit,
    double step,
    boolean spent,
    String basis) {

  private static final String RESOURCE = "/felloe/job/consumables.yaml";

  Consumable {
    kinds = List.copyOf(kinds);
  }

  /** What an amount grows with. */
  enum Per {
    /** Nothing: once for a job. */
    JOB,
    /** A square metre of the box round the plate. */
    FACE,
    /** A metre of the edges of outline and windows. */
    EDGE,
    /** A hole. */
    HOLE
  }

  /**
   * The program's own rows, in order. Read anew at each call; keep them.
   *
   * @throws felloe.plate.BadInput when they are damaged
   */
  static List<Consumable> standard() {
    Problems problems = new Problems();
    Fields top = BuiltIn.tree(RESOURCE).fields(problems);
    top.integer("felloe-job").between(1, 1).required();
    List<Consumable> all = top.list("consumables").atLeast(1).each(Consumable::read);
    top.done();
    problems.throwIfAny();
    return all;
  }

  private static Optional<Consumable> read(Fields f) {
    String what = f.text("what").required();
    Act act = f.oneOf("act", Act.class).required();
    List<MaterialKind> kinds =
        f.list("kinds").entries().stream()
            .map(entry -> entry.oneOf(MaterialKind.class).required())
            .toList();
    Per per = f.oneOf("for", Per.class).required();
    double amount = f.number("amount").positive().required();
    String unit = f.text("unit").or("");
    double step = f.number("step").positive().or(1);
    boolean spent = f.bool("spent").or(true);
    String basis = f.text("basis").required();
    return f.build(() -> new Consumable(what, act, kinds, per, amount, unit, step, spent, basis));
  }

  /** Whether a job of a kind of stock that does its act takes it. */
  boolean suits(WorkOrder order, MaterialKind kind) {
    return order.has(act) && (kinds.isEmpty() || kinds.contains(kind));
  }

  /**
   * What a job takes of it.
   *
   * @param size how many square metres, metres or holes there are; 1 for a job
   */
  Supply of(double size) {
    return new Supply(what, step * Tolerances.up(amount * size / step), unit, "", spent);
  }
}
