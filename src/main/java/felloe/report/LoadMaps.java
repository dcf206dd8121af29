package felloe.report;

import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.drawing.LoadView;
import felloe.drawing.NodalField;
import felloe.drawing.ThicknessView;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.load.CaseField;
import felloe.load.HandForce;
import felloe.load.LoadPlan;
import felloe.load.Support;
import felloe.mesh.PlateMesh;
import felloe.service.LoadOutcome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** What a plate does under load, as pictures show it. */
public final class LoadMaps {

  /** A plate that moves by less than this share across its plane is shown moving in it. */
  private static final double FLAT = 0.05;

  private final LoadOutcome answer;
  private final LoadPlan plan;
  private final double[] x;
  private final double[] y;
  private final int[] corners;

  public LoadMaps(LoadOutcome answer) {
    this.answer = answer;
    this.plan = answer.plan();
    PlateMesh mesh = plan.result().mesh();
    this.x = new double[mesh.nodes()];
    this.y = new double[mesh.nodes()];
    for (int i = 0; i < x.length; i++) {
      x[i] = mesh.x(i);
      y[i] = mesh.y(i);
    }
    this.corners = new int[3 * mesh.triangles()];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = mesh.corner(i / 3, i % 3);
    }
  }

  /** A case's view. */
  public LoadView view(LoadPlan.Judged one) {
    CaseField field = one.field();
    return new LoadView(
        Words.title(answer.plate()),
        field.load().title() + " (" + field.load().name() + ")",
        words(one),
        answer.plate().region(),
        held(),
        heads(),
        field.load().forces().stream().map(LoadMaps::hand).toList(),
        List.of(use(one), moves(field)));
  }

  private static LoadView.Hand hand(HandForce f) {
    return new LoadView.Hand(f.at(), f.x(), f.y(), f.z(), Quantity.fixed(f.size(), 0, "N").text());
  }

  private List<Contour> held() {
    return plan.hold().support() instanceof Support.Bolted bolted
        ? bolted.bearing().stream().map(d -> Contour.circle(d.at(), d.diameter() / 2)).toList()
        : List.of(
            Contour.circle(Point.ORIGIN, ((Support.Clamped) plan.hold().support()).diameter() / 2));
  }

  private List<Contour> heads() {
    return plan.hold().support() instanceof Support.Bolted bolted
        ? bolted.bolts().stream().map(b -> Contour.circle(b.at(), b.head() / 2)).toList()
        : List.of();
  }

  private LoadView.Map use(LoadPlan.Judged one) {
    double percent = 100 * one.factor();
    CaseField field = one.field();
    return new LoadView.Map(
        Phrase.of(
            "Use of the material under {} times the load; it fails at 100 %",
            Quantity.brief(one.factor(), 2, "")),
        "%",
        new NodalField(
            x,
            y,
            corners,
            Arrays.stream(field.uses(), 0, x.length).map(u -> u * percent).toArray()),
        field.worstAt(),
        Quantity.fixed(percent * field.worst().use(), 0, "%").text(),
        OptionalDouble.of(100));
  }

  private LoadView.Map moves(CaseField field) {
    double most = Arrays.stream(field.deflections()).map(Math::abs).max().orElse(0);
    boolean flat = most < FLAT * field.peakDeflection();
    double[] moves = flat ? field.slides() : field.deflections();
    int peak = 0;
    for (int i = 0; i < moves.length; i++) {
      peak = Math.abs(moves[i]) > Math.abs(moves[peak]) ? i : peak;
    }
    return new LoadView.Map(
        flat ? "Movement in the plane of the plate" : "Deflection toward the driver",
        "mm",
        new NodalField(x, y, corners, moves),
        plan.result().mesh().point(peak),
        Quantity.fixed(moves[peak], Math.abs(moves[peak]) < 0.1 ? 3 : 2, "mm").text(),
        OptionalDouble.empty());
  }

  private List<String> words(LoadPlan.Judged one) {
    boolean clamped = plan.hold().support() instanceof Support.Clamped;
    boolean laid = plan.gauge().plies().isPresent();
    String held =
        clamped
            ? "held fast within the dashed circle"
            : "held by its screws (small circles: their heads) with the hub's face (dashed) behind";
    String verdict =
        one.fall().isPresent()
            ? "The fall comes to the force shown; it is told, not judged."
            : Phrase.of(
                "Margin {}{}.",
                LoadReport.margin(one.margin()),
                one.met() ? "" : ", NOT AS WANTED");
    return List.of(
        Phrase.of("{}, {}. {}", LoadReport.stock(plan), held, verdict),
        "Ring with a dot: force toward the driver; ring with a cross: away; arrow: in the plane."
            + " Thin lines: lines of equal value. Cross: the peak."
            + (laid ? " Use: of the worst ply." : " Use: at the worse face."),
        LoadReport.FOOT);
  }

  /** The thicknesses that were tried. */
  ThicknessView thicknesses() {
    List<ThicknessView.Trial> trials = new ArrayList<>();
    for (LoadPlan.Trial t : plan.trials()) {
      List<String> words = new ArrayList<>(List.of(Quantity.mm(t.gauge().thickness()).text()));
      t.gauge().plies().ifPresent(n -> words.add(Words.plies(n)));
      words.add(Quantity.grams(t.gauge().mass()).text());
      trials.add(
          new ThicknessView.Trial(
              t.gauge().thickness(), t.deflection(), t.margin(), words, t.met(), t.own()));
    }
    return new ThicknessView(
        "Thicknesses of " + answer.plate().title(),
        trials,
        plan.wanted().deflection().map(OptionalDouble::of).orElse(OptionalDouble.empty()),
        plan.wanted().margin());
  }
}
