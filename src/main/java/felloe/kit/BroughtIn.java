package felloe.kit;

import felloe.bringin.Asked;
import felloe.bringin.BringIn;
import felloe.bringin.PhotoMeasured;
import felloe.bringin.PhotoTold;
import felloe.bringin.PlateOutline;
import felloe.bringin.Sizing;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.hub.HubCatalogue;
import felloe.hub.HubSpec;
import felloe.out.PhotoOverlay;
import felloe.out.ShapeText;
import felloe.plate.BadInput;
import felloe.plate.HubPattern;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A shape file made of an outline that existed, read back and held against it.
 *
 * @param text the shape file
 * @param drawn what was read
 * @param plate what the text makes
 * @param apart the greatest distance between the source's lines and the plate's, mm
 * @param photo how well it was measured, when the source is a photo
 * @param overlay then the found lines on the photo, as a PNG picture
 */
public record BroughtIn(
    String text,
    PlateOutline drawn,
    Plate plate,
    double apart,
    Optional<PhotoTold> photo,
    Optional<byte[]> overlay) {

  /** Bytes beyond this are not read: {@link BringIn} refuses what is as large. */
  private static final int MOST = BringIn.MOST_BYTES + 1;

  /** Farther off than so many tolerances is a fault, told and not written. */
  private static final double SLACK = 3;

  /** Rounding of double arithmetic, mm. */
  private static final double NOTHING = 1e-5;

  /**
   * Reads a source and makes the text.
   *
   * @param name of the shape file, for messages
   * @throws BadInput when the source cannot be read, or what it draws is no plate
   */
  public static BroughtIn of(Path source, String name, BringIn.Wish wish, Path folder) {
    return of(bytes(source), source, name, wish, folder);
  }

  /**
   * A drawing, table or photo that was sent, and lies on no disk.
   *
   * @param bytes of it
   * @param file its name, which tells its kind, and for messages
   * @param width of all that is drawn, mm; empty where the drawing's own units count
   * @param scale mm for each unit of the drawing; empty likewise
   * @param gap ends nearer than this are one, mm; empty for the usual
   * @param thickness of the part on a photo, mm
   * @param cameraHeight from the paper to the lens, mm, if it was measured
   */
  public record Sent(
      byte[] bytes,
      String file,
      OptionalDouble width,
      OptionalDouble scale,
      OptionalDouble gap,
      OptionalDouble thickness,
      OptionalDouble cameraHeight) {}

  /**
   * Reads what was sent, and makes the text. What was found on a photo must be looked at.
   *
   * @param name of the shape file, for messages
   * @throws BadInput when the source cannot be read, or what it draws is no plate
   */
  public static BroughtIn of(Sent sent, String name, Path folder) {
    BringIn.Wish wish =
        new BringIn.Wish(
            new Sizing(sent.width(), sent.scale()),
            sent.gap(),
            OptionalDouble.empty(),
            sent.thickness(),
            sent.cameraHeight(),
            new Asked(
                "the field Width",
                "the field Scale",
                "the field Gap",
                "the field Thickness",
                "the field Camera height",
                "printed marks"));
    return of(sent.bytes(), Path.of(sent.file()), name, wish, folder);
  }

  private static BroughtIn of(
      byte[] bytes, Path source, String name, BringIn.Wish wish, Path folder) {
    Optional<PhotoMeasured> photo =
        BringIn.isPhoto(bytes, source.toString())
            ? Optional.of(BringIn.photo(bytes, source.toString(), wish))
            : Optional.empty();
    PlateOutline drawn =
        photo.map(PhotoMeasured::plate).orElseGet(() -> BringIn.of(bytes, source.toString(), wish));
    double within = wish.within().orElse(photo.isPresent() ? BringIn.PHOTO : BringIn.WITHIN);
    List<HubPattern> hubs = new HubCatalogue(folder).all().stream().map(HubSpec::pattern).toList();
    String title = stem(name);
    String file = source.getFileName().toString();
    ShapeText.Wish told = new ShapeText.Wish(title, file, within, wish.thickness());
    String first = ShapeText.of(drawn, told, hubs, drawn.off());
    Plate plate = plate(first, name, source, folder);
    double apart = up(drawn.off() + apart(drawn, plate));
    if (apart > drawn.off() + SLACK * within) {
      throw new BadInput(
          new Problem(
              Place.ofFile(source.toString()),
              "",
              "",
              "has a line that a shape file cannot hold nearer than "
                  + Numbers.brief(apart, 3)
                  + " mm",
              "draw it in lines and arcs, and tell us of it"));
    }
    String text = ShapeText.of(drawn, told, hubs, apart);
    return new BroughtIn(
        text,
        drawn,
        plate,
        apart,
        photo.map(PhotoMeasured::told),
        photo.map(p -> PhotoOverlay.of(p.picture(), plate)));
  }

  /** Where the overlay of a shape file lies: beside it. */
  public static Path overlay(Path file) {
    return file.resolveSibling(stem(file.toString()) + "-photo.png");
  }

  private static String stem(String name) {
    String last = Path.of(name).getFileName().toString();
    int dot = last.lastIndexOf('.');
    return dot > 0 ? last.substring(0, dot) : last;
  }

  /** To the next thousandth: what is told is a bound. */
  private static double up(double distance) {
    return distance < NOTHING ? 0 : Math.ceil(distance * 1000) / 1000;
  }

  private static Plate plate(String text, String name, Path source, Path folder) {
    try {
      return Studies.plate(ShapeSource.text(name, text), folder);
    } catch (BadInput clash) {
      // The text was not written, so that its lines say nothing to the maker.
      Place place = Place.ofFile(source.toString());
      throw new BadInput(
          clash.problems().stream()
              .map(
                  p ->
                      new Problem(
                          place, p.who(), p.value(), "draws no plate: " + p.wanted(), p.cure()))
              .toList(),
          clash.more());
    }
  }

  private static byte[] bytes(Path file) {
    Place place = Place.ofFile(file.toString());
    if (!Files.exists(file)) {
      throw new BadInput(
          new Problem(place, "", "", "does not exist", "check the name and the folder"));
    }
    if (!Files.isRegularFile(file)) {
      throw new BadInput(
          new Problem(place, "", "", "is no file", "name a drawing, a table or a photo"));
    }
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(MOST);
    } catch (IOException failure) {
      throw new BadInput(
          new Problem(
              place, "", "", "cannot be read: " + failure.getMessage(), "check who may read it"));
    }
  }

  /** From what was drawn to the plate and back, line by line. */
  private static double apart(PlateOutline drawn, Plate plate) {
    List<Contour> ours = new ArrayList<>(plate.region().contours());
    double far = 0;
    for (Contour contour : drawn.drawn()) {
      Contour like = nearest(contour, ours);
      far = Math.max(far, contour.apart(like));
    }
    return far;
  }

  private static Contour nearest(Contour contour, List<Contour> others) {
    Contour best = others.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (Contour other : others) {
      double off =
          contour.box().centre().distance(other.box().centre())
              + Math.abs(contour.box().width() - other.box().width());
      if (off < least) {
        least = off;
        best = other;
      }
    }
    return best;
  }
}
