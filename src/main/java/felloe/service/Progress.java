package felloe.service;

/** Is told how far a longer work has come. */
@FunctionalInterface
public interface Progress {

  /** Says nothing. */
  Progress SILENT = (what, done, all) -> {};

  /**
   * One more part is being worked on.
   *
   * @param what such as the name of a plate
   * @param done how many parts are done
   * @param all how many there are
   */
  void at(String what, int done, int all);
}
