package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

final class AheadTest {
  @Test
  void itIsMadeBesideAndOnce() throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(1);
    Ahead<Object> ahead =
        Ahead.of(
            () -> {
              begun.countDown();
              return new Object();
            });
    begun.await();
    assertThat(ahead.get()).isSameAs(ahead.get());
  }

  @Test
  void whatGoesWrongWithItGoesWrongWhereItIsAskedFor() {
    Ahead<Object> ahead =
        Ahead.of(
            () -> {
              throw new IllegalStateException("no rules");
            });
    assertThatThrownBy(ahead::get).isInstanceOf(IllegalStateException.class).hasMessage("no rules");
    Ahead<Object> worse =
        Ahead.of(
            () -> {
              throw new NoClassDefFoundError("Rules");
            });
    assertThatThrownBy(worse::get).isInstanceOf(NoClassDefFoundError.class);
  }
}
