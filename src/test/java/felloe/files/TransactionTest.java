package felloe.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sets of files are written whole or not at all, and what is the maker's is left alone. */
class TransactionTest {

  /** Sound, and quick, since it does not wait for the platter. */
  private static final Disk SOUND =
      new Disk() {
        @Override
        public void create(Path file, byte[] bytes) throws IOException {
          Files.write(file, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        }

        @Override
        public void sync(Path folder) {}
      };

  @TempDir Path temp;

  private Path out() {
    return temp.resolve("out");
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static FileSet kit(String name, String words) {
    return new FileSet(
        "make",
        name + ".yaml",
        List.of(
            new OutFile(name + ".svg", bytes("<?xml " + words)),
            new OutFile(name + "-template-A4.pdf", bytes("%PDF-1.7 " + words)),
            new OutFile(name + "-holes.csv", bytes("label " + words)),
            new OutFile(name + "-report.json", bytes("{ " + words))));
  }

  private static FileSet drill(String name, String words) {
    return new FileSet(
        "drill", name + ".yaml", List.of(new OutFile(name + "-drill.csv", bytes("step " + words))));
  }

  /** A file that the shape made before it was changed, and one that it made since. */
  @Test
  void filesOfAnOlderRevisionThatStayBesideNewOnesAreTold() throws CannotWrite {
    OutFile a4 = new OutFile("heron-template-A4.pdf", bytes("%PDF-1.7 old"));
    OutFile a3 = new OutFile("heron-template-A3.pdf", bytes("%PDF-1.7 new"));
    FileSet made = new FileSet("make", "heron.yaml", "0123abcd", List.of(a4));
    Transaction.into(out(), SOUND).folder("heron", made).commit();
    Written same =
        Transaction.into(out(), SOUND)
            .folder("heron", new FileSet("template", "heron.yaml", "0123abcd", List.of(a3)))
            .commit();
    assertEquals(List.of(), same.older());
    Written changed =
        Transaction.into(out(), SOUND)
            .folder("heron", new FileSet("template", "heron.yaml", "4567ef01", List.of(a3)))
            .commit();
    assertEquals(List.of(out().resolve("heron/heron-template-A4.pdf")), changed.older());
    Written anew =
        Transaction.into(out(), SOUND)
            .folder("heron", new FileSet("make", "heron.yaml", "4567ef01", List.of(a4)))
            .commit();
    assertEquals(List.of(), anew.older());
  }

  @Test
  void aKitFromBeforeThereWereListsIsRefusedInOneMessageWithItsCure() throws Exception {
    Path folder = Files.createDirectories(out().resolve("heron"));
    for (OutFile file : kit("heron", "old").files()) {
      Files.write(folder.resolve(file.name()), file.bytes());
    }
    CannotWrite refused = assertThrows(CannotWrite.class, () -> write(SOUND, kit("heron", "new")));
    assertEquals(
        folder
            + ": has no list of what Felloe wrote there (felloe-files.txt), so these files may be"
            + " your own: heron.svg, heron-template-A4.pdf, heron-holes.csv and 1 more; move the"
            + " folder away and run again (what you do not need of the old one can be deleted"
            + " then), or choose another folder",
        refused.getMessage());
  }

  private void write(Disk disk, FileSet... kits) throws CannotWrite {
    write(out(), disk, kits);
  }

  private static void write(Path out, Disk disk, FileSet... kits) throws CannotWrite {
    Transaction transaction = Transaction.into(out, disk);
    for (FileSet kit : kits) {
      transaction = transaction.folder(kit.source().replace(".yaml", ""), kit);
    }
    transaction.commit();
  }

  private static Written loose(Path out, Disk disk, FileSet... sets) throws CannotWrite {
    Transaction transaction = Transaction.into(out, disk);
    for (FileSet set : sets) {
      transaction = transaction.here(set);
    }
    return transaction.commit();
  }

  /** Everything below a folder: path and content, or a word for what is no file. */
  private static Map<String, String> content(Path folder) throws IOException {
    Map<String, String> content = new TreeMap<>();
    if (!Files.exists(folder)) {
      return content;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path p : all.toList()) {
        String name = folder.relativize(p).toString();
        if (Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS)) {
          content.put(name, Files.readString(p));
        } else if (!name.isEmpty()) {
          content.put(name, Files.isSymbolicLink(p) ? "(link)" : "(folder)");
        }
      }
    }
    return content;
  }

  /** A disk that refuses, or dies, at its nth deed. */
  private static final class Failing implements Disk {
    private final int at;
    private final boolean dies;
    private int deeds;

    Failing(int at, boolean dies) {
      this.at = at;
      this.dies = dies;
    }

    private void deed() throws IOException {
      deeds++;
      if (dies && deeds >= at) {
        // Whoever is killed does not clear up either: every later deed is as dead.
        throw new Killed();
      }
      if (deeds == at) {
        throw new FileSystemException("", null, "No space left on device");
      }
    }

    @Override
    public void createFolder(Path folder) throws IOException {
      deed();
      SOUND.createFolder(folder);
    }

    @Override
    public void create(Path file, byte[] bytes) throws IOException {
      if (deeds + 1 == at) {
        SOUND.create(file, new byte[] {bytes[0]});
      }
      deed();
      SOUND.create(file, bytes);
    }

    @Override
    public void sync(Path folder) {}

    @Override
    public void rename(Path from, Path to) throws IOException {
      deed();
      REAL.rename(from, to);
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
      deed();
      REAL.replace(from, to);
    }

    @Override
    public void delete(Path path) throws IOException {
      deed();
      REAL.delete(path);
    }
  }

  private static final class Killed extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Killed() {
      super("killed", null, false, false);
    }
  }

  @Test
  void kitsAreWrittenWholeWithNothingElseBeside() throws Exception {
    write(Disk.REAL, kit("heron", "one"), kit("bittern", "one"));
    assertEquals(
        List.of(
            "bittern",
            "bittern/bittern-holes.csv",
            "bittern/bittern-report.json",
            "bittern/bittern-template-A4.pdf",
            "bittern/bittern.svg",
            "bittern/felloe-files.txt",
            "heron",
            "heron/felloe-files.txt",
            "heron/heron-holes.csv",
            "heron/heron-report.json",
            "heron/heron-template-A4.pdf",
            "heron/heron.svg"),
        List.copyOf(content(out()).keySet()));
  }

  @Test
  void aNewKitTakesThePlaceOfTheOldOneAndStaleFilesOfItsOwnGo() throws Exception {
    write(SOUND, kit("heron", "one"));
    FileSet letter =
        new FileSet(
            "make",
            "heron.yaml",
            List.of(new OutFile("heron-template-Letter.pdf", bytes("%PDF-1.7 two"))));
    write(SOUND, letter);
    assertEquals(
        List.of("heron", "heron/felloe-files.txt", "heron/heron-template-Letter.pdf"),
        List.copyOf(content(out()).keySet()));
    write(SOUND, kit("heron", "two"));
    Map<String, String> now = content(out());
    assertEquals(6, now.size());
    assertEquals("<?xml two", now.get("heron/heron.svg"));
  }

  @Test
  void aSetThatIsWrittenAgainLeavesTheOtherSetsOfItsFolder() throws Exception {
    write(SOUND, kit("heron", "one"), drill("heron", "one"));
    write(SOUND, drill("heron", "two"));
    Map<String, String> now = content(out());
    assertEquals("<?xml one", now.get("heron/heron.svg"));
    assertEquals("step two", now.get("heron/heron-drill.csv"));
    assertEquals(7, now.size());
  }

  /** The page of a maker's own that happens to be called like one of ours once was. */
  @Test
  void aFileThatTheProgramDidNotMakeIsNeitherDeletedNorReplaced() throws Exception {
    write(SOUND, kit("heron", "one"));
    Path mine = out().resolve("heron/heron-template-mine.pdf");
    Files.writeString(mine, "%PDF- my own");
    write(SOUND, kit("heron", "two"));
    assertEquals("%PDF- my own", Files.readString(mine));
    Files.writeString(out().resolve("heron/heron-drill.csv"), "my own steps");
    CannotWrite refused =
        assertThrows(CannotWrite.class, () -> write(SOUND, drill("heron", "one")));
    assertEquals(
        out().resolve("heron/heron-drill.csv")
            + ": there already, and not known as made by Felloe; move or delete what is there, or"
            + " choose another folder",
        refused.getMessage());
    assertEquals("my own steps", content(out()).get("heron/heron-drill.csv"));
    assertEquals("<?xml two", content(out()).get("heron/heron.svg"));
  }

  @Test
  void aFileThatTheMakerChangedIsTheirs() throws Exception {
    write(SOUND, kit("heron", "one"));
    Path drawing = out().resolve("heron/heron.svg");
    Files.writeString(drawing, "<?xml with a note");
    CannotWrite refused = assertThrows(CannotWrite.class, () -> write(SOUND, kit("heron", "two")));
    assertTrue(refused.getMessage().contains("changed since Felloe wrote it"));
    assertEquals("<?xml with a note", Files.readString(drawing));
    assertEquals("label one", content(out()).get("heron/heron-holes.csv"));
    // It stays as well where its set no longer has it.
    write(SOUND, new FileSet("make", "heron.yaml", List.of(new OutFile("heron.dxf", bytes("0")))));
    assertEquals("<?xml with a note", Files.readString(drawing));
    assertEquals(4, content(out()).size());
  }

  @Test
  void whatIsThereAlreadyByteForByteIsTakenAsOurs() throws Exception {
    write(SOUND, kit("heron", "one"));
    Files.delete(out().resolve("heron/felloe-files.txt"));
    write(SOUND, kit("heron", "one"));
    write(SOUND, kit("heron", "two"));
    assertEquals("<?xml two", content(out()).get("heron/heron.svg"));
  }

  @Test
  void aFormWithSomethingTypedIntoItIsLeftAsItIs() throws Exception {
    FileSet form =
        new FileSet(
            "drill",
            "heron.yaml",
            List.of(
                new OutFile("heron-drill.csv", bytes("step")),
                new OutFile("heron-measured.yaml", bytes("reads: "), true)));
    assertEquals(List.of(), loose(out(), SOUND, form).kept());
    assertEquals(List.of(), loose(out(), SOUND, form).kept());
    Path typed = out().resolve("heron-measured.yaml");
    Files.writeString(typed, "reads: 40.42");
    for (int i = 0; i < 2; i++) {
      Written again = loose(out(), SOUND, form);
      assertEquals(List.of(typed), again.kept());
      assertEquals(List.of(out().resolve("heron-drill.csv")), again.files());
      assertEquals("reads: 40.42", Files.readString(typed));
    }
    // Nor does it go with the rest when the form is made no more.
    loose(out(), SOUND, drill("heron", "one"));
    assertEquals("reads: 40.42", Files.readString(typed));
  }

  /** {@code My wheel.yaml} and {@code My-wheel.yaml} both clean to the folder My-wheel. */
  @Test
  void aShapeWhoseFolderHoldsAnotherShapesKitIsRefusedNamingBoth() throws Exception {
    List<OutFile> files = List.of(new OutFile("My-wheel.svg", bytes("<?xml one")));
    FileSet one = new FileSet("make", "My wheel.yaml", files);
    FileSet two = new FileSet("drill", "My-wheel.yaml", files);
    Transaction.into(out(), SOUND).folder("My-wheel", one).commit();
    CannotWrite refused =
        assertThrows(
            CannotWrite.class,
            () -> Transaction.into(out(), SOUND).folder("My-wheel", two).commit());
    assertEquals(
        out().resolve("My-wheel")
            + ": was made from 'My wheel.yaml', and would now be overwritten by 'My-wheel.yaml';"
            + " rename one of the two shape files, or choose another folder",
        refused.getMessage());
    CannotWrite both =
        assertThrows(
            CannotWrite.class,
            () ->
                Transaction.into(temp.resolve("o"), SOUND)
                    .folder("My-wheel", one)
                    .folder("My-wheel", two)
                    .commit());
    assertTrue(both.getMessage().contains("twice in one run"), both.getMessage());
  }

  /** A disk that deletes nothing that was made before, as one that marks old files read-only. */
  @Test
  void oldFilesThatCannotBeDeletedStopNoLaterRun() throws Exception {
    Disk keeps =
        new Disk() {
          @Override
          public void delete(Path path) throws IOException {
            if (path.getParent().endsWith("old")) {
              throw new AccessDeniedException(path.toString());
            }
            SOUND.delete(path);
          }

          @Override
          public void sync(Path folder) {}
        };
    for (String words : List.of("one", "two", "three", "four")) {
      write(out(), keeps, kit("heron", words));
      assertEquals("<?xml " + words, content(out()).get("heron/heron.svg"));
    }
    write(SOUND, kit("heron", "five"));
    assertEquals(6, content(out()).size());
  }

  @Test
  void readOnlyFilesOfAnOldKitAreReplaced() throws Exception {
    write(SOUND, kit("heron", "one"));
    for (Path file : StagingFolder.list(out().resolve("heron"))) {
      assertTrue(file.toFile().setWritable(false));
    }
    write(SOUND, kit("heron", "two"));
    Map<String, String> now = content(out());
    assertEquals(6, now.size());
    assertEquals("<?xml two", now.get("heron/heron.svg"));
  }

  @Test
  void aListThatIsNoListIsRefused() throws Exception {
    write(SOUND, kit("heron", "one"));
    Files.writeString(out().resolve("heron/felloe-files.txt"), "felloe-files 1\nscrap\n");
    CannotWrite refused = assertThrows(CannotWrite.class, () -> write(SOUND, kit("heron", "two")));
    assertTrue(refused.getMessage().contains("cannot be read in line 2"), refused.getMessage());
    assertEquals("<?xml one", content(out()).get("heron/heron.svg"));
  }

  @Test
  void filesOfTheMakersOwnStay() throws Exception {
    write(SOUND, kit("heron", "one"));
    Files.writeString(out().resolve("heron/notes.txt"), "rim feels thin");
    Files.createDirectory(out().resolve("heron/photos"));
    Files.writeString(out().resolve("heron/photos/a.txt"), "first print");
    write(SOUND, kit("heron", "two"));
    Map<String, String> now = content(out());
    assertEquals("rim feels thin", now.get("heron/notes.txt"));
    assertEquals("first print", now.get("heron/photos/a.txt"));
    assertEquals("<?xml two", now.get("heron/heron.svg"));
    assertEquals(
        List.of("heron"),
        StagingFolder.list(out()).stream().map(p -> p.getFileName().toString()).toList());
  }

  @Test
  void aDiskThatRefusesAtAnyDeedLeavesEachKitOldOrNewAndNothingElse() throws Exception {
    int failures = 0;
    for (int at = 1; at < 90; at++) {
      Path fresh = temp.resolve("refuses-" + at);
      write(fresh, SOUND, kit("heron", "one"), kit("bittern", "one"));
      Files.writeString(fresh.resolve("heron/notes.txt"), "mine");
      Map<String, String> before = content(fresh);
      Failing disk = new Failing(at, false);
      boolean failed = false;
      try {
        write(fresh, disk, kit("heron", "two"), kit("bittern", "two"));
      } catch (CannotWrite refused) {
        failed = true;
        failures++;
        assertTrue(refused.getMessage().contains("No space left on device"), refused.getMessage());
      }
      Map<String, String> after = content(fresh);
      assertEquals("mine", after.get("heron/notes.txt"), "deed " + at);
      String heron = after.get("heron/heron.svg");
      String bittern = after.get("bittern/bittern.svg");
      assertWhole(after, "heron", heron);
      assertWhole(after, "bittern", bittern);
      if (!failed) {
        assertEquals("<?xml two", heron);
        assertEquals("<?xml two", bittern);
      } else {
        assertEquals("<?xml one", heron, "deed " + at);
        assertEquals("<?xml one", bittern, "deed " + at);
        assertEquals(before.keySet(), after.keySet(), "deed " + at);
      }
      if (disk.deeds < at) {
        assertTrue(failures > 12, failures + " failures");
        return;
      }
    }
    throw new AssertionError("more deeds than thought");
  }

  private static void assertWhole(Map<String, String> content, String name, String svg) {
    String words = svg.substring("<?xml ".length());
    assertEquals("%PDF-1.7 " + words, content.get(name + "/" + name + "-template-A4.pdf"));
    assertEquals("label " + words, content.get(name + "/" + name + "-holes.csv"));
    assertEquals("{ " + words, content.get(name + "/" + name + "-report.json"));
  }

  @Test
  void aRunKilledAtAnyDeedIsPutInOrderByTheNext() throws Exception {
    for (int at = 1; at < 90; at++) {
      Path fresh = temp.resolve("killed-" + at);
      write(fresh, SOUND, kit("heron", "one"));
      Files.writeString(fresh.resolve("heron/notes.txt"), "mine");
      Files.writeString(fresh.resolve("heron/more.txt"), "mine too");
      Failing disk = new Failing(at, true);
      try {
        write(fresh, disk, kit("heron", "two"));
        assertTrue(disk.deeds < at, "killed at " + at);
      } catch (Killed killed) {
        // The next run is of another set: it leaves the old kit or the new one, and no litter.
        assertTrue(disk.deeds >= at);
      }
      write(fresh, SOUND, drill("heron", "one"));
      Map<String, String> half = content(fresh);
      assertWhole(half, "heron", half.get("heron/heron.svg"));
      assertEquals(9, half.size(), "deed " + at + ": " + half.keySet());
      write(fresh, SOUND, kit("heron", "three"));
      Map<String, String> after = content(fresh);
      assertEquals(9, after.size(), "deed " + at + ": " + after.keySet());
      assertEquals("mine", after.get("heron/notes.txt"));
      assertEquals("mine too", after.get("heron/more.txt"));
      assertWhole(after, "heron", "<?xml three");
      if (disk.deeds < at) {
        assertTrue(at > 12);
        return;
      }
    }
    throw new AssertionError("more deeds than thought");
  }

  @Test
  void anotherRunThatIsAliveIsWaitedFor() throws Exception {
    Path folder = Files.createDirectories(out().resolve("heron"));
    FolderLock alive = FolderLock.of(folder, 0);
    CannotWrite busy = assertThrows(CannotWrite.class, () -> FolderLock.of(folder, 60));
    assertTrue(busy.getMessage().contains("another run of felloe writes there"));
    Thread other =
        new Thread(
            () -> {
              try {
                Thread.sleep(100);
              } catch (InterruptedException stop) {
                Thread.currentThread().interrupt();
              }
              alive.close();
            });
    other.start();
    write(SOUND, kit("heron", "one"));
    other.join();
    assertEquals(6, content(out()).size());
  }

  @Test
  void aFileWhereTheFolderBelongsIsRefused() throws Exception {
    Files.createDirectories(out());
    Files.writeString(out().resolve("heron"), "a file");
    CannotWrite refused = assertThrows(CannotWrite.class, () -> write(SOUND, kit("heron", "one")));
    assertEquals(
        out().resolve("heron")
            + ": is a file where the kit's folder belongs; move it, or choose another folder",
        refused.getMessage());
    assertEquals(Map.of("heron", "a file"), content(out()));
  }

  @Test
  void aFileWhereTheOutFolderBelongsIsRefused() throws Exception {
    Files.writeString(out(), "a file");
    CannotWrite refused = assertThrows(CannotWrite.class, () -> write(SOUND, kit("heron", "one")));
    assertEquals(out() + ": is a file, not a folder; choose another folder", refused.getMessage());
    CannotWrite below =
        assertThrows(
            CannotWrite.class, () -> write(out().resolve("a/b"), SOUND, kit("heron", "one")));
    assertTrue(below.getMessage().contains("is a file, not a folder"), below.getMessage());
    assertEquals("a file", Files.readString(out()));
  }

  @Test
  void aLinkWhereTheFolderBelongsIsNeitherFollowedNorReplaced() throws Exception {
    Path precious = Files.createDirectory(temp.resolve("precious"));
    Files.writeString(precious.resolve("heron.svg"), "<?xml mine");
    Files.createDirectories(out());
    Files.createSymbolicLink(out().resolve("heron"), precious);
    CannotWrite refused = assertThrows(CannotWrite.class, () -> write(SOUND, kit("heron", "one")));
    assertTrue(refused.getMessage().contains("is a link"), refused.getMessage());
    assertEquals(Map.of("heron.svg", "<?xml mine"), content(precious));
  }

  @Test
  void aLinkInsideTheKitStaysAndSoDoesWhatItPointsAt() throws Exception {
    Path precious = Files.writeString(temp.resolve("precious.txt"), "mine");
    write(SOUND, kit("heron", "one"));
    Files.createSymbolicLink(out().resolve("heron/link.txt"), precious);
    write(SOUND, kit("heron", "two"));
    assertTrue(Files.isSymbolicLink(out().resolve("heron/link.txt")));
    assertEquals("mine", Files.readString(precious));
    Files.createSymbolicLink(out().resolve("heron/heron-drill.csv"), precious);
    CannotWrite refused =
        assertThrows(CannotWrite.class, () -> write(SOUND, drill("heron", "three")));
    assertTrue(refused.getMessage().contains("is a link"), refused.getMessage());
    assertEquals("<?xml two", content(out()).get("heron/heron.svg"));
    assertEquals("mine", Files.readString(precious));
  }

  @Test
  void aFolderThatMayNotBeWrittenIsSaidAndNothingIsLeft() throws Exception {
    Path closed = Files.createDirectory(temp.resolve("closed"));
    assertTrue(closed.toFile().setWritable(false));
    try {
      boolean writesAnyway = Files.isWritable(closed);
      assumeTrue(!writesAnyway, "root and some disks write everywhere");
      CannotWrite refused =
          assertThrows(CannotWrite.class, () -> write(closed, SOUND, kit("heron", "one")));
      assertTrue(refused.getMessage().contains("you may not write there"), refused.getMessage());
    } finally {
      assertTrue(closed.toFile().setWritable(true));
    }
    assertEquals(Map.of(), content(closed));
  }

  @Test
  void anOutFolderThatWasMadeForNothingIsUnmade() throws Exception {
    Path deep = temp.resolve("a/b/c");
    assertThrows(CannotWrite.class, () -> write(deep, new Failing(7, false), kit("heron", "one")));
    assertFalse(Files.exists(temp.resolve("a")));
  }

  /** A new drawing beside an old program is the worst of all. */
  @Test
  void looseFilesComeTogetherOrNotAtAll() throws Exception {
    loose(out(), SOUND, kit("heron", "old"));
    Map<String, String> before = content(out());
    Failing disk = null;
    for (int at = 1; disk == null || disk.deeds >= at; at++) {
      disk = new Failing(at, false);
      try {
        loose(out(), disk, kit("heron", "new"));
      } catch (CannotWrite refused) {
        assertEquals(before, content(out()), "deed " + at);
        continue;
      }
      assertEquals("<?xml new", content(out()).get("heron.svg"));
      loose(out(), SOUND, kit("heron", "old"));
      assertEquals(before, content(out()), "deed " + at);
    }
  }

  @Test
  void looseSetsOfSeveralShapesLieSideBySide() throws Exception {
    FileSet heron = kit("heron", "one");
    Written written = loose(out(), SOUND, heron, kit("bittern", "one"));
    assertEquals(out().resolve("heron.svg"), written.files().get(0));
    assertEquals(out().resolve("bittern.svg"), written.files().get(4));
    assertArrayEquals(heron.files().get(0).bytes(), Files.readAllBytes(written.files().get(0)));
    loose(out(), SOUND, kit("heron", "two"));
    assertEquals("<?xml one", content(out()).get("bittern.svg"));
    assertEquals(9, content(out()).size());
  }

  @Test
  void aLinkIsNeitherFollowedNorReplaced() throws Exception {
    Path precious = Files.writeString(temp.resolve("precious.txt"), "mine");
    Files.createDirectories(out());
    Files.createSymbolicLink(out().resolve("heron.svg"), precious);
    CannotWrite refused =
        assertThrows(CannotWrite.class, () -> loose(out(), SOUND, kit("heron", "new")));
    assertTrue(refused.getMessage().contains("is a link"), refused.getMessage());
    assertEquals("mine", Files.readString(precious));
    assertEquals(Map.of("heron.svg", "(link)"), content(out()));
  }

  @Test
  void aFileOfItsOwnIsReplacedWholeOrNotAtAll() throws Exception {
    Path file = out().resolve("a/curlew.yaml");
    new SingleFile(file, SOUND).replace(bytes("one"));
    for (int at = 1; at < 3; at++) {
      SingleFile failing = new SingleFile(file, new Failing(at, false));
      assertThrows(CannotWrite.class, () -> failing.replace(bytes("two")));
      assertEquals(Map.of("a", "(folder)", "a/curlew.yaml", "one"), content(out()));
    }
    assertFalse(new SingleFile(file, SOUND).create(bytes("two")));
    Path other = out().resolve("a/gull.yaml");
    assertThrows(
        CannotWrite.class, () -> new SingleFile(other, new Failing(1, false)).create(bytes("x")));
    assertTrue(new SingleFile(other, SOUND).create(bytes("two")));
    assertEquals("two", Files.readString(other));
  }

  @Test
  void filesThatWereMadeWrongNeverReachTheDisk() {
    assertThrows(IllegalStateException.class, () -> new OutFile("heron.pdf", bytes("oops")));
    assertThrows(IllegalStateException.class, () -> new OutFile("heron-holes.csv", new byte[0]));
    assertThrows(IllegalStateException.class, () -> new OutFile("heron.png", bytes("%PDF-")));
    assertThrows(IllegalArgumentException.class, () -> new OutFile("../heron.csv", bytes("x")));
  }
}
