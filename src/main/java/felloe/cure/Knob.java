package felloe.cure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/**
 * A figure of the shape file, or several that go together, that may mend a finding.
 *
 * @param keys of the figures
 * @param now the figure
 * @param slope by how much it changes for each unit that the finding's figure must gain; empty
 *     where there is one other value alone
 * @param grain it is written in multiples of this
 * @param change what to write for a figure
 */
record Knob(
    String keys,
    double now,
    OptionalDouble slope,
    double grain,
    DoubleFunction<Optional<ShapeChange>> change) {

  /** Nobody changes a figure by more than this share of it, or by {@link #SMALL} mm. */
  private static final double MOST = 0.6;

  private static final double SMALL = 20;

  /** Figures are compared in steps of this, so that rounding moves none by a grain. */
  private static final double ROUNDED = 1e-6;

  /** One other value. */
  static Knob choice(ShapeChange change) {
    List<String> keys =
        change.settings().stream()
            .map(s -> s.from().isEmpty() ? s.key() + ": " + s.to() : s.key())
            .toList();
    return new Knob(
        String.join(" and ", keys), 0, OptionalDouble.empty(), 1, to -> Optional.of(change));
  }

  /**
   * The figure that should give the finding what it lacks, on the far side of rounding.
   *
   * @param lacks in the finding's unit; below zero where the finding's figure is too large
   */
  double reaching(double lacks, double slopeNow) {
    double step = slopeNow * lacks;
    double to = (now + step) / grain;
    double whole = step > 0 ? Math.ceil(to - ROUNDED) : Math.floor(to + ROUNDED);
    return Math.rint(whole * grain / ROUNDED) * ROUNDED;
  }

  /** What to write; empty where nobody would, or where nothing changes. */
  Optional<ShapeChange> changed(double to) {
    if (slope.isEmpty()) {
      return change.apply(to);
    }
    boolean far = Math.abs(to - now) > Math.max(MOST * Math.abs(now), SMALL);
    return far || Math.abs(to - now) < ROUNDED ? Optional.empty() : change.apply(to);
  }
}
