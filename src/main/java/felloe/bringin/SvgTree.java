package felloe.bringin;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The elements of an SVG file. Nothing outside of the file is looked at, and no entity is put in
 * place.
 *
 * @param root the drawing
 * @param byId the first element of each id
 */
record SvgTree(SvgElement root, Map<String, SvgElement> byId) {

  /** A title is read as far as this: no label is as long. */
  private static final int LONGEST_TITLE = 100;

  /**
   * Reads.
   *
   * @throws felloe.plate.BadInput when it is no whole XML, or no drawing
   */
  static SvgTree of(String text, Reading reading) {
    int line = 0;
    SvgElement root = null;
    Map<String, SvgElement> byId = new HashMap<>();
    Deque<SvgElement> open = new ArrayDeque<>();
    int count = 0;
    try {
      XMLStreamReader xml = factory().createXMLStreamReader(new StringReader(text));
      while (xml.hasNext()) {
        int event = xml.next();
        line = xml.getLocation().getLineNumber();
        if (event == XMLStreamConstants.START_ELEMENT) {
          SvgElement element = element(xml, line, reading);
          if (++count > Limits.STEPS) {
            throw reading.refused(
                line,
                "",
                "",
                "is one element too many: a drawing may have " + Limits.STEPS,
                "leave out what is not the part");
          }
          if (root == null) {
            if (!element.name().equals("svg")) {
              throw reading.refused(
                  line, "", element.name(), "is not the beginning of an SVG drawing", "");
            }
            root = element;
          } else {
            open.peek().children().add(element);
          }
          byId.putIfAbsent(element.text("id"), element);
          open.push(element);
        } else if (event == XMLStreamConstants.END_ELEMENT) {
          SvgElement element = open.pop();
          if (element.name().equals("title") && !open.isEmpty()) {
            StringBuilder title = open.peek().title();
            title.append(title.isEmpty() ? element.title() : "");
          }
        } else if (xml.isCharacters() && !open.isEmpty()) {
          title(open.peek(), xml);
        }
      }
    } catch (XMLStreamException broken) {
      throw reading.refused(
          line, "", "", "is not whole XML: " + firstLine(broken), "save the drawing again");
    }
    return new SvgTree(root, byId);
  }

  /** A title's own words stand in it until it ends. */
  private static void title(SvgElement element, XMLStreamReader xml) {
    if (element.name().equals("title")) {
      int room = Math.max(0, LONGEST_TITLE - element.title().length());
      element.title().append(xml.getText(), 0, Math.min(room, xml.getTextLength()));
    }
  }

  private static SvgElement element(XMLStreamReader xml, int line, Reading reading) {
    Map<String, String> attributes = new HashMap<>();
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      attributes.putIfAbsent(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
    }
    return new SvgElement(
        xml.getLocalName(), attributes, new ArrayList<>(), new StringBuilder(), line, reading);
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("nothing outside of the file is read");
        });
    return factory;
  }

  private static String firstLine(XMLStreamException broken) {
    String message = String.valueOf(broken.getMessage());
    int from = message.indexOf("Message: ");
    String words = from < 0 ? message : message.substring(from + 9);
    return words.lines().findFirst().orElse("it breaks off");
  }
}
