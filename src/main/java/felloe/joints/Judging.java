package felloe.joints;

import felloe.plate.Joint.Tapped;
import felloe.plate.MaterialKind;
import felloe.plate.SourcedFigure;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The factors and figures that screws are judged by, from {@code felloe/fasteners/judging.yaml}.
 */
public final class Judging {

  /** Read once, when the first screw is judged. */
  private static final Judging STANDARD = new Judging();

  private final SourcedFigure ultimate;
  private final SourcedFigure fitting;
  private final SourcedFigure slip;
  private final SourcedFigure prying;
  private final SourcedFigure shearOfTensile;
  private final SourcedFigure hand;
  private final Map<MaterialKind, SourcedFigure> kept = new EnumMap<>(MaterialKind.class);
  private final Map<MaterialKind, SourcedFigure> friction = new EnumMap<>(MaterialKind.class);
  private final Map<Tapped, SourcedFigure> tapped = new EnumMap<>(Tapped.class);

  /** The program's own figures. */
  public static Judging standard() {
    return STANDARD;
  }

  private Judging() {
    Problems problems = new Problems();
    Fields top = Fasteners.top(problems, "judging");
    ultimate = Fasteners.based(top, "ultimate", "limit to ultimate load", "");
    fitting = Fasteners.based(top, "fitting", "fitting factor", "");
    slip = Fasteners.based(top, "slip", "friction over a screw's share, at least", "");
    prying = Fasteners.based(top, "prying", "prying over the elastic group", "");
    shearOfTensile =
        Fasteners.based(top, "shear-of-tensile", "screw steel: shear over tensile strength", "");
    hand = Fasteners.based(top, "hand", "breadth of a hand", "mm");
    Fields keeps = top.mapping("kept").required();
    Fields rubs = top.mapping("friction").required();
    for (MaterialKind kind : MaterialKind.values()) {
      String name = Entry.nameOf(kind);
      kept.put(kind, Fasteners.based(keeps, name, "clamp force kept, " + name, ""));
      friction.put(kind, Fasteners.based(rubs, name, "friction on the hub, " + name, ""));
    }
    Fields threads = top.mapping("tapped").required();
    for (Tapped one : Tapped.values()) {
      if (one != Tapped.INSERT) {
        String name = Entry.nameOf(one);
        tapped.put(one, Fasteners.based(threads, name, "thread's shear strength, " + name, "MPa"));
      }
    }
    top.done();
    problems.throwIfAny();
  }

  /** By which limit loads are multiplied for what must not break. */
  public SourcedFigure ultimate() {
    return ultimate;
  }

  /** By which the loads of a fitting are multiplied besides. */
  public SourcedFigure fitting() {
    return fitting;
  }

  /** The least friction over a screw's share. */
  public SourcedFigure slip() {
    return slip;
  }

  /** What a bending plate does to the tension that a stiff one would give. */
  public SourcedFigure prying() {
    return prying;
  }

  /** Shear strength of a screw's steel over its tensile strength. */
  public SourcedFigure shearOfTensile() {
    return shearOfTensile;
  }

  /** Within which grip screws share a hand, mm. */
  public SourcedFigure hand() {
    return hand;
  }

  /** What is left of the clamp force. */
  public SourcedFigure kept(MaterialKind kind) {
    return kept.get(kind);
  }

  /** Friction of the plate on its hub. */
  public SourcedFigure friction(MaterialKind kind) {
    return friction.get(kind);
  }

  /** Shear strength of what a thread is tapped into, MPa; empty for an insert. */
  public Optional<SourcedFigure> tapped(Tapped material) {
    return Optional.ofNullable(tapped.get(material));
  }

  /** The factors, for an answer to show. */
  List<SourcedFigure> factors(MaterialKind kind) {
    return new ArrayList<>(
        List.of(ultimate, fitting, slip, prying, kept.get(kind), friction.get(kind)));
  }
}
