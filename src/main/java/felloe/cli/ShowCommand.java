package felloe.cli;

import felloe.files.CannotWrite;
import felloe.files.Written;
import felloe.kit.Kit;
import felloe.kit.PictureFiles;
import felloe.plate.BadInput;
import felloe.plate.Plate;
import felloe.plate.Sketch;
import felloe.report.ShowReport;
import felloe.service.ShapeSource;
import felloe.service.ShowOutcome;
import felloe.service.Studies;
import felloe.service.Study;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Key figures, exact geometry, picture. */
final class ShowCommand implements Command {

  private static final Opt<Path> OUT =
      Options.folder(
          "Folder for the picture SHAPE.png, in a folder of the shape's name; else none.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "show",
            "Shows the key figures of a plate; as JSON, its exact geometry; with --out, its"
                + " picture, also of a plate whose windows or holes clash.");
    Options.shapes(spec, false);
    Options.add(spec, OUT);
    Answers.format(spec);
    Options.examples(
        spec,
        "  felloe show heron.yaml",
        "  felloe show heron.yaml --out pictures",
        "  felloe show heron.yaml --format json > heron.json");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    ShapeSource shape = Options.shape(call);
    ShowOutcome outcome;
    try {
      outcome = outcome(call, shape, kit);
    } catch (BadInput bad) {
      clashes(call, screen, kit, shape);
      throw bad;
    }
    Written written = Written.NONE;
    if (OUT.given(call)) {
      written = PictureFiles.into(kit.into(OUT.in(call).get()), outcome).commit();
    }
    Answers.show(call, screen, outcome, written, () -> ShowReport.of(outcome));
    return Exit.WELL;
  }

  /** The review is asked only for a picture, on which its findings are marked. */
  private static ShowOutcome outcome(ParseResult call, ShapeSource shape, Kit kit) {
    if (!OUT.given(call)) {
      Plate plate = Studies.plate(shape, kit.folder());
      return ShowOutcome.of(plate, List.of());
    }
    Studies studies = new Studies(kit.folder(), Optional.empty());
    Study study = studies.advised(studies.one(shape));
    return ShowOutcome.of(study.plate(), study.findings());
  }

  /** What cannot be a plate is shown all the same, where only its features clash. */
  private static void clashes(ParseResult call, Screen screen, Kit kit, ShapeSource shape)
      throws CannotWrite {
    Optional<Sketch> sketch = Studies.sketch(shape, kit.folder());
    if (sketch.isPresent() && OUT.given(call)) {
      PictureFiles.into(kit.into(OUT.in(call).get()), sketch.get())
          .commit()
          .files()
          .forEach(file -> screen.say("Written, what clashes marked: " + file));
    } else if (sketch.isPresent()) {
      screen.say("To see what clashes, add " + OUT.name() + " DIR.");
    }
  }
}
