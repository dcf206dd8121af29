package felloe.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import felloe.plate.Material;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Answers lead to wheels that pass, or to words that say why not. */
class NewWheelTest {

  private static final String ALL = "felloe.questions";
  private static final Path FOLDER = Path.of("shapes");
  private static final long SEED = 20_261_129;

  /** Circles of three screws that many a laminate does not clamp well enough; metal does. */
  private static final List<String> NARROW = List.of("3x50-m6", "3x50.8-m6", "3x50-3x58-m6");

  private static List<WheelWish> wishes() {
    List<WheelWish> all = new ArrayList<>();
    for (String family : NewShape.families()) {
      for (NewWheel.Choice hub : NewWheel.hubs(FOLDER, List.of())) {
        for (Material stock : NewWheel.materials()) {
          for (WheelWish.Hand hand : WheelWish.Hand.values()) {
            for (WheelWish.Legs legs : WheelWish.Legs.values()) {
              for (WheelWish.Use use : WheelWish.Use.values()) {
                for (WheelWish.Holes holes : WheelWish.Holes.values()) {
                  for (double width : List.of(260.0, 300.0, 360.0)) {
                    all.add(
                        new WheelWish(
                            "w.yaml",
                            family,
                            hub.name(),
                            stock.name(),
                            width,
                            hand,
                            legs,
                            use,
                            holes));
                  }
                }
              }
            }
          }
        }
      }
    }
    return all;
  }

  private static boolean doubtful(WheelWish wish) {
    return NARROW.contains(wish.hub()) && !wish.material().startsWith("aluminium");
  }

  /**
   * What was made is read, reviewed and reckoned once more, as it would be from its file. With
   * {@code -Dfelloe.questions=N} N of all are tried, with {@code all} every one.
   */
  @Test
  void aSampleOfAllAnswersPassesReviewAndLoads() {
    String wanted = System.getProperty(ALL, "1");
    List<WheelWish> all = new ArrayList<>(wishes());
    Collections.shuffle(all, new Random(SEED));
    int most = wanted.equals("all") ? all.size() : Integer.parseInt(wanted);
    List<String> bad = new ArrayList<>();
    for (WheelWish wish : all.subList(0, most)) {
      NewWheel.Outcome outcome = NewWheel.of(wish, FOLDER, Progress.SILENT);
      if (outcome instanceof NewWheel.Made made) {
        ShapeSource again = ShapeSource.text(wish.name(), made.text());
        Studies studies = new Studies(FOLDER, Optional.empty());
        LoadOutcome loads = PlateLoads.own(again, PlateLoads.Request.USUAL, studies, FOLDER);
        if (loads.study().fails() || !loads.met()) {
          bad.add("told as good and is not: " + wish);
        }
      } else if (!doubtful(wish) || ((NewWheel.None) outcome).nearest().isEmpty()) {
        bad.add(wish + ": " + outcome);
      }
    }
    assertEquals(List.of(), bad);
  }

  @Test
  void everyOutlineIsDrawnSoundForTheNarrowestAndTheWidestHub() {
    for (String family : NewShape.families()) {
      for (String hub : List.of("3x50-m6", "6x101-m6")) {
        WheelWish wish = wish(family, hub, "aluminium-7075-t6", 290);
        assertTrue(NewWheel.reviewed(wish, FOLDER), wish.toString());
      }
    }
  }

  private static WheelWish wish(String family, String hub, String stock, double width) {
    return new WheelWish(
        "w.yaml",
        family,
        hub,
        stock,
        width,
        WheelWish.Hand.LARGE,
        WheelWish.Legs.LITTLE,
        WheelWish.Use.USUAL,
        WheelWish.Holes.BY_HAND);
  }

  @Test
  void whatCannotBeIsSaidWithWhatComesNear() {
    WheelWish wish = wish("path", "3x50-m6", "glass-laminate", 360);
    NewWheel.None none =
        assertInstanceOf(NewWheel.None.class, NewWheel.of(wish, FOLDER, Progress.SILENT));
    NewWheel.Fails fails = assertInstanceOf(NewWheel.Fails.class, none.why());
    assertEquals("clamp-force", fails.finding().rule());
    assertTrue(none.nearest().orElseThrow().material().startsWith("aluminium"));
  }

  @Test
  void whatIsForMockUpsIsRefused() {
    assertFalse(NewWheel.materials().stream().anyMatch(m -> m.name().equals("acrylic")));
    WheelWish wish = wish("round", "6x70-m5", "birch-plywood", 290);
    assertThrows(BadInput.class, () -> NewWheel.of(wish, FOLDER, Progress.SILENT));
  }
}
