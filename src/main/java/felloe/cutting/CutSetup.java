package felloe.cutting;

import felloe.geometry.Numbers;
import felloe.plate.Plate;
import java.util.List;
import java.util.Optional;

/**
 * How a plate is to be cut on a machine. Figures that cannot be worked with are reported by {@link
 * CutPlan}, all at once; here only what is no number is refused. Lengths in mm, feeds in mm/min.
 *
 * @param process router, laser or waterjet
 * @param cutter diameter of the cutter, or the kerf of a beam
 * @param flutes cutting edges; not read for a beam
 * @param fluteLength length of the cutting edges, where it is known; not read for a beam
 * @param direction which way to travel
 * @param depths how deep
 * @param entry how the cutter enters
 * @param tabs what holds the part; a router only
 * @param drills which holes are drilled; a router only
 * @param rates speeds and feeds
 * @param start what is usual for this cutter in this material; empty for a beam
 * @param ownerConsents whether the machine's owner allows this material on a laser
 * @param vTool what cuts lines and edges of the upper face; empty where that is left to hands
 */
public record CutSetup(
    CutProcess process,
    double cutter,
    int flutes,
    Optional<Double> fluteLength,
    CutDirection direction,
    Depths depths,
    Entry entry,
    Tabs tabs,
    Drills drills,
    Rates rates,
    Optional<StartingFeed> start,
    boolean ownerConsents,
    Optional<VTool> vTool) {

  /** Refuses a cutter that is no number. */
  public CutSetup {
    Numbers.finite("cutter", cutter);
    fluteLength.ifPresent(length -> Numbers.finite("fluteLength", length));
  }

  /**
   * Heights and depths.
   *
   * @param stock thickness of what is really clamped
   * @param breakthrough how far below the stock the last pass goes
   * @param bed how far below the stock anything may go: into a spoil board
   * @param stepDown depth of each pass
   * @param clearance height of travel above the stock, clear of clamps
   * @param approach height above the stock where the way down slows
   */
  public record Depths(
      double stock,
      double breakthrough,
      double bed,
      double stepDown,
      double clearance,
      double approach) {
    /** Refuses figures that are no numbers. */
    public Depths {
      Numbers.finite("stock", stock);
      Numbers.finite("breakthrough", breakthrough);
      Numbers.finite("bed", bed);
      Numbers.finite("stepDown", stepDown);
      Numbers.finite("clearance", clearance);
      Numbers.finite("approach", approach);
    }
  }

  /**
   * The way into the material.
   *
   * @param ramp steepest way down, radians from level
   * @param lead radius of the arcs that lead onto the path and off it; 0 for none; made smaller
   *     where it has no room
   */
  public record Entry(double ramp, double lead) {
    /** Refuses figures that are no numbers. */
    public Entry {
      Numbers.finite("ramp", ramp);
      Numbers.finite("lead", lead);
    }
  }

  /**
   * Bridges that hold the part, and large slugs, until they are cut by hand.
   *
   * @param count how many round the outline; a window gets as many as it has room for, up to this
   * @param width of the top of each, along the path
   * @param height above the lower face of the stock
   */
  public record Tabs(int count, double width, double height) {
    /** No tabs. */
    public static final Tabs NONE = new Tabs(0, 0, 0);

    /** Refuses figures that are no numbers. */
    public Tabs {
      Numbers.finite("width", width);
      Numbers.finite("height", height);
    }
  }

  /**
   * The drills at hand.
   *
   * @param sizes diameters at hand; empty when any size is
   * @param largest holes beyond this are bored; 0 to bore all
   */
  public record Drills(List<Double> sizes, double largest) {
    /** Copies the list and refuses figures that are no numbers. */
    public Drills {
      sizes = List.copyOf(sizes);
      sizes.forEach(size -> Numbers.finite("size", size));
      Numbers.finite("largest", largest);
    }
  }

  /**
   * Speeds and feeds.
   *
   * @param speed spindle speed for the cutter, 1/min
   * @param feed along the path
   * @param rampFeed on the way down
   * @param travel how fast the machine travels, for the time estimate only
   * @param drillSurfaceSpeed surface speed of drills, m/min
   * @param drillFeed feed of drills, mm a turn
   * @param highestSpeed the spindle's highest speed, 1/min
   */
  public record Rates(
      double speed,
      double feed,
      double rampFeed,
      double travel,
      double drillSurfaceSpeed,
      double drillFeed,
      double highestSpeed) {
    /** Refuses figures that are no numbers. */
    public Rates {
      Numbers.finite("speed", speed);
      Numbers.finite("feed", feed);
      Numbers.finite("rampFeed", rampFeed);
      Numbers.finite("travel", travel);
      Numbers.finite("drillSurfaceSpeed", drillSurfaceSpeed);
      Numbers.finite("drillFeed", drillFeed);
      Numbers.finite("highestSpeed", highestSpeed);
    }
  }

  /** Largest hole that is drilled unless the maker says otherwise, mm; common practice. */
  private static final double LARGEST_DRILLED = 8;

  /** A tab for each of these lengths of the outline, from 2 to 4 of them, mm; common practice. */
  private static final double TAB_EVERY = 60;

  /**
   * A router with the starting figures for the plate's material.
   *
   * @param cutter diameter, mm, above zero
   * @param flutes cutting edges, at least 1
   * @param feeds where the figures come from
   */
  public static CutSetup router(Plate plate, double cutter, int flutes, FeedTable feeds) {
    return router(
        plate, cutter, flutes, feeds, feeds.routing(plate.stock().material(), cutter, flutes));
  }

  /**
   * A router with starting figures of its own, such as those for a certain spindle.
   *
   * @param start the figures
   */
  public static CutSetup router(
      Plate plate, double cutter, int flutes, FeedTable feeds, StartingFeed start) {
    double thick = plate.stock().thickness();
    int tabs = (int) Math.max(2, Math.min(4, plate.outline().length() / TAB_EVERY));
    return new CutSetup(
        CutProcess.ROUTER,
        cutter,
        flutes,
        Optional.empty(),
        CutDirection.CLIMB,
        new Depths(thick, 0.3, 3, start.stepDown(), 10, 2),
        new Entry(start.ramp(), cutter / 2),
        new Tabs(tabs, 5, Math.min(1, thick / 3)),
        new Drills(List.of(), LARGEST_DRILLED),
        new Rates(
            start.speed(),
            start.feed(),
            start.feed() / 2,
            feeds.travel(),
            start.drillSurfaceSpeed(),
            start.drillFeed(),
            feeds.highestSpeed()),
        Optional.of(start),
        false,
        Optional.empty());
  }

  /**
   * A laser or a waterjet.
   *
   * @param kerf width that the beam takes, mm
   * @param feed mm/min; the machine's owner knows it
   */
  public static CutSetup beam(CutProcess process, Plate plate, double kerf, double feed) {
    return new CutSetup(
        process,
        kerf,
        0,
        Optional.empty(),
        CutDirection.CLIMB,
        new Depths(plate.stock().thickness(), 0, 0, plate.stock().thickness(), 10, 2),
        new Entry(0, 2),
        Tabs.NONE,
        new Drills(List.of(), 0),
        new Rates(0, feed, feed, 3000, 0, 0, 0),
        Optional.empty(),
        false,
        Optional.empty());
  }

  /** Half the width that the cutter or beam takes, mm. */
  public double half() {
    return cutter / 2;
  }

  /** The same with other depths. */
  public CutSetup with(Depths other) {
    return new CutSetup(
        process,
        cutter,
        flutes,
        fluteLength,
        direction,
        other,
        entry,
        tabs,
        drills,
        rates,
        start,
        ownerConsents,
        vTool);
  }

  /** The same with another entry. */
  public CutSetup with(Entry other) {
    return new CutSetup(
        process,
        cutter,
        flutes,
        fluteLength,
        direction,
        depths,
        other,
        tabs,
        drills,
        rates,
        start,
        ownerConsents,
        vTool);
  }

  /** The same with other tabs. */
  public CutSetup with(Tabs other) {
    return new CutSetup(
        process,
        cutter,
        flutes,
        fluteLength,
        direction,
        depths,
        entry,
        other,
        drills,
        rates,
        start,
        ownerConsents,
        vTool);
  }

  /** The same with other drills. */
  public CutSetup with(Drills other) {
    return new CutSetup(
        process,
        cutter,
        flutes,
        fluteLength,
        direction,
        depths,
        entry,
        tabs,
        other,
        rates,
        start,
        ownerConsents,
        vTool);
  }

  /** The same with other speeds and feeds. */
  public CutSetup with(Rates other) {
    return new CutSetup(
        process,
        cutter,
        flutes,
        fluteLength,
        direction,
        depths,
        entry,
        tabs,
        drills,
        other,
        start,
        ownerConsents,
        vTool);
  }

  /** The same the other way round. */
  public CutSetup with(CutDirection other) {
    return new CutSetup(
        process,
        cutter,
        flutes,
        fluteLength,
        other,
        depths,
        entry,
        tabs,
        drills,
        rates,
        start,
        ownerConsents,
        vTool);
  }

  /** The same with cutting edges of a known length, mm. */
  public CutSetup withFluteLength(double length) {
    return new CutSetup(
        process,
        cutter,
        flutes,
        Optional.of(length),
        direction,
        depths,
        entry,
        tabs,
        drills,
        rates,
        start,
        ownerConsents,
        vTool);
  }

  /** The same with or without the owner's consent. */
  public CutSetup withConsent(boolean consents) {
    return new CutSetup(
        process,
        cutter,
        flutes,
        fluteLength,
        direction,
        depths,
        entry,
        tabs,
        drills,
        rates,
        start,
        consents,
        vTool);
  }

  /** The same with a V tool for the upper face. */
  public CutSetup with(VTool tool) {
    return new CutSetup(
        process,
        cutter,
        flutes,
        fluteLength,
        direction,
        depths,
        entry,
        tabs,
        drills,
        rates,
        start,
        ownerConsents,
        Optional.of(tool));
  }
}
