package jarwright.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Faults planted on purpose, one of each kind, to see that the fuzzer finds what it looks for. */
enum Planted implements Target.Reading {
  THROWS {
    @Override
    void harm() {
      throw new IllegalStateException("planted");
    }
  },
  TOILS {
    @Override
    void harm() {
      long end = System.nanoTime() + 1_500_000_000L;
      while (System.nanoTime() < end) {
        Thread.onSpinWait();
      }
    }
  },
  WAITS {
    @Override
    void harm() throws InterruptedException {
      Thread.sleep(600_000);
    }
  },
  HOARDS {
    @Override
    void harm() {
      List<byte[]> hoard = new ArrayList<>();
      while (hoard.size() < 256) {
        hoard.add(new byte[1 << 20]);
      }
    }
  };

  private static final String ID = "planted-";

  static boolean isNamed(String id) {
    return id.startsWith(ID);
  }

  static Planted named(String id) {
    return valueOf(id.substring(ID.length()).toUpperCase(Locale.ROOT));
  }

  abstract void harm() throws Exception;

  /** Lies deep enough that it takes coverage to find. */
  @Override
  public void read(byte[] input) throws Exception {
    if (input.length > 2 && input[0] == 'j') {
      if (input[1] == 'a') {
        if (input[2] == 'r') {
          harm();
        }
      }
    }
  }
}
