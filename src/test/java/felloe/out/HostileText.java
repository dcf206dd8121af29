package felloe.out;

import java.util.List;

/** Texts that break careless writers. */
final class HostileText {

  private HostileText() {}

  static List<String> all() {
    return List.of(
        "<script>alert(1)</script>",
        "]]> <![CDATA[",
        "<!-- --> & &amp; &#0; %s ${x}",
        "\"quoted\", 'twice', comma; \\ back \\u0041",
        "=1+2",
        " @SUM(A1)",
        "a\u0000b\u0001c\u000bd\u001fe\u007ff\u0085g",
        "\ud83d\ude97 emoji \ud83c\uddf3\ud83c\uddf4",
        "broken \ud83d pair \ude97",
        "\u05d4\u05d2\u05d4 wheel \u0639\u062c\u0644\u0629",
        "\u202eevil\u202c \u2066x\u2069",
        "\ufffe\uffff\ufdd0 nobody",
        "e\u0301 combining, \u2300 70 \u00d7 \u2013 \u00b0 \u2192",
        "two\nlines\r\nand\ttab",
        "\u2028 separators \u2029");
  }

  /** What is left of a text in a file: written down apart from the code that is tested. */
  static String legal(String text) {
    StringBuilder kept = new StringBuilder();
    for (int c : text.codePoints().toArray()) {
      boolean space = c == 9 || c == 10 || c == 13;
      boolean control = c < 32 || (c >= 127 && c < 160);
      boolean half = c >= 0xd800 && c < 0xe000;
      boolean turn =
          List.of(0x200e, 0x200f, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e).contains(c)
              || (c >= 0x2066 && c <= 0x2069);
      boolean other = List.of(0x2028, 0x2029, 0xfffe, 0xffff, 0xfdd0).contains(c);
      if (space) {
        kept.append(' ');
      } else if (!control && !half && !turn && !other) {
        kept.appendCodePoint(c);
      }
    }
    return kept.toString();
  }
}
