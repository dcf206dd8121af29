package felloe.job;

import felloe.drilling.HoleGroup;
import felloe.layup.LayupPlan;
import felloe.layup.ResinSystem;
import felloe.plate.MaterialKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The acts that a plate needs, each in its place, and no other: bought sheet is not laid up, holes
 * that a machine makes are not marked, nobody proves a mock-up.
 *
 * <p>Holes come before windows and outline, since a whole sheet can be clamped; the plate is
 * weighed and proved bare, before its grips are on, since what it should weigh and how far it
 * should bend is reckoned for the bare plate.
 *
 * @param tasks in order
 */
public record WorkOrder(List<Task> tasks) {

  /** Hours that a joint settles before it is tightened again: common practice, a day. */
  static final double SETTLING = 24;

  public WorkOrder {
    tasks = List.copyOf(tasks);
  }

  /** The order of a job. */
  public static WorkOrder of(Parts parts) {
    Maker maker = new Maker(parts);
    maker.print();
    maker.stock();
    maker.holes();
    maker.edges();
    maker.wheel();
    return new WorkOrder(maker.tasks);
  }

  /** Hours of work, as far as they are known. */
  public double work() {
    return tasks.stream().mapToDouble(task -> task.work().orElse(0)).sum();
  }

  /** Hours of waiting, as far as they are known. */
  public double waiting() {
    return tasks.stream().mapToDouble(task -> task.waiting().orElse(0)).sum();
  }

  /** Whether an act is in it. */
  public boolean has(Act act) {
    return tasks.stream().anyMatch(task -> task.act() == act);
  }

  /** Hours from the beginning of the first act to that of another, as far as they are known. */
  public double begins(Task task) {
    return tasks.subList(0, tasks.indexOf(task)).stream().mapToDouble(Task::hours).sum();
  }

  private static final class Maker {
    private final Parts parts;
    private final List<Task> tasks = new ArrayList<>();

    Maker(Parts parts) {
      this.parts = parts;
    }

    private void add(Act act) {
      tasks.add(Task.of(act));
    }

    private void addIf(boolean needed, Act act) {
      if (needed) {
        add(act);
      }
    }

    void print() {
      addIf(parts.templated(), Act.CHECK_PRINT);
      addIf(parts.templated(), Act.PRINT_TEMPLATE);
    }

    void stock() {
      Optional<LayupPlan> layup = parts.laidUp();
      layup.ifPresent(this::layUp);
      if (layup.isEmpty() && parts.ownLaminate()) {
        add(Act.LAY_UP);
        add(Act.CURE);
      }
      Task measured = Task.of(Act.MEASURE_STOCK);
      tasks.add(layup.map(p -> measured.working(p.choice().process().finish())).orElse(measured));
      boolean strips = layup.filter(p -> p.blank().strips().asked() > 0).isPresent();
      addIf(strips, Act.CUT_STRIPS);
      addIf(strips, Act.BREAK_STRIPS);
    }

    private void layUp(LayupPlan plan) {
      ResinSystem resin = plan.choice().resin();
      tasks.add(Task.of(Act.WAX_MOULD).working(plan.choice().process().ready()));
      tasks.add(Task.of(Act.CUT_CLOTH).working(plan.cutting()));
      tasks.add(Task.of(Act.LAY_UP).working(plan.pots().closed() / 60));
      tasks.add(Task.of(Act.CURE).waiting(resin.cure().at(plan.choice().temperature())));
      resin.postCure().ifPresent(post -> tasks.add(Task.of(Act.POST_CURE).waiting(post.hours())));
    }

    void holes() {
      boolean machine = parts.holesByMachine();
      List<HoleGroup> groups = parts.drilling().groups();
      // Holes that a machine made tell where the template belongs.
      if (machine) {
        tasks.add(machined());
      }
      addIf(parts.templated(), Act.STICK_TEMPLATE);
      if (!machine) {
        addIf(!groups.isEmpty(), Act.MARK_HOLES);
        groups.forEach(
            group ->
                tasks.add(
                    new Task(
                        Act.DRILL_HOLES,
                        Optional.of(group),
                        OptionalDouble.empty(),
                        OptionalDouble.empty())));
      }
      addIf(!parts.drilling().sizes().isEmpty(), Act.MEASURE_HOLES);
    }

    private Task machined() {
      Task task = Task.of(Act.MACHINE);
      return parts.cutting() instanceof Cutting.Machine way
          ? way.router().map(job -> task.working(job.total().minutes() / 60)).orElse(task)
          : task;
    }

    void edges() {
      if (parts.cutting() instanceof Cutting.Saw saw) {
        addIf(!saw.holes().isEmpty(), Act.START_HOLES);
        addIf(!parts.sawnWindows().isEmpty(), Act.SAW_WINDOWS);
        add(Act.SAW_OUTLINE);
      }
      add(Act.FINISH);
      addIf(!parts.plate().engravings().isEmpty(), Act.ENGRAVE);
      add(Act.BREAK_EDGES);
      MaterialKind kind = parts.plate().stock().material().kind();
      if (kind == MaterialKind.LAMINATE || kind == MaterialKind.WOOD) {
        Task seal = Task.of(Act.SEAL_EDGES);
        tasks.add(
            parts
                .laidUp()
                .map(p -> seal.waiting(p.choice().resin().cure().at(p.choice().temperature())))
                .orElse(seal));
      }
    }

    void wheel() {
      add(Act.WEIGH);
      addIf(parts.bolted(), Act.BOLT);
      boolean proved = parts.bolted() && parts.driven();
      if (proved) {
        tasks.add(Task.of(Act.SETTLE).waiting(SETTLING));
      }
      addIf(proved, Act.PROVE);
      addIf(parts.gripped(), Act.FIT_GRIPS);
      addIf(!parts.plate().bodies().isEmpty(), Act.FIT_BODIES);
      addIf(proved, Act.LOCK);
      add(Act.SIGN);
    }
  }
}
