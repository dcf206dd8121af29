package felloe.hub;

import felloe.yaml.Fields;
import felloe.yaml.Problems;
import java.util.List;
import java.util.Optional;

/** The threads that the program knows, from its resource {@code threads.yaml}. */
public final class ScrewThreads {

  private static final String RESOURCE = "/felloe/threads.yaml";

  private ScrewThreads() {}

  /** All of them, in the order of the resource. Read anew at each call; keep it. */
  public static List<ScrewThread> all() {
    Problems problems = new Problems();
    Fields top = Resources.tree(RESOURCE).fields(problems);
    List<ScrewThread> threads = top.list("threads").atLeast(1).each(ScrewThreads::thread);
    top.done();
    problems.throwIfAny();
    return List.copyOf(threads);
  }

  private static Optional<ScrewThread> thread(Fields f) {
    String name = f.text("name").required();
    double diameter = f.length("diameter").positive().required();
    double pitch = f.length("pitch").positive().required();
    double fine = f.length("fine").moreThan(diameter).required();
    double medium = f.length("medium").moreThan(fine).required();
    double coarse = f.length("coarse").moreThan(medium).required();
    Basis basis = Basis.read(f.entry("basis")).orElse(null);
    if (basis == null && f.good()) {
      f.problem("has no basis", "add 'basis:' with " + Basis.WANTED);
    }
    return f.build(() -> new ScrewThread(name, diameter, pitch, fine, medium, coarse, basis));
  }
}
