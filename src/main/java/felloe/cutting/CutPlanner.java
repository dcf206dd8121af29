package felloe.cutting;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.EdgeFinish;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.Note;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** Works a plan out. */
final class CutPlanner {

  /** How the title of a window's work begins. */
  static final String WINDOW = "window ";

  private final Plate plate;
  private final CutSetup setup;
  private final Surroundings round;
  private final List<CutFault> faults = new ArrayList<>();
  private final List<Operation> operations = new ArrayList<>();
  private final List<CutTab> tabs = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();
  private HoleWork holeWork;
  private Leads leads;
  private PathIndex paths;
  private Point at = Point.ORIGIN;

  CutPlanner(Plate plate, CutSetup setup, Surroundings round) {
    this.plate = plate;
    this.setup = setup;
    this.round = round;
  }

  CutPlan plan() {
    List<String> unusual = new SetupCheck(plate, setup, CutBounds.standard(), faults).run();
    refuse();
    holeWork = new HoleWork(setup);
    Compensation cut = Compensation.of(plate, setup.cutter(), true, hole -> holeWork.drilled(hole));
    refuseClosed(cut);
    // A window's waste lies left of travel when its finish line lies right, and so everywhere.
    boolean climb = setup.direction() == CutDirection.CLIMB;
    leads = new Leads(new Clearance(plate, round, setup.cutter()), climb);
    paths = new PathIndex(cut.lines());
    setup
        .vTool()
        .ifPresent(
            tool -> operations.addAll(new FaceWork(plate, setup, tool, faults, notes).run()));
    drill();
    bore(cut);
    along(cut, CutFeature.Kind.WINDOW);
    along(cut, CutFeature.Kind.OUTLINE);
    refuse();
    leftToHands();
    JobHeights height =
        new JobHeights(
            setup.depths().clearance(),
            setup.depths().approach(),
            -setup.depths().stock() - setup.depths().breakthrough());
    return new CutPlan(
        plate,
        setup,
        round,
        cut,
        height,
        operations,
        tabs,
        figures(height),
        notes,
        Stream.of(
                CutCautions.tabs(setup),
                StockAtHand.cautions(plate, setup, round),
                unusual,
                CutCautions.of(setup.process(), plate.stock().material()))
            .flatMap(List::stream)
            .toList());
  }

  /** What the plan does not do though the plate wants it. */
  private void leftToHands() {
    boolean mill = setup.process() == CutProcess.ROUTER;
    for (Engraving engraving : plate.engravings()) {
      boolean front = engraving.face() == Face.FRONT;
      if (front && setup.vTool().isPresent()) {
        continue;
      }
      String where =
          front
              ? "it stands in the drawings on a layer of its own, to be cut "
                  + mm(engraving.depth())
                  + " deep"
                  + (mill ? "; tell the angle of a V tool, and it is cut" : "")
              : "it is on the back face";
      notes.add(
          new Note(engraving.place(), engraving.label() + " is not cut by this plan: " + where));
    }
    EdgeFinish edges = plate.making().edges();
    if (edges.edgeBreak() > 0 || edges.chamfer() > 0) {
      String how =
          edges.chamfer() > 0
              ? "chamfered " + mm(edges.chamfer()) + " at 45 degrees"
              : "broken by " + mm(edges.edgeBreak());
      boolean cut = setup.vTool().filter(tool -> tool.edge(edges) > 0).isPresent();
      notes.add(
          new Note(
              plate.stock().place(),
              cut
                  ? "edges of the back face are " + how + " by hand"
                  : "edges are "
                      + how
                      + " by hand, on both faces: this plan cuts them sharp"
                      + (setup.vTool().isPresent() ? "; a tool of 90 degrees would do it" : "")));
    }
  }

  private void refuse() {
    if (!faults.isEmpty()) {
      throw new CutRefused(faults);
    }
  }

  private void refuseClosed(Compensation cut) {
    int windows = 0;
    for (CutFeature feature : cut.closed()) {
      if (feature.kind() == CutFeature.Kind.HOLE) {
        faults.add(
            CutFault.at(
                feature.place(),
                feature.label(),
                "",
                "is not wider than the " + mm(setup.cutter()) + " that is cut",
                "take a thinner cutter or beam, or drill it"));
      } else {
        windows++;
        notes.add(
            new Note(
                feature.place(),
                feature.label()
                    + " is narrower than the cutter everywhere and is not cut: saw and file it"));
      }
    }
    if (windows > 0 && windows == plate.windows().size()) {
      faults.add(
          CutFault.of(
              setup.process() == CutProcess.ROUTER ? CutFigure.CUTTER : CutFigure.KERF,
              mm(setup.cutter()),
              "is wider than every window",
              "take a thinner cutter"));
    }
  }

  /** Takes the nearest to where the cutter stands, again and again. */
  private <T> List<T> nearestFirst(List<T> things, Function<T, Point> place) {
    List<T> left = new ArrayList<>(things);
    List<T> order = new ArrayList<>();
    while (!left.isEmpty()) {
      int nearest = 0;
      for (int i = 1; i < left.size(); i++) {
        if (place.apply(left.get(i)).distance(at) < place.apply(left.get(nearest)).distance(at)) {
          nearest = i;
        }
      }
      T next = left.remove(nearest);
      at = place.apply(next);
      order.add(next);
    }
    return order;
  }

  private void drill() {
    Map<Double, List<Hole>> bySize = new TreeMap<>();
    for (Hole hole : plate.holes()) {
      if (holeWork.drilled(hole)) {
        bySize.computeIfAbsent(holeWork.drill(hole), d -> new ArrayList<>()).add(hole);
      }
    }
    bySize.forEach(
        (drill, holes) -> {
          List<Move> moves = new ArrayList<>();
          for (Hole hole : nearestFirst(holes, Hole::centre)) {
            if (moves.isEmpty()) {
              moves.add(new Move.Travel(hole.centre()));
            }
            moves.add(holeWork.move(hole));
          }
          String title = "drill " + counted(holes.size(), "hole") + ", " + mm(drill);
          operations.add(new Operation(title, holeWork.tool(drill), holeWork.speed(drill), moves));
        });
  }

  private void bore(Compensation cut) {
    List<Move> moves = new ArrayList<>();
    List<PathEntry> entries = nearestFirst(entries(cut, CutFeature.Kind.HOLE), PathEntry::start);
    for (PathEntry entry : entries) {
      moves.addAll(moves(entry).moves());
    }
    if (!moves.isEmpty()) {
      String what = setup.process() == CutProcess.ROUTER ? "bore " : "cut ";
      operations.add(operation(what + counted(entries.size(), "hole"), moves));
    }
  }

  private void along(Compensation cut, CutFeature.Kind kind) {
    List<PathEntry> entries = entries(cut, kind);
    // Hollows of the outline are cut while it still holds.
    List<PathEntry> inside = entries.stream().filter(entry -> entry.line().inside()).toList();
    List<PathEntry> outside = entries.stream().filter(entry -> !entry.line().inside()).toList();
    List<PathEntry> order = new ArrayList<>(nearestFirst(inside, PathEntry::start));
    order.addAll(nearestFirst(outside, PathEntry::start));
    for (PathEntry entry : order) {
      Worked worked = moves(entry);
      CutFeature feature = entry.line().feature();
      List<CutLine> parts = cut.lines(feature);
      String title = kind == CutFeature.Kind.OUTLINE ? "outline" : WINDOW + feature.label();
      if (parts.size() > 1) {
        title += ", part " + (parts.indexOf(entry.line()) + 1) + " of " + parts.size();
      }
      operations.add(operation(title + worked.passes(), worked.moves()));
    }
  }

  private List<PathEntry> entries(Compensation cut, CutFeature.Kind kind) {
    List<PathEntry> entries = new ArrayList<>();
    for (CutLine line : cut.lines()) {
      if (line.feature().kind() == kind) {
        PathEntry entry = PathEntry.of(line, setup, leads);
        if (entry.lead().isEmpty()) {
          withoutLead(line.feature());
        }
        entries.add(entry);
      }
    }
    return entries;
  }

  private void withoutLead(CutFeature feature) {
    if (setup.process() == CutProcess.ROUTER) {
      if (setup.entry().lead() > 0) {
        notes.add(
            new Note(
                feature.place(),
                feature.label() + ": no room for a lead; the ramp starts on the path itself"));
      }
      return;
    }
    if (setup.entry().lead() == 0) {
      notes.add(
          new Note(
              feature.place(),
              feature.label()
                  + ": pierced on the path itself, as asked for; the pierce marks the edge unless"
                  + " the machine leads in by itself"));
      return;
    }
    faults.add(
        CutFault.of(
            CutFigure.LEAD,
            mm(setup.entry().lead()),
            "has no room at " + feature.label() + ", and a beam must not pierce on the finish line",
            "the lead is made smaller down to " + mm(Leads.LEAST) + "; drill what is narrower"));
  }

  /** Moves along a path, and what to say of them in the title. */
  private record Worked(List<Move> moves, String passes) {}

  private Worked moves(PathEntry entry) {
    if (setup.process() != CutProcess.ROUTER) {
      return new Worked(BeamPath.moves(entry, setup, leads), "");
    }
    DepthPasses passes = new DepthPasses(entry, paths, setup, leads);
    passes.run(tabsOn(entry, passes.tabPlaces()));
    tabs.addAll(passes.tabs());
    String text = passes.passes() == 0 ? ", helix" : ", " + counted(passes.passes(), "pass");
    return new Worked(passes.moves(), text);
  }

  private List<Double> tabsOn(PathEntry entry, TabPlaces places) {
    CutFeature feature = entry.line().feature();
    int count = setup.tabs().count();
    if (!entry.line().inside()) {
      List<Double> chosen = places.places(count);
      if (count > 0 && chosen.isEmpty()) {
        faults.add(
            CutFault.of(
                CutFigure.TABS,
                Integer.toString(count),
                "have no room on the outline: with their slopes they take "
                    + mm(places.needed(count))
                    + " of a path of "
                    + mm(entry.loop().length())
                    + ", each before a wall of "
                    + mm(Surroundings.WALL)
                    + " that stays",
                "ask for fewer, narrower or lower tabs, a steeper ramp, or more room round the"
                    + " part"));
      }
      return chosen;
    }
    if (!WasteSlugs.large(entry.line(), setup.cutter())) {
      return List.of();
    }
    for (int n = count; n >= 2; n--) {
      List<Double> chosen = places.places(n);
      if (!chosen.isEmpty()) {
        return chosen;
      }
    }
    notes.add(
        new Note(
            feature.place(),
            feature.label()
                + ": the slug comes loose at the last pass; hold it down with tape or a screw"));
    return List.of();
  }

  private Operation operation(String title, List<Move> moves) {
    boolean router = setup.process() == CutProcess.ROUTER;
    String name =
        mm(setup.cutter())
            + switch (setup.process()) {
              case ROUTER -> " end mill";
              case LASER -> " laser beam";
              default -> " water jet";
            };
    CutterTool tool =
        new CutterTool(
            name,
            router ? CutterTool.Kind.END_MILL : CutterTool.Kind.BEAM,
            setup.cutter(),
            router ? setup.flutes() : 0);
    return new Operation(title, tool, router ? setup.rates().speed() : 0, moves);
  }

  private List<OperationFigures> figures(JobHeights height) {
    List<OperationFigures> figures = new ArrayList<>();
    Point from = Point.ORIGIN;
    for (Operation operation : operations) {
      figures.add(OperationFigures.of(operation, from, height, setup.rates().travel()));
      from = OperationFigures.end(operation, from);
    }
    return figures;
  }

  private static String counted(int count, String what) {
    String many = what.equals("pass") ? "passes" : what + "s";
    return count + " " + (count == 1 ? what : many);
  }

  private static String mm(double value) {
    return Numbers.brief(value, 3) + " mm";
  }
}
