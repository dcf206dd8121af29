package felloe.shape;

import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import felloe.geometry.Tolerances;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.Stock;
import felloe.plate.Window;
import felloe.yaml.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads texts and marks that are engraved, and holds them against outline, windows and holes. */
final class EngravingReader {

  private static final int MOST_ITEMS = 50;
  private static final int LONGEST_TEXT = 40;

  /** Letters are at least so high, mm: the smallest nominal size of ISO 3098-1 is 1.8. */
  private static final double SMALLEST = 1.8;

  /** Depth of the pass when the file says none, mm: common practice for a line that is filled. */
  private static final double DEPTH = 0.3;

  private final GeometryProblems reports;
  private final Labels labels;
  private final List<Engraving> engravings = new ArrayList<>();
  private Optional<Letters> letters = Optional.empty();

  EngravingReader(GeometryProblems reports, Labels labels) {
    this.reports = reports;
    this.labels = labels;
  }

  /**
   * Reads the list {@code engravings}.
   *
   * @param stock tells how deep an engraving may be, when it was read well
   */
  List<Engraving> read(Fields top, Optional<Stock> stock) {
    List<Fields> items = top.list("engravings").atMost(MOST_ITEMS).mappings();
    for (Fields f : items) {
      letters = letters.or(() -> Optional.of(Letters.standard()));
      item(f, letters.get(), stock);
    }
    return List.copyOf(engravings);
  }

  private void item(Fields f, Letters alphabet, Optional<Stock> stock) {
    Optional<String> kind = f.exactlyOneOf("text", "mark");
    Optional<String> text = f.text("text").optional();
    Optional<String> mark =
        f.entry("mark").oneOf(alphabet.marks().keySet().toArray(String[]::new)).optional();
    Point at = f.point("at").required();
    double height = f.length("height").atLeast(SMALLEST).atMost(200).or(5);
    double turn = f.angle("turn").or(0);
    Face face = f.oneOf("face", Face.class).or(Face.FRONT);
    double depth = f.length("depth").positive().or(DEPTH);
    text.ifPresent(words -> refuseLetters(f, words, alphabet));
    if (stock.isPresent() && depth > stock.get().thickness() / 2) {
      f.problem(
          "depth",
          "must be at most "
              + Numbers.brief(stock.get().thickness() / 2, 3)
              + " mm here (half the thickness)",
          "an engraving is shallow: 0.2 to 0.5 mm is usual");
    }
    String label = Labels.read(f);
    if (!f.done()) {
      return;
    }
    Optional<Letters.Form> form =
        kind.orElseThrow().equals("mark")
            ? Optional.of(alphabet.marks().get(mark.orElseThrow()))
            : alphabet.text(text.orElseThrow());
    if (form.isEmpty()) {
      f.problem("text", "has no letter", "write some");
      return;
    }
    String wish = labels.wish(f, label, 1);
    engravings.add(
        new Engraving(
            labels.granted(wish, "E"),
            text.or(() -> mark).orElseThrow(),
            face,
            placed(form.get(), height, face, Placing.degrees(at, turn)),
            alphabet.lineWidth() * height,
            depth,
            f.place()));
  }

  private static void refuseLetters(Fields f, String words, Letters alphabet) {
    List<String> lacking = alphabet.lacking(words);
    if (!lacking.isEmpty()) {
      f.problem(
          "text",
          "must be of letters that can be engraved, without " + String.join(" ", lacking),
          "there are: " + alphabet.known());
    } else if (words.codePointCount(0, words.length()) > LONGEST_TEXT) {
      f.problem("text", "must be at most " + LONGEST_TEXT + " characters long", "shorten it");
    }
  }

  /** About its own middle, mirrored where it is read from the back, turned and shifted. */
  private static List<List<Segment>> placed(
      Letters.Form form, double height, Face face, Placing placing) {
    RigidTransform middle = RigidTransform.shift(-form.width() * height / 2, -height / 2);
    RigidTransform seen = face == Face.BACK ? middle.then(RigidTransform.MIRROR) : middle;
    RigidTransform motion = seen.then(placing.motion());
    return form.strokes().stream()
        .map(stroke -> Letters.moved(Letters.scaled(stroke, height), motion))
        .toList();
  }

  /** Reports every engraving that reaches off the plate or comes too near to an edge. */
  void check(Contour outline, List<Window> windows, List<Hole> holes) {
    if (engravings.isEmpty()) {
      return;
    }
    List<Contour> contours = new ArrayList<>();
    List<String> names = new ArrayList<>();
    contours.add(outline);
    names.add("the outline");
    for (Window w : windows) {
      contours.add(w.contour());
      names.add(w.use().words() + " " + w.label());
    }
    for (Hole h : holes) {
      contours.add(h.contour());
      names.add(h.role().words() + " " + h.label());
    }
    SegmentIndex index = SegmentIndex.of(contours);
    int[] owners = new int[contours.stream().mapToInt(c -> c.segments().size()).sum()];
    int next = 0;
    for (int c = 0; c < contours.size(); c++) {
      for (int k = 0; k < contours.get(c).segments().size(); k++) {
        owners[next++] = c;
      }
    }
    for (Engraving engraving : engravings) {
      check(engraving, contours, names, index, owners);
    }
  }

  private void check(
      Engraving engraving,
      List<Contour> contours,
      List<String> names,
      SegmentIndex index,
      int[] owners) {
    double wanted = engraving.lineWidth() / 2 + letters.orElseThrow().clear();
    String what = "engraving " + engraving.label();
    for (List<Segment> stroke : engraving.strokes()) {
      Point start = stroke.get(0).from();
      for (int c = 0; c < contours.size(); c++) {
        if (contours.get(c).contains(start) != (c == 0)) {
          report(engraving, what, "lies off the plate, in or beyond " + names.get(c));
          return;
        }
      }
    }
    double[] least = {wanted};
    int[] nearest = {-1};
    engraving.strokes().stream()
        .flatMap(List::stream)
        .forEach(
            segment ->
                index.touching(
                    segment.box().grown(wanted),
                    i -> {
                      double gap = Gap.between(segment, index.get(i)).distance();
                      if (gap < least[0] - Tolerances.ROUNDING) {
                        least[0] = gap;
                        nearest[0] = owners[i];
                      }
                    }));
    if (nearest[0] >= 0) {
      report(
          engraving,
          what,
          (least[0] == 0 ? "crosses " : "comes within " + Numbers.brief(least[0], 2) + " mm of ")
              + names.get(nearest[0])
              + "; "
              + Numbers.brief(wanted, 2)
              + " mm from the middle of a line is the least");
    }
  }

  private void report(Engraving engraving, String what, String wanted) {
    reports.add(
        engraving.place(), what, engraving.what(), wanted, "move it, or make its height less");
  }
}
