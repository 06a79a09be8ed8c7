package jarwright.render;

import com.google.zxing.qrcode.encoder.QRCode;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The code of a label, as it is drawn. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class QrCodeLoop {
  private static final String TEXT =
      "LOT 260824A-K/01 USE BY 2027-08-24 TOMATOES WHOLE RAW PACK QUART";

  private final QrSymbol symbol = QrSymbol.of(TEXT);
  private final int mask = symbol.encode().getMaskPattern();

  /** Of the first jar of a lot. */
  @Benchmark
  public byte[] chooseMask() {
    return drawn(symbol.encode());
  }

  /** Of each further jar. */
  @Benchmark
  public byte[] keepMask() {
    return drawn(symbol.encode(mask));
  }

  private static byte[] drawn(QRCode code) {
    return QrPicture.image(code.getMatrix());
  }
}
