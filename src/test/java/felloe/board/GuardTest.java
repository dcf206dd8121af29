package felloe.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class GuardTest {

  @Test
  void theCodeLetsOneMachineInAndIsThenGone() {
    Guard guard = new Guard(80, true);
    assertEquals(Optional.empty(), guard.admit("WRONG"));
    Optional<String> cookie =
        guard.admit(" " + guard.code().toLowerCase(java.util.Locale.ROOT) + " ");
    assertTrue(cookie.orElseThrow().contains("HttpOnly"));
    assertTrue(cookie.orElseThrow().contains("SameSite=Strict"));
    assertEquals(Optional.empty(), guard.admit(guard.code()));
  }

  @Test
  void whoeverGuessesIsShutOut() {
    Guard guard = new Guard(80, true);
    for (int i = 0; i < 20; i++) {
      assertEquals(Optional.empty(), guard.admit("AAAAAAA" + i));
    }
    assertEquals(Optional.empty(), guard.admit(guard.code()));
  }

  @Test
  void eachBoardHasACodeOfItsOwn() {
    assertTrue(!new Guard(80, true).code().equals(new Guard(80, true).code()));
    assertTrue(new Guard(80, true).code().matches("[2-9A-HJ-NP-Z]{8}"));
  }
}
