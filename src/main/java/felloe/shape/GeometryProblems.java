package felloe.shape;

import felloe.geometry.GeometryException;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.KeySpelling;
import felloe.yaml.Problems;
import felloe.yaml.YamlValue;
import java.util.Optional;
import java.util.function.Supplier;

/** Turns what the geometry refuses into problems at the place in the shape file. */
final class GeometryProblems {

  private final YamlValue root;
  private final Problems problems;

  GeometryProblems(YamlValue root, Problems problems) {
    this.root = root;
    this.problems = problems;
  }

  /** Reports one problem. */
  void add(Problem problem) {
    problems.add(problem);
  }

  /** Reports one problem. */
  void add(Place place, String who, String value, String wanted, String cure) {
    add(new Problem(place, who, value, wanted, cure));
  }

  /** Makes something, or reports why it cannot be. */
  <T> Optional<T> guard(String path, Supplier<T> maker) {
    try {
      return Optional.of(maker.get());
    } catch (ShapeException e) {
      e.faults().forEach(fault -> add(path, fault));
    } catch (PathException e) {
      e.faults().forEach(fault -> add(path, fault));
    } catch (GeometryException e) {
      add(placeOf(path), path, "", "cannot be: " + sentence(e), "");
    }
    return Optional.empty();
  }

  /** The message of a geometry fault with its place on the plate. */
  static String sentence(GeometryException e) {
    return e.getMessage() + e.where().map(p -> " at " + p + " mm").orElse("");
  }

  private void add(String path, ShapeFault fault) {
    // Families name parameters as Java does; shape files join their words with underscores.
    String parameter = fault.parameter().replace("startRise", "start_rise");
    String who = parameter.isEmpty() ? path : path + "." + parameter;
    YamlValue blamed = nearestTo(who);
    String written = blamed.path().isEmpty() ? path : blamed.path();
    add(blamed.place(), written, fault.value(), fault.wanted(), fault.cure());
  }

  /** Path data may be folded over lines of the file, so its faults are told by character. */
  private void add(String path, PathFault fault) {
    YamlValue data = nearestTo(path);
    String text = data instanceof YamlValue.Scalar scalar ? scalar.text() : "";
    add(
        data.place(),
        path,
        read(text, fault),
        fault.wanted() + " (character " + (fault.offset() + 1) + " of the path data)",
        fault.cure());
  }

  /** What was read at a fault: the word there, or where that says nothing, what follows. */
  private static String read(String text, PathFault fault) {
    if (!fault.read().isEmpty() || fault.offset() >= text.length()) {
      return fault.read();
    }
    int end = Math.min(text.length(), fault.offset() + 24);
    return text.substring(fault.offset(), end).strip() + (end < text.length() ? "…" : "");
  }

  /** Another place as seen from one: only the line when both are in one file. */
  static String where(Place other, Place here) {
    boolean sameFile = other.line() > 0 && other.file().equals(here.file());
    return sameFile ? "line " + other.line() : other.toString();
  }

  /** Where the value at a path stands, or the nearest group round it that is written. */
  Place placeOf(String path) {
    return nearestTo(path).place();
  }

  private YamlValue nearestTo(String path) {
    YamlValue at = root;
    for (String step : path.split("\\.|\\[|\\]\\.?")) {
      if (step.isEmpty()) {
        continue;
      }
      Optional<YamlValue> next = child(at, step);
      if (next.isEmpty()) {
        break;
      }
      at = next.get();
    }
    return at;
  }

  private static Optional<YamlValue> child(YamlValue value, String step) {
    if (value instanceof YamlValue.Mapping mapping) {
      return Optional.ofNullable(mapping.entries().get(KeySpelling.in(mapping, step)))
          .map(YamlValue.Keyed::value);
    }
    if (value instanceof YamlValue.Sequence sequence && step.matches("\\d{1,6}")) {
      int index = Integer.parseInt(step);
      return index < sequence.items().size()
          ? Optional.of(sequence.items().get(index))
          : Optional.empty();
    }
    return Optional.empty();
  }
}
