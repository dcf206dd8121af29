package felloe.report;

import static felloe.document.Quantity.brief;

import felloe.document.Phrase;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.drafting.Edge;
import felloe.drafting.PlateDrawing;
import felloe.plate.Engraving;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What the drawing has no room to tell, in tables beside it. */
final class CardTables {

  private CardTables() {}

  /**
   * All of them.
   *
   * @param engravings what is cut into the faces, whose letters the drawing shows without figures
   */
  static Telling of(PlateDrawing drawing, List<Engraving> engravings) {
    Telling told = new Telling();
    if (!drawing.holes().isEmpty()) {
      told.head("Holes, from the hub axis, mm");
      told.add(
          Rows.of(drawing.holes())
              .words("hole", Hole::label)
              .words("size", Hole::size)
              .fixed("x", "", 2, hole -> hole.centre().x())
              .fixed("y", "", 2, hole -> hole.centre().y())
              .table()
              .sideBySide());
    }
    List<Corner> corners = new ArrayList<>();
    for (Edge edge : drawing.edges()) {
      edge.nodes().forEach(node -> corners.add(new Corner(edge.label(), node)));
    }
    if (!corners.isEmpty()) {
      // One edge alone is named above its points.
      boolean one = drawing.edges().size() == 1;
      told.head(
          "{}, counter-clockwise from point to point, mm",
          one ? Phrase.begin(corners.get(0).edge()) : "Edges");
      told.add(
          Rows.of(corners)
              .words("edge", corner -> one ? "" : corner.edge())
              .fixed("x", "", 2, corner -> corner.node().at().x())
              .fixed("y", "", 2, corner -> corner.node().at().y())
              .words("to the next", corner -> way(corner.node().radius()))
              .table()
              .sideBySide());
    }
    if (!engravings.isEmpty()) {
      told.head("Engravings: middle from the hub axis, and size, mm");
      told.add(
          Rows.of(engravings)
              .words("", Engraving::label)
              .words("what", Engraving::what)
              .words("face", engraving -> engraving.face().name().toLowerCase(Locale.ROOT))
              .fixed("x", "", 2, engraving -> engraving.box().centre().x())
              .fixed("y", "", 2, engraving -> engraving.box().centre().y())
              .fixed("wide", "", 2, engraving -> engraving.box().width())
              .fixed("high", "", 2, engraving -> engraving.box().height())
              .figures("line", "", engraving -> brief(engraving.lineWidth(), 2, ""))
              .figures("depth", "", engraving -> brief(engraving.depth(), 2, "")));
    }
    return told;
  }

  /** A point of an edge. */
  private record Corner(String edge, Edge.Node node) {}

  private static String way(OptionalDouble radius) {
    if (radius.isEmpty()) {
      return "straight";
    }
    double r = radius.getAsDouble();
    return (r < 0 ? "hollow R" : "R") + brief(Math.abs(r), 2, "");
  }
}
