package felloe.cutting;

import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The moves of an end mill along one closed path. It comes down in the waste, ramps along the lead
 * and the path from pass to pass without rising, goes once all the way round at each depth, and
 * leaves by a rising arc. Where a lap of ramp is no deeper than a pass it goes down as one helix.
 */
final class DepthPasses {

  /**
   * Height above the stock where the ramp begins, mm, so that stock a little thicker than said is
   * not plunged into; common practice.
   */
  static final double RAMP_START = 0.5;

  /** Bends of the height nearer than this to a joint move to it, mm. */
  private static final double LEAST_PIECE = 0.002;

  private final PathEntry entry;
  private final CutSetup setup;
  private final Leads leads;
  private final double bottom;
  private final double slope;
  private final double length;
  private final double top;
  private final Optional<Segment> offStart;
  private final TabPlaces places;
  private final List<Move> moves = new ArrayList<>();
  private final List<CutTab> tabs = new ArrayList<>();
  private int passes;
  private double z;

  DepthPasses(PathEntry entry, PathIndex paths, CutSetup setup, Leads leads) {
    this.entry = entry;
    this.setup = setup;
    this.leads = leads;
    this.bottom = -setup.depths().stock() - setup.depths().breakthrough();
    this.slope = Math.tan(setup.entry().ramp());
    this.length = entry.loop().length();
    this.top = setup.tabs().height() - setup.depths().stock();
    this.offStart = leads.off(entry.loop().at(0), entry.loop().tangent(0), setup.entry().lead());
    List<Segment> ways = new ArrayList<>();
    entry.lead().ifPresent(ways::add);
    offStart.ifPresent(ways::add);
    this.places = new TabPlaces(entry, ways, paths, leads, setup, top - bottom, slope);
  }

  /** The moves. */
  List<Move> moves() {
    return List.copyOf(moves);
  }

  /** The tabs that were left. */
  List<CutTab> tabs() {
    return List.copyOf(tabs);
  }

  /** How many passes there are; 0 for a helix. */
  int passes() {
    return passes;
  }

  /** Places for tabs on the path. */
  TabPlaces tabPlaces() {
    return places;
  }

  /**
   * Makes the moves.
   *
   * @param tabsAt positions of the middles of tabs
   */
  DepthPasses run(List<Double> tabsAt) {
    Profile nominal = nominal();
    double end = nominal.end();
    Profile profile = withTabs(nominal, tabsAt);
    Optional<Segment> off = Optional.empty();
    if (farFromTabs(end, tabsAt)) {
      off =
          leads
              .off(entry.loop().at(end), entry.loop().tangent(end), setup.entry().lead())
              .filter(arc -> clearOfTabs(arc, tabsAt));
    }
    if (off.isEmpty() && offStart.isPresent()) {
      off = offStart;
      end = length * Math.ceil(end / length - 1e-9);
      nominal.add(end, bottom);
      profile = withTabs(nominal, tabsAt);
    }
    down(profile);
    Profile heights = profile;
    entry
        .loop()
        .walk(
            0,
            end,
            heights.positions(),
            LEAST_PIECE,
            (piece, from, to) -> cut(piece, heights.at(to)));
    off.ifPresent(this::leave);
    return this;
  }

  /**
   * Rises all the way along the lead off, at the ramp's feed: level, it would run at full depth
   * into waste that no pass has opened.
   */
  private void leave(Segment lead) {
    double clear = Math.min(RAMP_START, setup.depths().approach());
    moves.add(new Move.Cut(lead, z, clear, setup.rates().rampFeed()));
    z = clear;
  }

  /** Whether a lead off a position stays clear of every tab. */
  private boolean farFromTabs(double position, List<Double> tabsAt) {
    double reach = setup.entry().lead() + setup.cutter();
    for (double at : tabsAt) {
      double ahead = at - position;
      ahead -= length * Math.floor(ahead / length);
      if (ahead < places.before() + reach || length - ahead < places.after() + setup.cutter()) {
        return false;
      }
    }
    return true;
  }

  private boolean clearOfTabs(Segment lead, List<Double> tabsAt) {
    return tabsAt.stream().allMatch(at -> places.clearOf(List.of(lead), entry.loop().at(at)));
  }

  private void down(Profile profile) {
    Point start = entry.start();
    z = profile.at(-entry.leadLength());
    moves.add(new Move.Travel(start));
    moves.add(new Move.Sink(start, z, setup.rates().rampFeed()));
    if (entry.lead().isEmpty()) {
      return;
    }
    Segment lead = entry.lead().get();
    double[] bends =
        Arrays.stream(profile.positions())
            .filter(s -> s > -lead.length() + LEAST_PIECE && s < -LEAST_PIECE)
            .toArray();
    double at = 0;
    Point from = lead.from();
    for (double bend : bends) {
      double fraction = 1 + bend / lead.length();
      Point to = lead.at(fraction);
      cut(Loop.part(lead, at, fraction, from, to), profile.at(bend));
      at = fraction;
      from = to;
    }
    cut(Loop.part(lead, at, 1, from, lead.to()), profile.at(0));
  }

  private void cut(Segment along, double toZ) {
    boolean down = toZ < z - 1e-12;
    double feed = down ? setup.rates().rampFeed() : setup.rates().feed();
    moves.add(new Move.Cut(along, z, toZ, feed));
    z = toZ;
  }

  private Profile nominal() {
    Profile profile = new Profile();
    double s = -entry.leadLength();
    double at = Math.min(RAMP_START, setup.depths().approach());
    profile.add(s, at);
    double step = setup.depths().stepDown();
    boolean helix = length * slope <= step;
    passes = helix ? 0 : (int) Math.ceil(-bottom / step - 1e-9);
    int steps = Math.max(1, passes);
    for (int k = 1; k <= steps; k++) {
      double next = bottom * k / steps;
      s += (at - next) / slope;
      profile.add(s, next);
      s = Math.max(s, 0) + length;
      profile.add(s, next);
      at = next;
    }
    return profile;
  }

  private Profile withTabs(Profile nominal, List<Double> tabsAt) {
    tabs.clear();
    if (tabsAt.isEmpty()) {
      return nominal;
    }
    for (double at : tabsAt) {
      tabs.add(
          new CutTab(
              entry.line().feature(),
              entry.loop().at(at),
              setup.tabs().width(),
              top,
              places.before(),
              places.after()));
    }
    Profile bumps = new Profile();
    for (double lap = 0; lap <= nominal.end(); lap += length) {
      for (double at : tabsAt) {
        bumps.add(lap + at - places.before(), bottom);
        bumps.add(lap + at - places.flat(), top);
        bumps.add(lap + at + places.flat(), top);
        bumps.add(lap + at + places.after(), bottom);
      }
    }
    return nominal.max(bumps);
  }
}
