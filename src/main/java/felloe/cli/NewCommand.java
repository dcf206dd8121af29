package felloe.cli;

import felloe.bringin.Asked;
import felloe.bringin.BringIn;
import felloe.bringin.Sizing;
import felloe.files.CannotWrite;
import felloe.kit.BroughtIn;
import felloe.kit.Kit;
import felloe.report.BroughtInReport;
import felloe.service.NewShape;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** A shape file to start from. */
final class NewCommand implements Command {

  private static final Opt<String> FAMILY =
      Opt.argument(
          "FAMILY",
          "0..1",
          Read::text,
          "The outline: "
              + String.join(", ", NewShape.families())
              + ". With --from, the file to write instead.");
  private static final Opt<Path> FILE =
      Opt.argument("FILE", "0..1", Read::path, "The file to write. Usually FAMILY.yaml, here.");
  private static final Opt<Path> FROM =
      Opt.one(
          "--from",
          "SOURCE",
          Read::path,
          "Take the outline from a drawing (.svg, .dxf), a table of points (.csv), or a photo of"
              + " the part among the sheets of 'template --photo-frame' (.jpg, .png).");
  private static final Opt<Double> WIDTH =
      Opt.one(
          "--width",
          "MM",
          Read.length(10, 2_000),
          "Width of what is drawn, for a drawing whose units mean nothing.");
  private static final Opt<Double> SCALE =
      Opt.one(
          "--scale",
          "MM",
          Read.number(0.0001, 10_000, ""),
          "Millimetres for each unit of the drawing: 1 for mm, 25.4 for inches.");
  private static final Opt<Double> GAP =
      Opt.one(
          "--gap",
          "MM",
          Read.length(0.001, 5),
          "Ends of lines that are nearer than this are one. Usually 0.05.");
  private static final Opt<Double> WITHIN =
      Opt.one(
          "--within",
          "MM",
          Read.length(0.001, 2),
          "How far arcs may lie from the chords and curves that they stand for. Usually 0.05; 0.15"
              + " for a photo.");
  private static final Opt<Double> THICKNESS =
      Opt.one(
          "--thickness",
          "MM",
          Read.length(0.3, 60),
          "Thickness of the part on a photo: its upper face stands nearer to the camera.");
  private static final Opt<Double> CAMERA_HEIGHT =
      Opt.one(
          "--camera-height",
          "MM",
          Read.length(100, 10_000),
          "From the paper to the camera's lens, measured by tape: for a photo from straight above,"
              + " which hardly tells it.");

  /** Shared by commands that write a file which the maker may edit. */
  static final Opt<Boolean> FORCE =
      Opt.flag("--force", "Replace the file when it is there already.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "new",
            "Writes a commented shape file to start from, which makes a good wheel as it stands; or"
                + " one for an outline that exists.");
    Options.add(
        spec, FAMILY, FILE, FROM, WIDTH, SCALE, GAP, WITHIN, THICKNESS, CAMERA_HEIGHT, FORCE);
    Options.examples(
        spec,
        "  felloe new round",
        "  felloe new points curlew.yaml",
        "  felloe new --from cutout.svg redshank.yaml",
        "  felloe new --from friend.dxf --scale 25.4",
        "  felloe new --from wheel.jpg dotterel.yaml --thickness 9");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    if (FROM.given(call)) {
      return bringIn(call, screen, kit);
    }
    Options.refuse(
        call,
        "only counts for " + FROM.name(),
        "add that, or take this out",
        WIDTH,
        SCALE,
        GAP,
        WITHIN,
        THICKNESS,
        CAMERA_HEIGHT);
    if (!FAMILY.given(call)) {
      throw Read.wrong(
          "new",
          "needs the FAMILY of the outline, or --from SOURCE",
          "say one of " + String.join(", ", NewShape.families()));
    }
    String family = FAMILY.in(call).orElseThrow();
    String text = NewShape.text(family);
    Path file = FILE.in(call).orElseGet(() -> Read.path(FILE.name(), family + ".yaml"));
    write(call, kit, file, text);
    screen.line(file.toString());
    screen.say("Change what you like, then: felloe check " + file);
    return Exit.WELL;
  }

  private static void write(ParseResult call, Kit kit, Path file, String text) throws CannotWrite {
    if (FORCE.given(call)) {
      kit.replace(file, text);
    } else {
      kit.writeNew(file, text, "name another file, or replace this one with " + FORCE.name());
    }
  }

  private int bringIn(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    Path source = FROM.in(call).orElseThrow();
    if (FILE.given(call)) {
      throw Read.wrong(
          FROM.name(), "takes one file to write, and no family", "leave the family out");
    }
    if (WIDTH.given(call) && SCALE.given(call)) {
      throw Read.wrong(WIDTH.name(), "cannot stand beside " + SCALE.name(), "give one of them");
    }
    Path file =
        FAMILY
            .in(call)
            .map(name -> Read.path(FILE.name(), name))
            .orElseGet(() -> Path.of(stem(source) + ".yaml"));
    Sizing sizing = new Sizing(optional(WIDTH, call), optional(SCALE, call));
    BringIn.Wish wish =
        new BringIn.Wish(
            sizing,
            optional(GAP, call),
            optional(WITHIN, call),
            optional(THICKNESS, call),
            optional(CAMERA_HEIGHT, call),
            new Asked(
                WIDTH.name(),
                SCALE.name(),
                GAP.name(),
                THICKNESS.name(),
                CAMERA_HEIGHT.name(),
                "felloe template " + TemplateCommand.PHOTO_FRAME.name()));
    BroughtIn brought = BroughtIn.of(source, file.toString(), wish, kit.folder());
    Optional<Path> overlay = brought.overlay().map(picture -> BroughtIn.overlay(file));
    if (overlay.isPresent()) {
      String cure = "name another file, or replace both with " + FORCE.name();
      byte[] picture = brought.overlay().orElseThrow();
      kit.writeBoth(file, brought.text(), overlay.get(), picture, FORCE.given(call), cure);
    } else {
      write(call, kit, file, brought.text());
    }
    screen.line(file.toString());
    overlay.ifPresent(picture -> screen.line(picture.toString()));
    BroughtInReport.of(brought.drawn(), brought.plate(), brought.apart(), brought.photo())
        .forEach(screen::say);
    screen.say("Measure the part and compare. Then: felloe check " + file);
    return Exit.WELL;
  }

  private static OptionalDouble optional(Opt<Double> opt, ParseResult call) {
    return opt.in(call).map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private static String stem(Path source) {
    // The root of a disk has no name, and is told to be no file.
    String name = source.getFileName() == null ? "outline" : source.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
