package felloe.out;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * An interpreter of RS274/NGC code written from NISTIR 6556 (Kramer, Proctor, Messina, 2000),
 * tables 4, 5 and 7 and section 3.5, for a three-axis machine with one work zero; it shares nothing
 * with the writer. Stricter than the report in one thing: nothing may move before plane, unit,
 * distance mode and feed mode are stated.
 */
public final class Rs274Interpreter {

  /** Section 3.5.3.2: the two radii of an arc may differ by this, mm (0.0002 in). */
  private static final double RADII_MM = 0.002;

  private static final double RADII_INCH = 0.0002 * 25.4;

  /** What G83 backs off before it feeds again, mm (0.010 in, from memory). */
  private static final double BACK_OFF = 0.254;

  /** All that the program made the machine do. */
  public final List<Rs274Step> steps = new ArrayList<>();

  /** Comments in order. */
  public final List<String> comments = new ArrayList<>();

  /** Time spent in dwells, s. */
  public double dwell;

  private final Rs274Beyond beyond;
  private final double[] at;
  private final Set<String> stated = new TreeSet<>();
  private String motion = "G80";
  private boolean inches;
  private boolean incremental;
  private boolean backToOld = true;
  private double feed;
  private double setSpeed;
  private boolean spinning;
  private boolean coolant;
  private boolean ended;
  private boolean spunAtStop;
  private int pauses;
  private int line;
  private double stickyZ = Double.NaN;
  private double stickyR = Double.NaN;
  private double stickyQ = Double.NaN;
  private double oldZ;

  /**
   * A machine before a program.
   *
   * @param beyond what it knows beyond the report
   * @param start where the tool stands {x, y, z}
   */
  public Rs274Interpreter(Rs274Beyond beyond, double... start) {
    this.beyond = beyond;
    this.at = start.clone();
  }

  /** Whether the program ended by M2 or M30. */
  public boolean ended() {
    return ended;
  }

  /** Whether the spindle turned when the program paused or ended. */
  public boolean spunAtStop() {
    return spunAtStop;
  }

  /** Whether the spindle turns. */
  public boolean spinning() {
    return spinning;
  }

  /** Whether coolant runs. */
  public boolean coolant() {
    return coolant;
  }

  /** Where the tool is. */
  public double[] at() {
    return at.clone();
  }

  /** How often the program paused. */
  public int pauses() {
    return pauses;
  }

  /**
   * Runs a program.
   *
   * @throws Rs274Exception with the line, where the report calls something an error
   */
  public Rs274Interpreter run(byte[] program) {
    String text = new String(program, StandardCharsets.ISO_8859_1);
    String[] lines = text.split("\r?\n", -1);
    boolean framed = lines[0].strip().equals("%");
    boolean closed = false;
    for (int i = framed ? 1 : 0; i < lines.length && !closed; i++) {
      line = i + 1;
      closed = framed && lines[i].strip().equals("%");
      if (!closed && !ended) {
        guarded(lines[i]);
      } else if (!closed && !lines[i].isBlank()) {
        throw new Rs274Exception("line " + line + ": code after the end");
      }
    }
    if (framed && !closed) {
      throw new Rs274Exception("no second percent sign");
    }
    if (!framed && !ended) {
      throw new Rs274Exception("neither percent signs nor M2 nor M30");
    }
    return this;
  }

  private void guarded(String text) {
    try {
      execute(new Rs274Block(text, beyond));
    } catch (Rs274Exception error) {
      throw new Rs274Exception("line " + line + ": " + error.getMessage() + ": " + text.strip());
    }
  }

  /** Table 8: the order in which the words of a line take effect. */
  private void execute(Rs274Block block) {
    comments.addAll(block.comments);
    Set<Character> unused = new TreeSet<>(block.words.keySet());
    block.code(5).ifPresent(this::feedMode);
    block.code(6).ifPresent(code -> inches = code.equals("G20"));
    if (unused.remove('F')) {
      feed = block.need('F') * unit();
      if (feed < 0) {
        throw new Rs274Exception("negative feed");
      }
    }
    if (unused.remove('S')) {
      setSpeed = block.need('S');
      if (setSpeed < 0) {
        throw new Rs274Exception("negative speed");
      }
    }
    block.code(207).ifPresent(code -> spinning = !code.equals("M5"));
    if (block.has("M4")) {
      throw new Rs274Exception("the spindle would turn backwards");
    }
    block.code(208).ifPresent(code -> coolant = !code.equals("M9"));
    if (block.has("G4")) {
      double p = block.need('P') / (beyond.milliseconds() ? 1000 : 1);
      unused.remove('P');
      if (p < 0) {
        throw new Rs274Exception("negative dwell");
      }
      dwell += p;
    }
    block.code(2).ifPresent(this::plane);
    block.code(3).ifPresent(code -> incremental = code.equals("G91"));
    block.code(10).ifPresent(code -> backToOld = code.equals("G98"));
    for (int group : new int[] {2, 3, 5, 6}) {
      block.code(group).ifPresent(code -> stated.add("" + group));
    }
    move(block, unused);
    if (!unused.isEmpty()) {
      throw new Rs274Exception("words without a use: " + unused);
    }
    block.code(204).ifPresent(this::stop);
  }

  private void feedMode(String code) {
    if (code.equals("G93")) {
      throw new Rs274Exception("inverse time feed is not on this machine");
    }
  }

  private void plane(String code) {
    if (!code.equals("G17")) {
      throw new Rs274Exception("only the XY plane is on this machine");
    }
  }

  private double unit() {
    return inches ? 25.4 : 1;
  }

  private void stop(String code) {
    spunAtStop |= spinning;
    if (code.equals("M0") || code.equals("M1")) {
      pauses++;
    } else {
      ended = true;
      spinning = false;
      coolant = false;
    }
  }

  private void move(Rs274Block block, Set<Character> unused) {
    String before = motion;
    boolean named = block.code(1).isPresent();
    block.code(1).ifPresent(code -> motion = code);
    if (!block.hasAny("XYZ")) {
      if (named && !motion.equals("G80")) {
        throw new Rs274Exception("no axis words with " + motion);
      }
      return;
    }
    if (motion.equals("G80")) {
      throw new Rs274Exception("axis words while no motion is in force");
    }
    if (stated.size() < 4) {
      throw new Rs274Exception("moves before plane, unit, distance and feed mode are stated");
    }
    if (!motion.equals("G0") && feed == 0) {
      throw new Rs274Exception(motion + " with a feed of zero");
    }
    unused.removeAll(Set.of('X', 'Y', 'Z'));
    switch (motion) {
      case "G0", "G1" -> go(motion.equals("G0"), false, target(block));
      case "G2", "G3" -> arc(block, unused);
      default -> cycle(block, unused, before.equals(motion));
    }
  }

  private double[] target(Rs274Block block) {
    double[] to = at.clone();
    char[] axes = {'X', 'Y', 'Z'};
    for (int i = 0; i < 3; i++) {
      if (block.words.containsKey(axes[i])) {
        to[i] = block.need(axes[i]) * unit() + (incremental ? at[i] : 0);
      }
    }
    return to;
  }

  private void go(boolean rapid, boolean cycle, double... to) {
    add(rapid, cycle, to, null, 0);
  }

  private void add(boolean rapid, boolean cycle, double[] to, double[] centre, double sweep) {
    double speed = spinning ? setSpeed : 0;
    steps.add(
        new Rs274Step(
            line, rapid, cycle, at.clone(), to.clone(), centre, sweep, feed, speed, pauses));
    System.arraycopy(to, 0, at, 0, 3);
  }

  private void arc(Rs274Block block, Set<Character> unused) {
    if (!block.hasAny("XY")) {
      throw new Rs274Exception("X and Y both missing");
    }
    double[] to = target(block);
    double[] centre;
    boolean clockwise = motion.equals("G2");
    if (unused.remove('R')) {
      centre = byRadius(to, block.need('R') * unit(), clockwise);
    } else {
      if (!block.hasAny("IJ")) {
        throw new Rs274Exception("I and J both missing");
      }
      unused.removeAll(Set.of('I', 'J'));
      centre =
          new double[] {at[0] + block.get('I', 0) * unit(), at[1] + block.get('J', 0) * unit()};
      double started = Math.hypot(at[0] - centre[0], at[1] - centre[1]);
      double ended = Math.hypot(to[0] - centre[0], to[1] - centre[1]);
      if (Math.abs(started - ended) > (inches ? RADII_INCH : RADII_MM)) {
        throw new Rs274Exception("radii " + started + " and " + ended + " differ");
      }
      if (started == 0 || ended == 0) {
        throw new Rs274Exception("an arc without a radius");
      }
    }
    add(false, false, to, centre, sweep(to, centre, clockwise));
  }

  private double sweep(double[] to, double[] centre, boolean clockwise) {
    double a = Math.atan2(at[1] - centre[1], at[0] - centre[0]);
    double b = Math.atan2(to[1] - centre[1], to[0] - centre[0]);
    double turn = clockwise ? a - b : b - a;
    // The end at the start is a whole circle.
    boolean same = at[0] == to[0] && at[1] == to[1];
    double positive = same ? 2 * Math.PI : turn < 0 ? turn + 2 * Math.PI : turn;
    return clockwise ? -positive : positive;
  }

  /** Section 3.5.3.1: R above zero turns through at most 180 degrees, R below zero through more. */
  private double[] byRadius(double[] to, double r, boolean clockwise) {
    double dx = to[0] - at[0];
    double dy = to[1] - at[1];
    double chord = Math.hypot(dx, dy);
    if (chord == 0) {
      throw new Rs274Exception("a radius with the end at the start");
    }
    double left = r * r - chord * chord / 4;
    if (left < -1e-9) {
      throw new Rs274Exception("the radius does not reach");
    }
    double out = Math.sqrt(Math.max(0, left)) / chord * ((r > 0) == clockwise ? -1 : 1);
    return new double[] {at[0] + dx / 2 - dy * out, at[1] + dy / 2 + dx * out};
  }

  private void cycle(Rs274Block block, Set<Character> unused, boolean again) {
    if (!again) {
      stickyZ = Double.NaN;
      stickyR = Double.NaN;
      stickyQ = Double.NaN;
      oldZ = at[2];
    }
    double[] to = target(block);
    if (unused.remove('R')) {
      stickyR = block.need('R') * unit() + (incremental ? at[2] : 0);
    }
    if (block.words.containsKey('Z')) {
      stickyZ = block.need('Z') * unit() + (incremental ? stickyR : 0);
    }
    if (motion.equals("G83") && unused.remove('Q')) {
      stickyQ = block.need('Q') * unit();
    }
    if (motion.equals("G82") && unused.remove('P')) {
      dwell += block.need('P');
    }
    if (Double.isNaN(stickyZ) || Double.isNaN(stickyR)) {
      throw new Rs274Exception("a cycle without Z or R");
    }
    if (stickyR < stickyZ) {
      throw new Rs274Exception("R lies below Z");
    }
    if (motion.equals("G83") && !(stickyQ > 0)) {
      throw new Rs274Exception("G83 needs Q above zero");
    }
    double repeats = unused.remove('L') ? block.need('L') : 1;
    if (repeats < 1 || repeats != Math.rint(repeats)) {
      throw new Rs274Exception("L must be a whole number above zero");
    }
    hole(to[0], to[1], (int) repeats);
  }

  private void hole(double x, double y, int repeats) {
    double clear = backToOld ? Math.max(oldZ, stickyR) : stickyR;
    double dx = x - at[0];
    double dy = y - at[1];
    if (at[2] < stickyR) {
      go(true, true, at[0], at[1], stickyR);
    }
    for (int i = 0; i < repeats; i++) {
      double toX = incremental ? at[0] + dx : x;
      double toY = incremental ? at[1] + dy : y;
      go(true, true, toX, toY, at[2]);
      if (at[2] != stickyR) {
        go(true, true, toX, toY, stickyR);
      }
      double bottom = stickyR;
      while (motion.equals("G83") && bottom - stickyQ > stickyZ) {
        bottom -= stickyQ;
        go(false, true, toX, toY, bottom);
        go(true, true, toX, toY, clear);
        go(true, true, toX, toY, Math.min(clear, bottom + BACK_OFF));
      }
      go(false, true, toX, toY, stickyZ);
      go(true, true, toX, toY, clear);
    }
  }
}
