package felloe.service;

import felloe.cure.ShapeChange;
import felloe.cure.Widening;
import felloe.geometry.Numbers;
import felloe.hub.HubCatalogue;
import felloe.hub.HubSpec;
import felloe.layup.MaterialBook;
import felloe.load.Gauge;
import felloe.load.LoadPlan;
import felloe.plate.BadInput;
import felloe.plate.Finding;
import felloe.plate.Material;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.plate.Verdict;
import felloe.service.WheelShape.Drawn;
import felloe.service.WheelShape.Figures;
import felloe.shape.Materials;
import felloe.yaml.TextEdit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Makes a wheel that passes review and load out of what a maker says: the thinnest plate that is
 * sold or laid up and does, with wider webs where it takes them. What comes out was reviewed and
 * reckoned as it stands, with all patience.
 */
public final class NewWheel {

  /** So often webs are made wider before it is given up. */
  private static final int ROUNDS = 6;

  private static final double WIDER = 2;

  /** Of the files to start from, mm: a rim of 28 to 40 mm is common practice. */
  private static final double RIM = 31;

  private static final double GRIP = 10;

  /** The least margin of figures that have not settled: twice what settled ones may be off. */
  private static final double UNSETTLED = 0.1;

  /** Rules of hub screws that stronger ones may keep. */
  private static final Set<String> SCREWS =
      Set.of("clamp-force", "slip", "pull-through", "screw-strength");

  /** About the grip that a hand wants, mm: screws are sold in steps of 5. */
  private static final double[] ABOUT = {0.5, -0.5, 1, -1, 1.5, -1.5};

  private static final double THINNEST_GRIP = 2;
  private static final double THICKEST_GRIP = 20;

  /** A laid-up plate is begun with this thickness, mm; bought ones with what is nearest sold. */
  private static final double BEGIN = 6;

  /** Thicker plates are none that a hand closes about with a grip on it. */
  private static final double THICKEST = 16;

  private final WheelWish wish;
  private final Path folder;
  private final Progress progress;
  private final HubSpec hub;

  /** What comes of it. */
  public sealed interface Outcome {}

  /**
   * A wheel that passes.
   *
   * @param text of its shape file
   * @param study reviewed
   * @param loads reckoned
   * @param gave what gave way
   */
  public record Made(String text, Study study, LoadOutcome loads, List<WheelGave> gave)
      implements Outcome {
    public Made {
      gave = List.copyOf(gave);
    }
  }

  /**
   * There is none.
   *
   * @param why what was in the way of the last that was tried
   * @param nearest what would pass the review at least, with another stock
   */
  public record None(Why why, Optional<WheelWish> nearest) implements Outcome {}

  /** What is in the way of a wheel. */
  public sealed interface Why {}

  /** It fails a check. */
  public record Fails(Finding finding) implements Why {}

  /** The hub's screws do not hold under the hands' loads. */
  public record ScrewsLetGo() implements Why {}

  /** The plate does not stand a case of loads. */
  public record Yields(String loads) implements Why {}

  private NewWheel(WheelWish wish, Path folder, Progress progress) {
    this.wish = wish;
    this.folder = folder;
    this.progress = progress;
    this.hub = new HubCatalogue(folder).spec(wish.hub(), Place.ofFile("hub"));
  }

  /**
   * One of several.
   *
   * @param name as a shape file writes it
   * @param words for it
   */
  public record Choice(String name, String words) {}

  /** Hubs that are known, and hub files of a folder. */
  public static List<Choice> hubs(Path folder, List<String> files) {
    HubCatalogue catalogue = new HubCatalogue(folder);
    List<Choice> all = new ArrayList<>();
    for (HubSpec known : catalogue.all()) {
      all.add(new Choice(known.name(), known.title()));
    }
    for (String file : files) {
      try {
        all.add(new Choice(file, catalogue.spec(file, Place.ofFile(file)).title()));
      } catch (BadInput wrong) {
        continue;
      }
    }
    return List.copyOf(all);
  }

  /** Materials that a wheel may be driven with; others are for mock-ups. */
  public static List<Material> materials() {
    Materials all = Materials.builtIn();
    return all.names().stream()
        .map(name -> all.find(name).orElseThrow())
        .filter(material -> material.kind().driven())
        .toList();
  }

  /**
   * Makes it.
   *
   * @param folder in which a hub file lies
   * @throws BadInput when hub or stock are none that may be asked for
   */
  public static Outcome of(WheelWish wish, Path folder, Progress progress) {
    if (materials().stream().noneMatch(m -> m.name().equals(wish.material()))) {
      throw new BadInput(
          new Problem(
              Place.ofFile("questions"),
              "stock",
              wish.material(),
              "is none that a wheel may be driven with",
              "choose another"));
    }
    return new NewWheel(wish, folder, progress).made();
  }

  private Outcome made() {
    Figures figures = begin();
    Optional<Why> last = Optional.empty();
    for (int round = 0; round < ROUNDS; round++) {
      progress.at("drawing and reviewing", round, ROUNDS);
      Tried drawn = sound(figures);
      if (drawn.study.fails()) {
        last = fault(drawn.study);
        if (screws(drawn.study)) {
          break;
        }
        figures = figures.wider(WIDER);
        continue;
      }
      progress.at("reckoning loads in every thickness that there is", round, ROUNDS);
      LoadOutcome whole = PlateLoads.thicknesses(drawn.study, studies());
      Optional<Made> found = thinnest(drawn, whole).or(() -> widened(drawn));
      if (found.isPresent()) {
        return found.get();
      }
      int stronger = drawn.figures.screws() + 1;
      if (!whole.screws().met() && stronger < WheelShape.screws(hub).size()) {
        last = Optional.of(new ScrewsLetGo());
        figures = drawn.figures.screwed(stronger);
      } else {
        last = Optional.of(new Yields(whole.worst().field().load().name()));
        figures = thicker(drawn.figures, whole).wider(WIDER);
      }
    }
    return new None(last.orElseThrow(), nearest());
  }

  /** A drawn text that was read and reviewed. */
  private record Tried(Figures figures, Drawn drawn, Study study) {}

  private Tried tried(Figures figures) {
    Drawn drawn = WheelShape.of(wish, hub, figures);
    return new Tried(figures, drawn, study(drawn.text()));
  }

  /** One keeps what is wrong with all that it reads; so each text gets its own. */
  private Studies studies() {
    return new Studies(folder, Optional.empty());
  }

  private Study study(String text) {
    return studies().one(ShapeSource.text(wish.name(), text));
  }

  /** With the first screws with which the review fails nothing; as begun where none are such. */
  private Tried sound(Figures figures) {
    Tried first = gripped(figures);
    int most = WheelShape.screws(hub).size();
    if (!screws(first.study)) {
      return first;
    }
    for (int i = figures.screws() + 1; i < most; i++) {
      Tried other = tried(first.figures.screwed(i));
      if (!other.study.fails()) {
        return other;
      }
    }
    return first;
  }

  /** Whether it is screws of the hub that fail the review. */
  private static boolean screws(Study study) {
    return study.findings().stream()
        .anyMatch(one -> one.verdict() == Verdict.FAIL && SCREWS.contains(one.rule()));
  }

  /** With the grip that makes its rim as thick as the hand wants it, and suits a screw's length. */
  private Tried gripped(Figures figures) {
    Tried first = tried(figures);
    double girth =
        first.study.findings().stream()
            .filter(one -> one.rule().equals("grip-girth-least"))
            .mapToDouble(one -> one.figure().value())
            .min()
            .orElse(wish.hand().girth());
    // A millimetre of scale on both faces goes four times round.
    double scale = first.figures.grip() + (wish.hand().girth() - girth) / 4;
    double even = Math.round(2 * Math.max(THINNEST_GRIP, Math.min(THICKEST_GRIP, scale))) / 2.0;
    Tried best = even == figures.grip() ? first : tried(figures.gripped(even));
    for (double off : ABOUT) {
      if (ends(best.study)) {
        Tried other = tried(figures.gripped(Math.max(THINNEST_GRIP, even + off)));
        best = ends(other.study) ? best : other;
      }
    }
    return best;
  }

  /** Whether a screw ends too far out of its nut, or too near. */
  private static boolean ends(Study study) {
    return study.findings().stream()
        .anyMatch(one -> one.verdict() != Verdict.PASS && one.rule().startsWith("screw-end"));
  }

  /** The thinnest that does, proved as it stands. */
  private Optional<Made> thinnest(Tried drawn, LoadOutcome whole) {
    return whole.plan().trials().stream()
        .filter(LoadPlan.Trial::met)
        .map(LoadPlan.Trial::gauge)
        .filter(gauge -> gauge.thickness() <= THICKEST)
        .sorted(Comparator.comparingDouble(Gauge::thickness))
        .map(gauge -> thick(drawn.figures, gauge))
        .map(this::proved)
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Figures thick(Figures figures, Gauge gauge) {
    double t = Math.round(gauge.thickness() * 100) / 100.0;
    return figures.thick(t, gauge.plies().orElse(0));
  }

  private Optional<Made> proved(Figures figures) {
    progress.at("proving it in " + Numbers.brief(figures.thickness(), 2) + " mm", 0, 1);
    return proved(sound(figures));
  }

  private Optional<Made> proved(Tried tried) {
    if (tried.study.fails()) {
      return Optional.empty();
    }
    LoadOutcome own = PlateLoads.own(tried.study, studies());
    // A figure that has not settled may still fall: then more must be left than at the edge.
    boolean sure = own.plan().result().settled() || own.worst().margin() >= UNSETTLED;
    return own.met() && sure
        ? Optional.of(new Made(tried.drawn.text(), tried.study, own, tried.drawn.gave()))
        : Optional.empty();
  }

  /** With wider webs, proved as it stands. */
  private Optional<Made> widened(Tried drawn) {
    LoadOutcome whole = PlateLoads.widened(drawn.study, studies(), progress);
    Optional<Widening.Found> found = whole.widening().flatMap(Widening::found);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    TextEdit text = TextEdit.of(wish.name(), drawn.drawn.text());
    for (ShapeChange.Setting one : found.get().change().settings()) {
      text = text.set(one.key(), one.to());
    }
    Drawn wider = new Drawn(text.text(), drawn.drawn.gave());
    return proved(new Tried(drawn.figures, wider, study(wider.text())));
  }

  /** The thickest that was tried, for the next round. */
  private static Figures thicker(Figures figures, LoadOutcome whole) {
    return whole.plan().trials().stream()
        .map(LoadPlan.Trial::gauge)
        .filter(gauge -> gauge.thickness() <= THICKEST)
        .max(Comparator.comparingDouble(Gauge::thickness))
        .map(gauge -> thick(figures, gauge))
        .orElse(figures);
  }

  /** What is drawn first: in the thickness that is sold nearest to the usual one. */
  private Figures begin() {
    boolean laidUp = Materials.builtIn().find(wish.material()).orElseThrow().laidUp();
    double thickness =
        MaterialBook.builtIn().sheets().values().stream()
            .filter(sheet -> !laidUp && sheet.material().equals(wish.material()))
            .flatMap(sheet -> sheet.thicknesses().stream())
            .min(Comparator.comparingDouble(t -> Math.abs(t - BEGIN)))
            .orElse(BEGIN);
    return new Figures(RIM, 0, thickness, 0, GRIP, 0);
  }

  /** Another stock, which passes the review at least. */
  private Optional<WheelWish> nearest() {
    return materials().stream()
        .filter(material -> !material.name().equals(wish.material()))
        .map(material -> wish.of(material.name()))
        .filter(other -> reviewed(other, folder))
        .findFirst();
  }

  /** Whether what is drawn first passes its review; its loads are not reckoned. */
  static boolean reviewed(WheelWish wish, Path folder) {
    NewWheel wheel = new NewWheel(wish, folder, Progress.SILENT);
    return !wheel.sound(wheel.begin()).study.fails();
  }

  private static Optional<Why> fault(Study study) {
    return study.review().with(Verdict.FAIL).stream().map(one -> (Why) new Fails(one)).findFirst();
  }
}
