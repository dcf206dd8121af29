package felloe.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Drawing;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.geometry.Box;
import felloe.plate.Face;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A title of up to 80 characters stands whole in the title block of every page. */
class LongTitleTest {

  private static final List<Paper> PAPERS = List.of(Paper.A5, Paper.A4, Paper.LETTER, Paper.A3);

  private static List<PageSet> sets(String title) {
    List<PageSet> sets = new ArrayList<>();
    for (Plate plate : List.of(PaperPlates.bittern(), PaperPlates.dunlin())) {
      for (Paper paper : PAPERS) {
        TemplateOptions options = UsualPrint.on(paper).withFace(Face.BACK);
        Template template =
            Template.of(
                PaperPlates.with(plate, title, plate.engravings()), List.of(), options, Stamp.NONE);
        sets.add(template.pages());
        sets.add(template.fullSize());
      }
    }
    return sets;
  }

  /** The lines of a page's title block: those of its title, or the facts below from the name on. */
  private static List<Mark.Label> block(Page page, boolean title) {
    Drawing foot = page.parts().get(page.parts().size() - 1).drawing();
    List<Mark.Label> words =
        foot.layers().stream()
            .filter(layer -> layer.name().equals("title-block"))
            .flatMap(layer -> layer.marks().stream())
            .map(Mark.Label.class::cast)
            .toList();
    Mark.Label name = words.stream().filter(l -> l.text().contains("  rev ")).findFirst().get();
    return words.stream()
        .filter(l -> l.at().x() == name.at().x())
        .filter(l -> l.at().y() > name.at().y() == title)
        .toList();
  }

  private static String shown(List<Mark.Label> lines) {
    return String.join(" ", lines.stream().map(Mark.Label::text).toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Bittern",
        "Bittern, the one with a slot for the cable and two buttons",
        "Bittern, hill-climb cart of the upper village, second try, wide hands and gloves",
        "WHEEL MOWN WITH MANY WIDE WORDS WHOM NO MAN WOULD WANT TO WRITE ON ANY WHEEL, MM"
      })
  void itStandsWholeAndLargeEnoughAndKeepsOffTheFacts(String title) {
    assertTrue(title.length() <= 80, title.length() + " characters");
    for (PageSet set : sets(title)) {
      for (Page page : set.pages()) {
        List<Mark.Label> lines = block(page, true);
        assertEquals(title, shown(lines), set.paper());
        lines.forEach(line -> assertTrue(line.height() >= 2.5, line.text()));
        List<Mark.Label> all = new ArrayList<>(lines);
        List<Mark.Label> facts =
            block(page, false).stream()
                .filter(fact -> fact.at().x() == lines.get(0).at().x())
                .toList();
        assertTrue(facts.size() >= 3, facts.toString());
        all.addAll(facts);
        for (int i = 1; i < all.size(); i++) {
          Box above = all.get(i - 1).box();
          assertTrue(all.get(i).box().maxY() <= above.minY() + 0.05, all.get(i).text());
        }
        assertTrue(all.get(all.size() - 1).box().minY() > 4, "on the paper");
      }
    }
  }

  @Test
  void onlyALongerOneIsCutAndShowsIt() {
    String title = "Bittern " + "and the wheel after it ".repeat(24);
    for (PageSet set : sets(title)) {
      for (Page page : set.pages()) {
        String shown = shown(block(page, true));
        assertTrue(shown.endsWith("\u2026") && shown.length() > 80, shown);
        assertTrue(block(page, true).size() <= 4, shown);
      }
    }
  }
}
