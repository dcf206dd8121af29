package felloe.board;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;

/**
 * Who may ask. A page of another site, or one that took our address for its name, is refused: the
 * host must be this machine, and what changes anything must come from our own page. On a network a
 * code is asked for besides, which the terminal shows.
 */
final class Guard {

  /** Wrong codes after which no more are taken. */
  private static final int PATIENCE = 20;

  private static final String COOKIE = "felloe-board";
  private static final String LETTERS = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
  private static final int CODE = 8;
  private static final int TICKET = 32;

  private static final Set<String> NAMES = Set.of("localhost", "127.0.0.1", "[::1]");

  private final int port;
  private final boolean network;
  private final Predicate<InetAddress> own;
  private final String code;
  private final String ticket;
  private final AtomicInteger wrong = new AtomicInteger();
  private final AtomicInteger used = new AtomicInteger();

  /**
   * @param network whether other machines may ask too, once they know the code
   */
  Guard(int port, boolean network) {
    this(port, network, InetAddress::isLoopbackAddress);
  }

  /**
   * @param own whether a caller's address is this machine's own
   */
  Guard(int port, boolean network, Predicate<InetAddress> own) {
    this.port = port;
    this.network = network;
    this.own = own;
    SecureRandom random = new SecureRandom();
    this.code = word(random, CODE);
    this.ticket = word(random, TICKET);
  }

  private static String word(SecureRandom random, int length) {
    StringBuilder word = new StringBuilder();
    for (int i = 0; i < length; i++) {
      word.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    return word.toString();
  }

  /** The code that lets another machine in. */
  String code() {
    return code;
  }

  /** Why a call is refused; empty where it is not. */
  Optional<Answer> refusal(HttpExchange call) {
    Headers headers = call.getRequestHeaders();
    String host = one(headers, "Host");
    if (!ours(host)) {
      return Optional.of(Answer.refused(403, "This page is served to this machine only."));
    }
    if (!List.of("GET", "HEAD", "POST").contains(call.getRequestMethod())) {
      return Optional.of(Answer.refused(405, "That is not done here."));
    }
    String site = one(headers, "Sec-Fetch-Site");
    boolean changes = call.getRequestMethod().equals("POST");
    String origin = one(headers, "Origin");
    boolean foreign = !origin.isEmpty() && !origin.equals("http://" + host);
    if (foreign || (changes && origin.isEmpty()) || site.equals("cross-site")) {
      return Optional.of(Answer.refused(403, "Only our own page may ask for that."));
    }
    return Optional.empty();
  }

  private static String one(Headers headers, String name) {
    List<String> all = headers.getOrDefault(name, List.of());
    return all.size() == 1 ? all.get(0) : "";
  }

  /** A name that another site could have given to this machine is none of ours. */
  private boolean ours(String host) {
    int colon = host.lastIndexOf(':');
    boolean numbered = colon > host.lastIndexOf(']');
    String name = numbered ? host.substring(0, colon) : host;
    String at = numbered ? host.substring(colon + 1) : "80";
    boolean known = NAMES.contains(name) || (network && address(name));
    return known && at.equals(Integer.toString(port));
  }

  /** Whether it is an address in figures, which no site can own. */
  private static boolean address(String name) {
    return name.matches("\\d{1,3}(\\.\\d{1,3}){3}") || name.matches("\\[[0-9a-fA-F:]+\\]");
  }

  /** Whether who calls was let in: always from this machine. */
  boolean knows(HttpExchange call) {
    if (!network || own.test(call.getRemoteAddress().getAddress())) {
      return true;
    }
    for (String line : call.getRequestHeaders().getOrDefault("Cookie", List.of())) {
      for (String cookie : line.split(";")) {
        if (same(cookie.strip(), COOKIE + "=" + ticket)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Lets a machine in that says the code; the code is good for one machine, and then gone. */
  Optional<String> admit(String said) {
    if (wrong.get() >= PATIENCE || used.get() > 0) {
      return Optional.empty();
    }
    if (!same(said.strip().toUpperCase(java.util.Locale.ROOT), code)) {
      wrong.incrementAndGet();
      return Optional.empty();
    }
    if (used.getAndIncrement() > 0) {
      return Optional.empty();
    }
    return Optional.of(COOKIE + "=" + ticket + "; HttpOnly; SameSite=Strict; Path=/");
  }

  private static boolean same(String a, String b) {
    return MessageDigest.isEqual(
        a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
  }
}
