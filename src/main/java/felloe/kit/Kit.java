package felloe.kit;

import felloe.files.CannotWrite;
import felloe.files.Disk;
import felloe.files.FileSet;
import felloe.files.OutFile;
import felloe.files.Transaction;
import felloe.files.Written;
import felloe.kit.KitAnswer.FileLine;
import felloe.load.DesignSpace;
import felloe.plate.BadInput;
import felloe.plate.Plate;
import felloe.service.PlateLoads;
import felloe.service.Progress;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import felloe.template.TemplateOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The front door of the house for every face: takes a request, has it carried out, and hands back
 * an answer, or writes files whole or not at all.
 *
 * <p>Each method that takes shapes throws {@link BadInput} with every problem of all of them, and
 * then nothing has been written.
 *
 * <p>A plate that fails a check gets its kit all the same: on paper a maker sees best what is
 * wrong, and cardboard forgives. The picture and the report carry the findings. Files that a
 * machine would run are held back.
 */
public final class Kit {

  private final Path folder;
  private final Disk disk;

  /**
   * A kit.
   *
   * @param folder where names of hub files that are asked for start from
   */
  public Kit(Path folder) {
    this(folder, Disk.REAL);
  }

  Kit(Path folder, Disk disk) {
    this.folder = folder;
    this.disk = disk;
  }

  /** The program's version, such as {@code 0.1.0}. */
  public static String version() {
    String version = Kit.class.getPackage().getImplementationVersion();
    return version == null ? "unreleased" : version;
  }

  /** Key figures and exact geometry. The review is not asked, so limits are not read. */
  public ShowAnswer show(ShapeSource shape) {
    return ShowAnswer.of(Studies.plate(shape, folder));
  }

  /** Where names of files start from. */
  public Path folder() {
    return folder;
  }

  /** Sets of files that are written into a folder, whole or not at all; none yet. */
  public Transaction into(Path out) {
    return Transaction.into(out, disk);
  }

  /**
   * Writes a set of files of a plate, whole or not at all.
   *
   * @param out the folder in which each shape has a folder of its own
   * @param set what the set is called, such as {@code load}
   * @throws CannotWrite when the disk says no
   */
  public Written write(Path out, String set, Plate plate, List<OutFile> files) throws CannotWrite {
    FileSet all = KitNames.set(set, plate, files);
    return Transaction.into(out, disk).folder(plate.name(), all).commit();
  }

  /** The file in which a search keeps what it tried. */
  public DesignFile designs(Path out, Study study, PlateLoads.Request request, DesignSpace space) {
    return new DesignFile(out, disk, folder, study, request, space);
  }

  /**
   * Writes the whole kit of each shape into a folder of its name.
   *
   * @param out the folder that the kits' folders lie in; made when missing
   * @param progress is told of each kit before it is made
   * @throws BadInput with every problem of all shapes and of the request; two shapes of one name
   *     are one
   * @throws CannotWrite when the disk says no; kits already there are then as they were
   */
  public List<KitAnswer> make(
      List<ShapeSource> shapes, TemplateOptions templates, Path out, Progress progress)
      throws CannotWrite {
    List<Prepared> kits = prepare(shapes, templates, progress);
    Transaction transaction = Transaction.into(out, disk);
    for (Prepared kit : kits) {
      transaction =
          transaction.folder(kit.plate().name(), KitNames.set("make", kit.plate(), kit.files()));
    }
    transaction.commit();
    return kits.stream()
        .map(
            kit ->
                new KitAnswer(
                    out.resolve(kit.plate().name()),
                    kit.files().stream().map(FileLine::of).toList(),
                    kit.pages(),
                    kit.check(),
                    kit.lacks()))
        .toList();
  }

  private List<Prepared> prepare(
      List<ShapeSource> shapes, TemplateOptions templates, Progress progress) {
    try (Easel easel = new Easel()) {
      Studies reading = new Studies(folder, Optional.empty());
      Workshop workshop = new Workshop(templates);
      List<Study> studied = reading.all(shapes);
      List<Prepared> kits = new ArrayList<>();
      reading.each(
          studied,
          one -> {
            progress.at(one.plate().name(), kits.size(), studied.size());
            kits.add(workshop.kit(one, easel));
          });
      return kits;
    }
  }

  /**
   * Writes true-scale templates only, as single files: the tiled pages, the full-size page and the
   * drawing of each shape.
   *
   * @param printCheck whether the sheet that proves a printer's scale is wanted as well
   * @throws BadInput as for {@link #make}
   * @throws CannotWrite when the disk says no
   */
  public TemplateAnswer template(
      List<ShapeSource> shapes, TemplateOptions templates, boolean printCheck, Path out)
      throws CannotWrite {
    Studies reading = new Studies(folder, Optional.empty());
    Workshop workshop = new Workshop(templates);
    List<Study> studied = reading.all(shapes);
    List<FileSet> sets = new ArrayList<>();
    if (printCheck) {
      OutFile sheet = workshop.printCheck();
      sets.add(new FileSet(sheet.name(), "", List.of(sheet)));
    }
    reading.each(
        studied, one -> sets.add(KitNames.set("template", one.plate(), workshop.templates(one))));
    Transaction transaction = Transaction.into(out, disk);
    for (FileSet set : sets) {
      transaction = transaction.here(set);
    }
    return new TemplateAnswer(transaction.commit().files(), studied.stream().toList());
  }

  /**
   * Writes the picture of a shape, with findings marked, as a single file.
   *
   * @throws CannotWrite when the disk says no
   */
  public Path picture(ShapeSource shape, Path out) throws CannotWrite {
    Study studied = new Studies(folder, Optional.empty()).all(List.of(shape)).get(0);
    Plate plate = studied.plate();
    OutFile file =
        new OutFile(
            new KitNames(plate.name()).picture(), Workshop.picture(plate, studied.findings()));
    FileSet set = KitNames.set("show", plate, List.of(file));
    return Transaction.into(out, disk).here(set).commit().files().get(0);
  }

  /**
   * Writes a text that the user may edit into a file of its own, and never over one that is there.
   *
   * @throws BadInput when the file is there
   * @throws CannotWrite when the disk says no
   */
  public void writeNew(Path file, String text) throws CannotWrite {
    new NewFile(disk).write(text, file, false);
  }

  /**
   * Writes the shape file of a family to start from.
   *
   * @param file where to
   * @param force whether a file that is there is replaced
   * @throws BadInput when there is no such family, or the file is there
   * @throws CannotWrite when the disk says no
   */
  public void start(String family, Path file, boolean force) throws CannotWrite {
    new NewFile(disk).write(NewShape.text(family), file, force);
  }
}
