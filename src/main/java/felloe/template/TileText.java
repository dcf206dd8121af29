package felloe.template;

/**
 * The words that pages must have room for.
 *
 * @param whole title block and cautions in full
 * @param brief what a page says at the least, where others of the same sheet say the rest
 */
record TileText(StripText whole, StripText brief) {

  /** The longer of each, for two sheets that are to lie on the same pages. */
  TileText longer(TileText other) {
    return new TileText(whole.longer(other.whole), brief.longer(other.brief));
  }
}
