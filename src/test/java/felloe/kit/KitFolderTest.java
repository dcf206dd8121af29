package felloe.kit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import felloe.kit.KitFolder.Bundle;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KitFolderTest {

  @TempDir Path temp;

  private Path out() {
    return temp.resolve("out");
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static Bundle kit(String name, String words) {
    return new Bundle(
        name,
        List.of(
            new KitFile(name + ".svg", bytes("<?xml " + words)),
            new KitFile(name + "-template-A4.pdf", bytes("%PDF-1.7 " + words)),
            new KitFile(name + "-holes.csv", bytes("label " + words)),
            new KitFile(name + "-report.json", bytes("{ " + words))));
  }

  private void write(Disk disk, Bundle... kits) throws CannotWrite {
    new KitFolder(out(), disk).write(List.of(kits));
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
      REAL.createFolder(folder);
    }

    @Override
    public void create(Path file, byte[] bytes) throws IOException {
      if (deeds + 1 == at) {
        REAL.create(file, new byte[] {bytes[0]});
      }
      deed();
      REAL.create(file, bytes);
    }

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
            "heron",
            "heron/heron-holes.csv",
            "heron/heron-report.json",
            "heron/heron-template-A4.pdf",
            "heron/heron.svg"),
        List.copyOf(content(out()).keySet()));
  }

  @Test
  void aNewKitTakesThePlaceOfTheOldOneAndStaleFilesOfItsOwnGo() throws Exception {
    write(Disk.REAL, kit("heron", "one"));
    Files.writeString(out().resolve("heron/heron-template-Letter.pdf"), "%PDF- older paper");
    write(Disk.REAL, kit("heron", "two"));
    Map<String, String> now = content(out());
    assertEquals(5, now.size());
    assertEquals("<?xml two", now.get("heron/heron.svg"));
  }

  @Test
  void filesOfTheMakersOwnMoveOver() throws Exception {
    write(Disk.REAL, kit("heron", "one"));
    Files.writeString(out().resolve("heron/notes.txt"), "rim feels thin");
    Files.createDirectory(out().resolve("heron/photos"));
    Files.writeString(out().resolve("heron/photos/a.txt"), "first print");
    write(Disk.REAL, kit("heron", "two"));
    Map<String, String> now = content(out());
    assertEquals("rim feels thin", now.get("heron/notes.txt"));
    assertEquals("first print", now.get("heron/photos/a.txt"));
    assertEquals("<?xml two", now.get("heron/heron.svg"));
    assertEquals(
        List.of("heron"),
        Leftovers.list(out()).stream().map(p -> p.getFileName().toString()).toList());
  }

  @Test
  void aDiskThatRefusesAtAnyDeedLeavesEachKitOldOrNewAndNothingElse() throws Exception {
    int failures = 0;
    for (int at = 1; at < 60; at++) {
      Path fresh = temp.resolve("refuses-" + at);
      KitFolder sound = new KitFolder(fresh, Disk.REAL);
      sound.write(List.of(kit("heron", "one"), kit("bittern", "one")));
      Files.writeString(fresh.resolve("heron/notes.txt"), "mine");
      Map<String, String> before = content(fresh);
      Failing disk = new Failing(at, false);
      boolean failed = false;
      try {
        new KitFolder(fresh, disk).write(List.of(kit("heron", "two"), kit("bittern", "two")));
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
    for (int at = 1; at < 60; at++) {
      Path fresh = temp.resolve("killed-" + at);
      new KitFolder(fresh, Disk.REAL).write(List.of(kit("heron", "one")));
      Files.writeString(fresh.resolve("heron/notes.txt"), "mine");
      Files.writeString(fresh.resolve("heron/more.txt"), "mine too");
      Failing disk = new Failing(at, true);
      try {
        new KitFolder(fresh, disk).write(List.of(kit("heron", "two")));
      } catch (Killed killed) {
        Map<String, String> left = content(fresh);
        boolean whole =
            left.keySet().stream().filter(name -> name.endsWith("/heron-report.json")).count() > 0;
        assertTrue(whole, "a whole kit is there under one of its names, deed " + at);
      }
      new KitFolder(fresh, Disk.REAL).write(List.of(kit("heron", "three")));
      Map<String, String> after = content(fresh);
      assertEquals(7, after.size(), "deed " + at + ": " + after.keySet());
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
  void anotherRunThatIsAliveIsLeftAlone() throws Exception {
    long alive = ProcessHandle.current().parent().map(ProcessHandle::pid).orElse(1L);
    Files.createDirectories(out());
    Path others = out().resolve(".heron.felloe-new-" + alive);
    Files.createDirectory(others);
    Files.writeString(others.resolve("heron.svg"), "half");
    write(Disk.REAL, kit("heron", "one"));
    assertEquals("half", Files.readString(others.resolve("heron.svg")));
  }

  @Test
  void aFileWhereTheFolderBelongsIsRefused() throws Exception {
    Files.createDirectories(out());
    Files.writeString(out().resolve("heron"), "a file");
    CannotWrite refused =
        assertThrows(CannotWrite.class, () -> write(Disk.REAL, kit("heron", "one")));
    assertEquals(
        out().resolve("heron")
            + ": is a file where the kit's folder belongs; move it, or choose another folder with"
            + " --out",
        refused.getMessage());
    assertEquals(Map.of("heron", "a file"), content(out()));
  }

  @Test
  void aFileWhereTheOutFolderBelongsIsRefused() throws Exception {
    Files.writeString(out(), "a file");
    CannotWrite refused =
        assertThrows(CannotWrite.class, () -> write(Disk.REAL, kit("heron", "one")));
    assertEquals(
        out() + ": is a file, not a folder; choose another folder with --out",
        refused.getMessage());
    CannotWrite below =
        assertThrows(
            CannotWrite.class,
            () ->
                new KitFolder(out().resolve("a/b"), Disk.REAL).write(List.of(kit("heron", "one"))));
    assertTrue(below.getMessage().contains("is a file, not a folder"), below.getMessage());
    assertEquals("a file", Files.readString(out()));
  }

  @Test
  void aLinkWhereTheFolderBelongsIsNeitherFollowedNorReplaced() throws Exception {
    Path precious = Files.createDirectory(temp.resolve("precious"));
    Files.writeString(precious.resolve("heron.svg"), "<?xml mine");
    Files.createDirectories(out());
    Files.createSymbolicLink(out().resolve("heron"), precious);
    CannotWrite refused =
        assertThrows(CannotWrite.class, () -> write(Disk.REAL, kit("heron", "one")));
    assertTrue(refused.getMessage().contains("is a link"), refused.getMessage());
    assertEquals(Map.of("heron.svg", "<?xml mine"), content(precious));
  }

  @Test
  void aLinkInsideTheKitMovesOverAndWhatItPointsAtStays() throws Exception {
    Path precious = Files.writeString(temp.resolve("precious.txt"), "mine");
    write(Disk.REAL, kit("heron", "one"));
    Files.createSymbolicLink(out().resolve("heron/link.txt"), precious);
    write(Disk.REAL, kit("heron", "two"));
    assertTrue(Files.isSymbolicLink(out().resolve("heron/link.txt")));
    assertEquals("mine", Files.readString(precious));
    Files.createSymbolicLink(out().resolve("heron/heron.png"), precious);
    CannotWrite refused =
        assertThrows(CannotWrite.class, () -> write(Disk.REAL, kit("heron", "three")));
    assertTrue(refused.getMessage().contains("is a folder or link"), refused.getMessage());
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
          assertThrows(
              CannotWrite.class,
              () -> new KitFolder(closed, Disk.REAL).write(List.of(kit("heron", "one"))));
      assertTrue(refused.getMessage().contains("you may not write there"), refused.getMessage());
    } finally {
      assertTrue(closed.toFile().setWritable(true));
    }
    assertEquals(Map.of(), content(closed));
  }

  @Test
  void anOutFolderThatWasMadeForNothingIsUnmade() throws Exception {
    Path deep = temp.resolve("a/b/c");
    assertThrows(
        CannotWrite.class,
        () -> new KitFolder(deep, new Failing(5, false)).write(List.of(kit("heron", "one"))));
    assertFalse(Files.exists(temp.resolve("a")));
  }

  @Test
  void looseFilesComeTogetherOrNotAtAll() throws Exception {
    Files.createDirectories(out());
    Files.writeString(out().resolve("heron.svg"), "<?xml old");
    List<KitFile> files = kit("heron", "new").files();
    assertThrows(
        CannotWrite.class, () -> new LooseFiles(out(), new Failing(3, false)).write(files));
    assertEquals(Map.of("heron.svg", "<?xml old"), content(out()));
    List<Path> written = new LooseFiles(out(), Disk.REAL).write(files);
    assertEquals(out().resolve("heron.svg"), written.get(0));
    assertArrayEquals(files.get(0).bytes(), Files.readAllBytes(written.get(0)));
    assertEquals(4, content(out()).size());
  }

  @Test
  void looseFilesReplaceALinkNotWhatItPointsAt() throws Exception {
    Path precious = Files.writeString(temp.resolve("precious.txt"), "mine");
    Files.createDirectories(out());
    Files.createSymbolicLink(out().resolve("heron.svg"), precious);
    new LooseFiles(out(), Disk.REAL).write(kit("heron", "new").files());
    assertEquals("mine", Files.readString(precious));
    assertEquals("<?xml new", Files.readString(out().resolve("heron.svg")));
  }

  @Test
  void filesThatWereMadeWrongNeverReachTheDisk() {
    assertThrows(IllegalStateException.class, () -> new KitFile("heron.pdf", bytes("oops")));
    assertThrows(IllegalStateException.class, () -> new KitFile("heron-holes.csv", new byte[0]));
    assertThrows(IllegalStateException.class, () -> new KitFile("heron.png", bytes("%PDF-")));
    assertThrows(IllegalArgumentException.class, () -> new KitFile("../heron.csv", bytes("x")));
  }
}
