package felloe.bringin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * The parts of a DXF file that carry lines: units, layers that are off, blocks, entities.
 *
 * @param insUnits the header's $INSUNITS; 0 where it has none
 * @param off names of layers that are off or frozen
 * @param blocks by name
 * @param entities of the model, in order
 */
record DxfFile(int insUnits, Set<String> off, Map<String, Block> blocks, List<DxfEntity> entities) {

  /** What an INSERT puts in place, about a base point. */
  record Block(double x, double y, List<DxfEntity> entities) {}

  /** Reads the sections. */
  static DxfFile of(List<DxfPairs.Pair> pairs) {
    Set<String> off = new HashSet<>();
    Map<String, Block> blocks = new HashMap<>();
    List<DxfEntity> entities = new ArrayList<>();
    int units = 0;
    String section = "";
    List<DxfEntity> all = entities(pairs);
    List<DxfEntity> within = null;
    for (DxfEntity entity : all) {
      switch (entity.kind()) {
        case "SECTION" -> {
          section = entity.text(2);
          units = section.equals("HEADER") ? units(entity.pairs()) : units;
        }
        case "ENDSEC" -> section = "";
        case "LAYER" -> {
          if (entity.number(62, 7) < 0 || (entity.whole(70, 0) & 1) != 0) {
            off.add(key(entity.text(2)));
          }
        }
        case "BLOCK" -> {
          within = new ArrayList<>();
          blocks.put(
              key(entity.text(2)), new Block(entity.number(10, 0), entity.number(20, 0), within));
        }
        case "ENDBLK" -> within = null;
        default -> {
          if (section.equals("ENTITIES")) {
            entities.add(entity);
          } else if (section.equals("BLOCKS") && within != null) {
            within.add(entity);
          }
        }
      }
    }
    return new DxfFile(units, off, blocks, entities);
  }

  /** Names of layers and blocks count the same in capitals and small letters. */
  static String key(String name) {
    return name.toUpperCase(Locale.ROOT);
  }

  private static int units(List<DxfPairs.Pair> header) {
    for (int i = 0; i + 1 < header.size(); i++) {
      if (header.get(i).code() == 9 && header.get(i).value().equals("$INSUNITS")) {
        return (int) DxfEntity.value(header.get(i + 1), 0);
      }
    }
    return 0;
  }

  /** Each thing that begins with a code 0; vertices go into their polyline. */
  private static List<DxfEntity> entities(List<DxfPairs.Pair> pairs) {
    List<DxfEntity> all = new ArrayList<>();
    List<DxfEntity> vertices = null;
    for (int i = 0; i < pairs.size(); ) {
      int end = i + 1;
      while (end < pairs.size() && pairs.get(end).code() != 0) {
        end++;
      }
      DxfPairs.Pair head = pairs.get(i);
      List<DxfEntity> own = new ArrayList<>();
      DxfEntity entity = new DxfEntity(head.value(), pairs.subList(i + 1, end), head.line(), own);
      if (head.value().equals("VERTEX") && vertices != null) {
        vertices.add(entity);
      } else if (!head.value().equals("SEQEND")) {
        vertices = head.value().equals("POLYLINE") ? own : null;
        all.add(entity);
      }
      i = end;
    }
    return all;
  }
}
