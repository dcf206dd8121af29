package felloe.hub;

import felloe.plate.Basis;
import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The threads that the program knows, one resource each. Only the one asked for is read. */
public final class ScrewThreads {

  private static final String FOLDER = "/felloe/threads/";

  private ScrewThreads() {}

  /** The names, such as {@code M5} or {@code 10-32}, metric ones first, from small to large. */
  public static List<String> names() {
    return BuiltIn.lines(FOLDER + "index.txt");
  }

  /** The thread with a name, if it is one of {@link #names}. */
  public static Optional<ScrewThread> find(String name) {
    return names().contains(name) ? Optional.of(read(name)) : Optional.empty();
  }

  /** All of them, in the order of {@link #names}. */
  public static List<ScrewThread> all() {
    List<ScrewThread> all = new ArrayList<>();
    for (String name : names()) {
      all.add(read(name));
    }
    return List.copyOf(all);
  }

  private static ScrewThread read(String named) {
    String file = named.toLowerCase(Locale.ROOT).replace('/', '-');
    Problems problems = new Problems();
    Fields f = BuiltIn.tree(FOLDER + file + ".yaml").fields(problems);
    String name = f.text("name").required();
    double diameter = f.length("diameter").positive().required();
    double pitch = f.length("pitch").positive().required();
    double fine = f.length("fine").moreThan(diameter).required();
    double medium = f.length("medium").moreThan(fine).required();
    double coarse = f.length("coarse").moreThan(medium).required();
    Optional<Basis> basis = BasisEntry.read(f.entry("basis"));
    f.done();
    problems.throwIfAny();
    return new ScrewThread(name, diameter, pitch, fine, medium, coarse, basis.orElseThrow());
  }
}
