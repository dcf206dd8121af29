package felloe.yaml;

import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;

/** Whether a value and all that lies in it has been good so far. */
final class Scope {

  private final Scope parent;
  private final Problems problems;
  private final boolean silent;
  private final List<Fields> opened = new ArrayList<>();
  private boolean failed;

  /**
   * @param parent the scope around this one, or null
   * @param silent true for what stands in for a missing value, whose problems are consequences
   */
  Scope(Scope parent, Problems problems, boolean silent) {
    this.parent = parent;
    this.problems = problems;
    this.silent = silent;
    this.failed = silent;
  }

  Scope inner() {
    return new Scope(this, problems, silent);
  }

  Scope silence() {
    return new Scope(this, problems, true);
  }

  void report(Problem problem) {
    for (Scope scope = this; scope != null; scope = scope.parent) {
      scope.failed = true;
    }
    if (!silent) {
      problems.add(problem);
    }
  }

  /** Remembers a key with hyphens where underscores are written now. */
  void oldSpelling(Place place, String key) {
    if (!silent && key.indexOf('-') >= 0) {
      problems.oldSpelling(place, key);
    }
  }

  /** Remembers a group that lies in this one, so that no unknown key in it goes unseen. */
  void enter(Fields fields) {
    if (parent != null) {
      parent.opened.add(fields);
    }
  }

  void closeAll() {
    opened.forEach(Fields::done);
    opened.clear();
  }

  boolean good() {
    return !failed;
  }
}
