package felloe.plate;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Region;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The flat part that is cut: the one model that every check, page and file reads. Axes: x to the
 * driver's right, y up, origin on the hub axis, as the driver sees the wheel. Millimetres.
 *
 * @param name short name, fit for a file name, such as {@code heron}
 * @param title its name in words
 * @param revision eight hexadecimal digits that change when the shape file changes; no date
 * @param outline its outer edge
 * @param windows openings cut through it
 * @param holes round and slotted holes: bolt holes, bore, grip screws and others
 * @param boltCircles the rings that its bolt holes stand on
 * @param hub name of the hub spec it is to meet, if the shape file names one
 * @param stock what it is cut from
 * @param making how the maker means to work
 * @param limits review limits that the shape file sets
 * @param notes what the maker should know about how it came about
 * @param joints what the maker says of its joints; holes that none of them names have the usual one
 * @param load what the maker says of loads on it
 * @param engravings texts and marks cut shallow into a face
 * @param grips what hands close about, along the rim; none where the plate is held bare or by flat
 *     scales
 * @param bodies what sits in windows and holes
 * @param cockpit where it sits in the car, if the shape file tells
 */
public record Plate(
    String name,
    String title,
    String revision,
    Contour outline,
    List<Window> windows,
    List<Hole> holes,
    List<BoltCircle> boltCircles,
    Optional<String> hub,
    Stock stock,
    Making making,
    List<LimitOverride> limits,
    List<Note> notes,
    List<Joint> joints,
    LoadWish load,
    List<Engraving> engravings,
    List<Grip> grips,
    List<Body> bodies,
    Optional<Cockpit> cockpit) {

  /** A plate without engravings, grips and bodies, of whose car nothing is known. */
  public Plate(
      String name,
      String title,
      String revision,
      Contour outline,
      List<Window> windows,
      List<Hole> holes,
      List<BoltCircle> boltCircles,
      Optional<String> hub,
      Stock stock,
      Making making,
      List<LimitOverride> limits,
      List<Note> notes,
      List<Joint> joints,
      LoadWish load) {
    this(
        name,
        title,
        revision,
        outline,
        windows,
        holes,
        boltCircles,
        hub,
        stock,
        making,
        limits,
        notes,
        joints,
        load,
        List.of(),
        List.of(),
        List.of(),
        Optional.empty());
  }

  /** A plate of which nothing is said about loads. */
  public Plate(
      String name,
      String title,
      String revision,
      Contour outline,
      List<Window> windows,
      List<Hole> holes,
      List<BoltCircle> boltCircles,
      Optional<String> hub,
      Stock stock,
      Making making,
      List<LimitOverride> limits,
      List<Note> notes,
      List<Joint> joints) {
    this(
        name,
        title,
        revision,
        outline,
        windows,
        holes,
        boltCircles,
        hub,
        stock,
        making,
        limits,
        notes,
        joints,
        LoadWish.NONE);
  }

  /** A plate of which nothing is said about its joints. */
  public Plate(
      String name,
      String title,
      String revision,
      Contour outline,
      List<Window> windows,
      List<Hole> holes,
      List<BoltCircle> boltCircles,
      Optional<String> hub,
      Stock stock,
      Making making,
      List<LimitOverride> limits,
      List<Note> notes) {
    this(
        name,
        title,
        revision,
        outline,
        windows,
        holes,
        boltCircles,
        hub,
        stock,
        making,
        limits,
        notes,
        List.of());
  }

  /**
   * Refuses windows and holes that do not lie inside the outline and clear of each other, so that
   * {@link #region()} always exists.
   *
   * @throws felloe.geometry.GeometryException saying which and where
   */
  public Plate {
    windows = List.copyOf(windows);
    holes = List.copyOf(holes);
    boltCircles = List.copyOf(boltCircles);
    limits = List.copyOf(limits);
    notes = List.copyOf(notes);
    joints = List.copyOf(joints);
    engravings = List.copyOf(engravings);
    grips = List.copyOf(grips);
    bodies = List.copyOf(bodies);
    regionOf(outline, windows, holes);
  }

  private static Region regionOf(Contour outline, List<Window> windows, List<Hole> holes) {
    List<Contour> openings = new ArrayList<>();
    windows.forEach(window -> openings.add(window.contour()));
    holes.forEach(hole -> openings.add(hole.contour()));
    return new Region(outline, openings);
  }

  /** The material: inside the outline, outside every window and hole (windows first). */
  public Region region() {
    return regionOf(outline, windows, holes);
  }

  /** The holes with a role, in order. */
  public List<Hole> holes(HoleRole role) {
    return holes.stream().filter(hole -> hole.role() == role).toList();
  }

  /** What is cut shallow into a face, in order. */
  public List<Engraving> engravings(Face face) {
    return engravings.stream().filter(engraving -> engraving.face() == face).toList();
  }

  /**
   * All holes that are drilled, sawn or slotted at the bench: the holes in their order, then the
   * round windows as holes of the role {@link HoleRole#WINDOW}, under their own labels.
   *
   * @param largestSaw diameter of the largest hole saw or cutter, mm; wider windows are cut along
   *     their line like any other
   */
  public List<Hole> benchHoles(double largestSaw) {
    List<Hole> all = new ArrayList<>(holes);
    for (Window window : windows) {
      window
          .asHole()
          .filter(hole -> hole.diameter() <= largestSaw + Tolerances.SAME_POINT)
          .ifPresent(all::add);
    }
    return List.copyOf(all);
  }

  /** The smallest upright box round the plate. */
  public Box box() {
    return outline.box();
  }

  /** Mass of the finished plate, grams: the only place where it is reckoned. */
  public double mass() {
    return stock.mass(region().properties().area());
  }

  /** The same plate of another stock. */
  public Plate with(Stock other) {
    return with(holes, other, notes, joints);
  }

  /** The same plate with one thing more that the maker should know. */
  public Plate with(Note note) {
    List<Note> more = new ArrayList<>(notes);
    more.add(note);
    return with(holes, stock, more, joints);
  }

  /** The same plate, without the folders before the names of files in its notes. */
  public Plate withoutFolders() {
    List<Note> bare =
        notes.stream().map(n -> new Note(n.place().withoutFolders(), n.text())).toList();
    return with(holes, stock, bare, joints);
  }

  /**
   * The same plate with other holes, joined otherwise.
   *
   * @throws felloe.geometry.GeometryException when a hole has no room
   */
  public Plate with(List<Hole> otherHoles, List<Joint> otherJoints) {
    return with(otherHoles, stock, notes, otherJoints);
  }

  private Plate with(List<Hole> holes, Stock stock, List<Note> notes, List<Joint> joints) {
    return new Plate(
        name,
        title,
        revision,
        outline,
        windows,
        holes,
        boltCircles,
        hub,
        stock,
        making,
        limits,
        notes,
        joints,
        load,
        engravings,
        grips,
        bodies,
        cockpit);
  }
}
