package felloe.out;

import felloe.cutting.Dialect;
import felloe.cutting.JobHeights;
import felloe.cutting.Move;
import felloe.geometry.Arc;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.List;

/** Writes moves and knows where the tool is, in whole units of the last decimal. */
final class GcodePen {

  /** How far, in units of the last decimal, ends that are meant to meet may round apart. */
  private static final long SLACK = 2;

  /** NISTIR 6556, 3.5.3.2: the two radii of an arc may differ by this much, mm. */
  private static final double RADII = 0.002;

  private final GcodeText text;
  private final Dialect dialect;
  private final double scale;
  private final long clearance;
  private final long approach;

  private boolean placed;
  private boolean lifted;
  private boolean inCycle;
  private long x;
  private long y;
  private long z;
  private String feed = "";

  GcodePen(GcodeText text, Dialect dialect, JobHeights height) {
    this.text = text;
    this.dialect = dialect;
    this.scale = Math.pow(10, dialect.decimals());
    this.clearance = units(height.clearance());
    this.approach = units(height.approach());
  }

  private long units(double mm) {
    return Math.round(mm * scale);
  }

  private String word(char letter, long units) {
    return " " + letter + Numbers.fixed(units / scale, dialect.decimals());
  }

  /** The next feed is written even if it is the same. */
  void forgetFeed() {
    feed = "";
  }

  /** The tool may have been moved by hand. */
  void forgetPlace() {
    placed = false;
    lifted = false;
  }

  /** Straight up to the clearance height. */
  void lift() {
    endCycle();
    if (!lifted) {
      text.line("G0" + word('Z', clearance));
      z = clearance;
      lifted = true;
    }
  }

  private void height(long to) {
    z = to;
    lifted = to == clearance;
  }

  /** Up, then across. */
  void travel(Point to) {
    lift();
    long toX = units(to.x());
    long toY = units(to.y());
    if (!placed || toX != x || toY != y) {
      text.line("G0" + word('X', toX) + word('Y', toY));
      x = toX;
      y = toY;
      placed = true;
    }
  }

  void sink(Move.Sink sink) {
    endCycle();
    meet(sink.at(), "a sink");
    long to = units(sink.toZ());
    if (z > approach) {
      fall(Math.max(to, approach));
    }
    if (to != z) {
      text.line("G1" + word('Z', to) + feed(sink.feed()));
      height(to);
    }
  }

  private void fall(long to) {
    text.line("G0" + word('Z', to));
    height(to);
  }

  void cut(Move.Cut cut) {
    endCycle();
    meet(cut.along().from(), "a cut");
    if (Math.abs(units(cut.fromZ()) - z) > SLACK) {
      throw new IllegalArgumentException(
          "a cut starts at z " + Numbers.brief(cut.fromZ(), 4) + ", the tool is at " + shown(z));
    }
    if (!(cut.along() instanceof Arc arc)) {
      line(cut.along().to(), units(cut.toZ()), cut.feed());
      return;
    }
    List<Double> ends = GcodeArcs.ends(arc, dialect);
    double done = 0;
    for (double end : ends) {
      long toZ = units(cut.fromZ() + end * (cut.toZ() - cut.fromZ()));
      piece(arc, end - done, GcodeArcs.at(arc, end), toZ, cut.feed());
      done = end;
    }
  }

  private void line(Point to, long toZ, double mmPerMinute) {
    long toX = units(to.x());
    long toY = units(to.y());
    if (toX == x && toY == y && toZ == z) {
      return;
    }
    StringBuilder words = new StringBuilder("G1");
    if (toX != x || toY != y) {
      words.append(word('X', toX)).append(word('Y', toY));
    }
    arrive(words, toX, toY, toZ, mmPerMinute);
  }

  private void piece(Arc arc, double share, Point to, long toZ, double mmPerMinute) {
    if (GcodeArcs.rise(arc, share) * scale < 0.5) {
      line(to, toZ, mmPerMinute);
      return;
    }
    boolean circle = arc.isCircle() && share == 1;
    long toX = circle ? x : units(to.x());
    long toY = circle ? y : units(to.y());
    long i = units(arc.centre().x()) - x;
    long j = units(arc.centre().y()) - y;
    double ended = Math.hypot(toX - x - i, toY - y - j);
    if (Math.abs(Math.hypot(i, j) - ended) > RADII * scale) {
      throw new IllegalArgumentException("the two radii of an arc differ");
    }
    StringBuilder words = new StringBuilder(arc.sweep() > 0 ? "G3" : "G2");
    words.append(word('X', toX)).append(word('Y', toY));
    if (toZ != z) {
      words.append(word('Z', toZ));
      height(toZ);
    }
    words.append(word('I', i)).append(word('J', j));
    arrive(words, toX, toY, toZ, mmPerMinute);
  }

  private void arrive(StringBuilder words, long toX, long toY, long toZ, double mmPerMinute) {
    if (toZ != z) {
      words.append(word('Z', toZ));
      height(toZ);
    }
    text.line(words.append(feed(mmPerMinute)).toString());
    x = toX;
    y = toY;
  }

  private String feed(double mmPerMinute) {
    String word = " F" + Numbers.brief(mmPerMinute, 1);
    if (word.equals(feed)) {
      return "";
    }
    if (word.equals(" F0")) {
      throw new IllegalArgumentException("a feed below 0.05 mm/min is no feed");
    }
    feed = word;
    return word;
  }

  private void meet(Point at, String who) {
    boolean near =
        placed && Math.abs(units(at.x()) - x) <= SLACK && Math.abs(units(at.y()) - y) <= SLACK;
    if (!near) {
      throw new IllegalArgumentException(
          who + " starts at " + at + ", the tool is at (" + shown(x) + ", " + shown(y) + ")");
    }
  }

  private String shown(long units) {
    return Numbers.brief(units / scale, 4);
  }

  /** One hole by G81, or G83 for pecks; the tool ends at the clearance height (G98). */
  void drillCycle(Move.Drill drill) {
    if (!inCycle) {
      lift();
    }
    boolean pecks = drill.peck() > 0;
    x = units(drill.at().x());
    y = units(drill.at().y());
    placed = true;
    text.line(
        (pecks ? "G98 G83" : "G98 G81")
            + word('X', x)
            + word('Y', y)
            + word('Z', units(drill.bottom()))
            + word('R', approach)
            + (pecks ? word('Q', units(drill.peck())) : "")
            + feed(drill.feed()));
    inCycle = true;
  }

  /** No cycle is in force any more. */
  void endCycle() {
    if (inCycle) {
      text.line("G80");
      inCycle = false;
      // The cycle ends at the clearance height, but nothing is risked by saying so.
      lifted = false;
    }
  }

  /**
   * One hole by moves. Each peck goes down at the feed all the way: slower than a cycle, but never
   * fast below the face of the stock.
   */
  void drillMoves(Move.Drill drill) {
    travel(drill.at());
    fall(approach);
    long bottom = units(drill.bottom());
    long step = drill.peck() > 0 ? Math.max(1, units(drill.peck())) : approach - bottom;
    long depth = approach;
    while (depth > bottom) {
      depth = Math.max(bottom, depth - step);
      text.line("G1" + word('Z', depth) + feed(drill.feed()));
      text.line("G0" + word('Z', approach));
    }
    height(approach);
  }
}
