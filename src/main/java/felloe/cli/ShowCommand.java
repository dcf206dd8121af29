package felloe.cli;

import felloe.document.Phrase;
import felloe.files.CannotWrite;
import felloe.kit.Kit;
import felloe.kit.ShowAnswer;
import felloe.plate.Figure;
import felloe.plate.Plate;
import felloe.service.ShapeSource;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Key figures, exact geometry, picture. */
final class ShowCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "show",
            "Shows the key figures of a plate; as JSON, its exact geometry; with --out, its"
                + " picture.");
    Options.shapes(spec, false);
    spec.addOption(Options.out("Folder to write the picture SHAPE.png to; else none is made."));
    spec.addOption(Options.format("text or json"));
    Options.examples(
        spec,
        "  felloe show heron.yaml",
        "  felloe show heron.yaml --out pictures",
        "  felloe show heron.yaml --format json > heron.json");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    String format = Options.chosenFormat(call, "text", "json");
    ShapeSource shape = Options.shape(call);
    Optional<Path> out = Options.chosenOut(call);
    ShowAnswer answer = kit.show(shape);
    Path picture = out.isPresent() ? kit.picture(shape, out.get()) : null;
    if (format.equals("json")) {
      screen.data(answer.json());
    } else {
      text(screen, answer);
    }
    if (picture != null) {
      screen.say("Picture: " + picture);
    }
    return Exit.WELL;
  }

  private static void text(Screen screen, ShowAnswer answer) {
    Plate plate = answer.plate();
    screen.line(plate.title() + " (revision " + plate.revision() + ")");
    screen.line(
        plate.stock().material().title()
            + "; "
            + Phrase.count(plate.windows().size(), "window")
            + ", "
            + Phrase.count(plate.holes().size(), "hole")
            + plate.hub().map(hub -> "; for hub " + hub).orElse(""));
    screen.line("");
    Table table = new Table("lrl");
    for (Figure figure : answer.figures()) {
      table.row(figure.name(), Figures.column(figure.value(), figure.unit()), figure.unit());
    }
    table.lines().forEach(screen::line);
  }
}
