package felloe.document;

import felloe.document.Block.Callout;
import felloe.document.Block.Depth;
import felloe.document.Block.Folded;
import felloe.document.Block.Heading;
import felloe.document.Block.Paragraph;
import felloe.document.Block.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Blocks told one after the other, and then handed on as a report or as a part of one. Words that
 * are given alone stand as they are, whatever a maker wrote into them; only before parts are they a
 * pattern (see {@link Phrase#of}).
 */
public final class Telling {

  private final List<Block> blocks = new ArrayList<>();

  /** Blocks as they are. */
  public Telling add(Block... more) {
    blocks.addAll(List.of(more));
    return this;
  }

  /** Blocks that were told elsewhere. */
  public Telling add(Telling other) {
    blocks.addAll(other.blocks);
    return this;
  }

  /** A table. */
  public Telling add(Rows<?> rows) {
    return add(rows.table());
  }

  public Telling head(String words) {
    return add(new Heading(words));
  }

  public Telling head(String pattern, Object... parts) {
    return head(Phrase.of(pattern, parts));
  }

  /** A paragraph. */
  public Telling say(String words) {
    return add(new Paragraph(words));
  }

  /** A paragraph with something put in. */
  public Telling say(String pattern, Object... parts) {
    return say(Phrase.of(pattern, parts));
  }

  /** Sentences that are to be read first; nothing where there are none. */
  public Telling callout(Tone tone, List<String> texts) {
    return texts.isEmpty() ? this : add(new Callout(tone, texts));
  }

  /** A verdict with something put in. */
  public Telling verdict(Tone tone, String pattern, Object... parts) {
    return callout(tone, List.of(parts.length == 0 ? pattern : Phrase.of(pattern, parts)));
  }

  public Telling cautions(List<String> texts) {
    return callout(Tone.CAUTION, texts);
  }

  /** Blocks that not every face shows at once; nothing where there are none. */
  public Telling fold(Depth depth, Telling folded) {
    return folded.blocks.isEmpty() ? this : add(new Folded(depth, folded.blocks));
  }

  public Telling fold(Depth depth, Rows<?> folded) {
    return fold(depth, folded.table());
  }

  public Telling fold(Depth depth, Block... folded) {
    return fold(depth, new Telling().add(folded));
  }

  /** Blocks that not every face shows at once, told only where they are shown, and then once. */
  public Telling fold(Depth depth, Consumer<Telling> inside) {
    List<List<Block>> once = new ArrayList<>(1);
    return add(
        new Folded(
            depth,
            () -> {
              synchronized (once) {
                if (once.isEmpty()) {
                  Telling told = new Telling();
                  inside.accept(told);
                  once.add(told.blocks());
                }
                return once.get(0);
              }
            }));
  }

  /** What was told so far. */
  public List<Block> blocks() {
    return List.copyOf(blocks);
  }

  /** All of it under a title. */
  public Report under(String title) {
    return new Report(title, blocks);
  }

  /** All of it between a title and a foot. */
  public Report under(String title, String foot) {
    return new Report(title, foot, blocks);
  }
}
