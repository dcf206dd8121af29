package felloe.kit;

import static java.nio.charset.StandardCharsets.UTF_8;

import felloe.files.CannotWrite;
import felloe.files.Disk;
import felloe.files.OutFile;
import felloe.files.SingleFile;
import felloe.geometry.Numbers;
import felloe.load.DesignSpace;
import felloe.load.FigureRange;
import felloe.load.TriedDesign;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.service.DesignSearch;
import felloe.service.PlateLoads;
import felloe.service.Study;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a search tried, as a table in a file, by which a search that was stopped goes on. Its first
 * line tells what was searched; a file of another search is refused and left as it is.
 */
public final class DesignFile implements DesignSearch.Keeper {

  /** A larger file is none of ours. */
  private static final int MOST = 1 << 22;

  private static final int PLACES = 6;

  private final Path out;
  private final String name;
  private final Disk disk;
  private final String head;
  private final List<FigureRange> spans;

  DesignFile(
      Path out,
      Disk disk,
      Path folder,
      Study study,
      PlateLoads.Request request,
      DesignSpace space) {
    this.out = out.resolve(study.plate().name());
    this.name = study.plate().name() + "-designs.csv";
    this.disk = disk;
    this.head = head(folder, study, request, space);
    this.spans = space.spans();
  }

  private static String head(
      Path folder, Study study, PlateLoads.Request request, DesignSpace space) {
    List<String> words = new ArrayList<>();
    words.add("# felloe " + Kit.version());
    words.add(study.plate().name() + " revision " + study.plate().revision());
    space.spans().forEach(span -> words.add(span.path()));
    request.hold().ifPresent(hold -> words.add("support " + hold.value()));
    request.cases().ifPresent(cases -> words.add("cases " + String.join(" ", cases.value())));
    request.materials().ifPresent(file -> words.add("materials " + digest(folder, file)));
    request.tested().ifPresent(file -> words.add("tested " + digest(folder, file)));
    study.hub().ifPresent(hub -> words.add("hub " + digest(hub.toString().getBytes(UTF_8))));
    return String.join(", ", words).replaceAll("[\\r\\n]", " ");
  }

  private static String digest(Path folder, Path file) {
    try {
      return digest(Files.readAllBytes(folder.resolve(file)));
    } catch (IOException gone) {
      // It was read a moment ago; a file that is gone is told apart from one that is there.
      return "gone";
    }
  }

  private static String digest(byte[] bytes) {
    return bytes.length == 0 ? "" : new OutFile("read", bytes).sha256();
  }

  /** Where it is written. */
  public Path written() {
    return out.resolve(name);
  }

  /**
   * @throws BadInput when the file holds what another search tried
   */
  @Override
  public List<TriedDesign> known() {
    List<TriedDesign> known = new ArrayList<>();
    try {
      Path file = written();
      if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.size(file) < MOST) {
        List<String> lines = Files.readAllLines(file, UTF_8);
        if (!lines.isEmpty() && !lines.get(0).equals(head)) {
          throw new BadInput(
              new Problem(
                  Place.ofFile(file.toString()),
                  "",
                  "",
                  "holds what another search tried: another shape, other cases, materials or hub",
                  "move it, or choose another folder"));
        }
        lines.stream().skip(2).forEach(line -> parsed(line).ifPresent(known::add));
      }
    } catch (IOException unreadable) {
      // Then it is tried again, and the file written anew.
      return List.of();
    }
    return known;
  }

  private Optional<TriedDesign> parsed(String line) {
    String[] cells = line.split(",", spans.size() + 4);
    if (cells.length != spans.size() + 4) {
      return Optional.empty();
    }
    try {
      List<Double> figures = new ArrayList<>();
      for (int i = 0; i < spans.size() + 3; i++) {
        figures.add(Double.parseDouble(cells[i]));
      }
      int n = spans.size();
      return Optional.of(
          new TriedDesign(
              figures.subList(0, n),
              figures.get(n),
              figures.get(n + 1),
              figures.get(n + 2),
              cells[n + 3]));
    } catch (IllegalArgumentException odd) {
      return Optional.empty();
    }
  }

  @Override
  public void keep(List<TriedDesign> designs) {
    StringBuilder text = new StringBuilder(head).append('\n');
    spans.forEach(span -> text.append(span.path()).append(','));
    text.append("mass,deflection,margin,fault\n");
    for (TriedDesign one : designs) {
      one.values().forEach(value -> text.append(Numbers.brief(value, PLACES)).append(','));
      text.append(Numbers.brief(one.mass(), PLACES)).append(',');
      text.append(Numbers.brief(one.deflection(), PLACES)).append(',');
      text.append(Numbers.brief(one.margin(), PLACES)).append(',');
      text.append(one.fault()).append('\n');
    }
    try {
      new SingleFile(written(), disk).replace(text.toString().getBytes(UTF_8));
    } catch (CannotWrite refused) {
      throw new CannotKeep(refused);
    }
  }

  /** The disk said no in the middle of a search. */
  public static final class CannotKeep extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient CannotWrite refused;

    CannotKeep(CannotWrite refused) {
      super(refused.getMessage(), refused);
      this.refused = refused;
    }

    /** What could not be written, and why. */
    public CannotWrite refused() {
      return refused;
    }
  }
}
