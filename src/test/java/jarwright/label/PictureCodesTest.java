package jarwright.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.lot.QrText;
import jarwright.render.Looks;
import jarwright.render.PictureCodes;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes in pictures as a household takes them. */
class PictureCodesTest {
  private static final String STOCK = "letter-30up";

  private static Set<String> jars(Collection<String> texts) {
    Set<String> jars = new TreeSet<>();
    texts.forEach(t -> QrText.parse(t).ifPresent(r -> jars.add(r.jar().toString())));
    return jars;
  }

  private static byte[] file(BufferedImage picture, String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(picture, format, out));
    return out.toByteArray();
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpg"})
  void everyJarOfAShelfIsRead(String format) throws Exception {
    JarPictures shelf = JarPictures.shelf(STOCK);
    assertEquals(
        new TreeSet<>(shelf.codes()), jars(PictureCodes.of(file(shelf.picture(), format))));
  }

  @Test
  void aDimShelfIsReadToo() throws Exception {
    JarPictures shelf = JarPictures.dimShelf(STOCK);
    assertEquals(new TreeSet<>(shelf.codes()), jars(PictureCodes.of(file(shelf.picture(), "png"))));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 25, 45, 90, 180})
  void aJarHeldAnyWayIsRead(int degrees) throws Exception {
    JarPictures jar = JarPictures.heldAt(STOCK, degrees);
    assertEquals(Set.copyOf(jar.codes()), jars(PictureCodes.of(file(jar.picture(), "png"))));
  }

  @Test
  void everyCodeOfAPrintedSheetIsRead() throws Exception {
    List<JarLabel> labels =
        IntStream.rangeClosed(1, 20)
            .mapToObj(i -> LabelSamples.label("Plums, halved or whole", i))
            .toList();
    byte[] pdf = LabelSamples.print(labels, LabelSamples.stock(STOCK), LabelSamples.ENGLISH);
    assertEquals(20, jars(PictureCodes.of(pdf)).size());
  }

  @Test
  void whatIsNoPictureIsTold() throws Exception {
    byte[] whole = file(JarPictures.heldAt(STOCK, 0).picture(), "png");
    byte[] text = "batches:".getBytes(StandardCharsets.UTF_8);
    assertEquals(
        "is no picture that can be read",
        assertThrows(IOException.class, () -> PictureCodes.of(text)).getMessage());
    assertThrows(IOException.class, () -> PictureCodes.of(new byte[0]));
    assertThrows(IOException.class, () -> PictureCodes.of(Arrays.copyOf(whole, whole.length / 2)));
    byte[] noPdf = "%PDF-1.7 and nothing after it".getBytes(StandardCharsets.UTF_8);
    assertThrows(IOException.class, () -> PictureCodes.of(noPdf));
  }

  /** PNG, 11.2.2: the header's width and height, here 60,000 each with no picture behind them. */
  @Test
  void aPictureThatClaimsToBeAbsurdlyLargeIsNotRead() throws Exception {
    byte[] png = file(new BufferedImage(1, 1, BufferedImage.TYPE_BYTE_GRAY), "png");
    ByteBuffer header = ByteBuffer.wrap(png);
    header.putInt(16, 60_000);
    header.putInt(20, 60_000);
    CRC32 check = new CRC32();
    check.update(png, 12, 17);
    header.putInt(29, (int) check.getValue());
    assertEquals(
        "is a picture of more than 1,000 megapixels",
        assertThrows(IOException.class, () -> PictureCodes.of(png)).getMessage());
  }

  /** What each look is worth, and what another library reads; a table for DEVELOPERS.md. */
  @Test
  @Tag("envelope")
  void whatEachLookIsWorth() throws IOException {
    List<JarPictures> pictures = JarPictures.all();
    int codes = pictures.stream().mapToInt(p -> p.codes().size()).sum();
    StringBuilder table = new StringBuilder("| looks | codes read of " + codes + " |\n|---|---|\n");
    int all = read(pictures, Looks.all());
    table.append("| all | ").append(all).append(" |\n");
    for (String look : Looks.all()) {
      List<String> others = new ArrayList<>(Looks.all());
      others.remove(look);
      int without = read(pictures, others);
      table.append("| without ").append(look).append(" | ").append(without).append(" |\n");
      assertTrue(without <= all, look);
    }
    int second = pictures.stream().mapToInt(p -> right(p, CodeReaders.all(p.picture()))).sum();
    table.append("| the second library | ").append(second).append(" |\n");
    Files.writeString(Path.of("target", "scan-looks.md"), table);
  }

  private static int read(List<JarPictures> pictures, List<String> looks) {
    return pictures.stream().mapToInt(p -> right(p, Looks.texts(p.picture(), looks))).sum();
  }

  private static int right(JarPictures picture, Collection<String> texts) {
    Set<String> jars = jars(texts);
    jars.retainAll(picture.codes());
    return jars.size();
  }
}
