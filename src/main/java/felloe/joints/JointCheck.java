package felloe.joints;

import felloe.geometry.Tolerances;
import felloe.plate.Verdict;

/**
 * One way for a screw, or the plate round it, to give way, and what is to be thought of it.
 *
 * @param what the way
 * @param demand what acts at limit load, times {@code factor}: N or MPa
 * @param capacity what stands against it, in the same unit
 * @param unit of both
 * @param factor by which the limit load is multiplied
 * @param cause the case that asks the most
 * @param known whether the capacity is known; where it is not, it is never a pass
 * @param grave whether too little fails; of a mock-up that nobody drives it only warns
 * @param basis where the capacity comes from
 */
public record JointCheck(
    What what,
    double demand,
    double capacity,
    String unit,
    double factor,
    String cause,
    boolean known,
    boolean grave,
    String basis) {

  /** The ratio that is told where nothing acts. */
  private static final double LARGE = 1e6;

  /** A way to give way. */
  public enum What {
    /** The plate lifts off its hub. */
    CLAMP_FORCE("clamp-force", "clamp over tension"),
    /** The plate slips on its hub. */
    SLIP("slip", "friction over share"),
    /** The screw crushes the side of its hole. */
    BEARING("bearing", "bearing"),
    /** A plug tears out toward an edge. */
    SHEAR_OUT("shear-out", "shear-out"),
    /** The section beside the hole tears. */
    NET_SECTION("net-section", "net section"),
    /** The head pulls through the plate. */
    PULL_THROUGH("pull-through", "pull-through"),
    /** The thread strips. */
    THREAD_STRIP("thread-strip", "thread"),
    /** The screw itself breaks. */
    SCREW_STRENGTH("screw-strength", "screw itself");

    private final String id;
    private final String title;

    What(String id, String title) {
      this.id = id;
      this.title = title;
    }

    /** The id of its rule in the review. */
    public String id() {
      return id;
    }

    /** In a word or two. */
    public String title() {
      return title;
    }
  }

  /** Capacity over demand; very large where nothing acts. */
  public double ratio() {
    return demand <= Tolerances.ROUNDING ? LARGE : capacity / demand;
  }

  /** How much more load there may be, as a part of the load with its factors. */
  public double margin() {
    return ratio() - 1;
  }

  /** Too little below a ratio of 1; a capacity that is not known is a caution at best. */
  public Verdict verdict() {
    if (ratio() < 1 - Tolerances.ROUNDING) {
      return grave ? Verdict.FAIL : Verdict.CAUTION;
    }
    return known ? Verdict.PASS : Verdict.CAUTION;
  }
}
