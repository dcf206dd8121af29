package felloe.cli;

import felloe.plate.BadInput;
import felloe.service.LayupPlanning;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.yaml.Overrides;
import felloe.yaml.Problems;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * Options that several commands share, and how they are read. All values are taken as text, so that
 * what is wrong with one is said in the same words wherever it was written.
 */
final class Options {

  /** The option that names the folder for files. */
  static final String FOLDER = "--out";

  static final Path USUAL_OUT = Path.of("templates-out");

  /** The one shape of a call. */
  private static final Opt<Path> SHAPE = Opt.argument("SHAPE", "1", Read::path, "The shape file.");

  private static final Opt<Path> SHAPES =
      Opt.argument("SHAPE", "0..*", Read::path, "Shape files, each with a name of its own.");

  /** Values to take instead of a shape file's. */
  static final Opt<String> SETS = sets("outline.round.diameter=280 or windows[0].label=L");

  /** The hub to compare with. */
  static final Opt<String> HUB =
      Opt.one(
          "--hub",
          "HUB",
          Read::text,
          "Compare with this hub instead of the shape file's own: a name from 'felloe hub list',"
              + " or a hub file.");

  /** Materials of the maker's own. */
  static final Opt<Path> MATERIALS =
      Opt.one(
          "--materials",
          "FILE",
          Read::path,
          "Your own materials and prices, beside those that are known.");

  private Options() {}

  /** A command with a heading line and what it does. */
  static CommandSpec command(String name, String... description) {
    CommandSpec spec = CommandSpec.create().name(name);
    spec.usageMessage()
        .synopsisHeading("Usage: ")
        .description(description)
        .descriptionHeading("%n")
        .parameterListHeading("%n")
        .optionListHeading("%nOptions%n")
        .abbreviateSynopsis(true)
        .sortOptions(false)
        .commandListHeading("")
        .width(96);
    spec.addOption(
        OptionSpec.builder("-h", "--help")
            .usageHelp(true)
            .order(1000)
            .description("Show this help.")
            .build());
    return spec;
  }

  /** Examples at the end of a command's help. */
  static void examples(CommandSpec spec, String... lines) {
    spec.usageMessage().footerHeading("%nExamples%n").footer(lines);
  }

  /** One shape file, or several. */
  static void shapes(CommandSpec spec, boolean several) {
    add(spec, several ? SHAPES : SHAPE, SETS);
  }

  /** Values to take instead of a file's. */
  static Opt<String> sets(String examples) {
    return Opt.many(
        "--set",
        "PATH=VALUE",
        Read::text,
        "Another value than the file's, such as " + examples + ".");
  }

  /** The folder that files go to. */
  static Opt<Path> folder(String help) {
    return Opt.one(FOLDER, "DIR", Read::path, help);
  }

  /** Adds options to a command, in order. */
  static void add(CommandSpec spec, Opt<?>... options) {
    for (Opt<?> option : options) {
      spec.add(option.spec(spec.positionalParameters().size()));
    }
  }

  /** Options under a heading of their own. */
  static void group(CommandSpec spec, String heading, int order, Opt<?>... options) {
    ArgGroupSpec.Builder group =
        ArgGroupSpec.builder()
            .heading("%n" + heading + "%n")
            .exclusive(false)
            .multiplicity("0..1")
            .validate(false)
            .order(order);
    for (Opt<?> option : options) {
      group.addArg(option.spec(0));
    }
    spec.addArgGroup(group.build());
  }

  /** Options that count for nothing here are not passed over in silence. */
  static void refuse(ParseResult call, String wanted, String cure, Opt<?>... options) {
    for (Opt<?> option : options) {
      if (option.given(call)) {
        throw Read.wrong(option.name(), wanted, cure);
      }
    }
  }

  /** The shapes of a call. */
  static List<ShapeSource> shapes(ParseResult call) {
    Overrides overrides = new Overrides(SETS.place(), SETS.all(call));
    return SHAPES.all(call).stream().map(file -> ShapeSource.file(file, overrides)).toList();
  }

  /** The shapes of a call that needs one at least. */
  static List<ShapeSource> someShapes(ParseResult call) {
    List<ShapeSource> shapes = shapes(call);
    if (shapes.isEmpty()) {
      throw Read.wrong("SHAPE", "must name at least one shape file", "write heron.yaml, say");
    }
    return shapes;
  }

  /** The one shape of a call. */
  static ShapeSource shape(ParseResult call) {
    return shapes(call).get(0);
  }

  /** Tells what is wrong with the files of a call whose options are wrong as well. */
  static void readable(ParseResult call, Path folder, Problems problems) {
    try {
      LayupPlanning.book(MATERIALS.in(call), folder);
    } catch (BadInput bad) {
      problems.add(bad);
    }
    for (ShapeSource shape : shapes(call)) {
      try {
        new Studies(folder, HUB.requested(call)).one(shape);
      } catch (BadInput bad) {
        // The hub is the same for all.
        bad.problems().forEach(problems::addOnce);
      }
    }
  }
}
