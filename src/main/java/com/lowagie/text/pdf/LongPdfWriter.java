package com.lowagie.text.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.zip.DeflaterOutputStream;

/**
 * A writer of tagged documents of any length: of each object it keeps eight bytes, where the
 * library keeps a hundred and more. The tree of tags is its caller's to write; the file has object
 * streams and a cross-reference stream (ISO 32000-1, 7.5.7 and 7.5.8) and no encryption.
 */
public final class LongPdfWriter extends PdfWriter {

  /** A writer of {@code document}, not yet open. */
  public LongPdfWriter(PdfDocument document, OutputStream out) {
    super(document, out);
    setPdfVersion(VERSION_1_7);
    setFullCompression();
    setTagged();
  }

  @Override
  public void open() {
    super.open();
    body = new Objects(this);
    structureTreeRoot = new Root(this);
  }

  /** The root of the tags: what hangs on it is put into it before the document is closed. */
  private static final class Root extends PdfStructureTreeRoot {
    Root(PdfWriter writer) {
      super(writer);
    }

    /** Each page's key in the parent tree is its number, from 0. */
    @Override
    int getOrCreatePageKey(int page) {
      return page;
    }

    @Override
    void buildTree() throws IOException {
      getWriter().addToBody(this, getReference());
    }
  }

  private static final class Objects extends PdfBody {
    private static final int TOGETHER = 200;
    private static final int PNG_UP = 12;

    private final PdfWriter writer;

    /** Of each object: its offset, or below 0 its object stream and place therein; 0: not yet. */
    private long[] places = new long[256];

    /** Object 0 is the head of the list of free ones. */
    private int count = 1;

    private final ByteBuffer heads = new ByteBuffer();
    private final ByteBuffer bodies = new ByteBuffer();
    private int stream;
    private int inStream;
    private long table;

    Objects(PdfWriter writer) {
      super(writer);
      this.writer = writer;
    }

    @Override
    int getIndirectReferenceNumber() {
      if (count == places.length) {
        places = Arrays.copyOf(places, 2 * count);
      }
      return count++;
    }

    @Override
    PdfIndirectObject add(PdfObject object, int number, boolean mayShare) throws IOException {
      PdfIndirectObject added = new PdfIndirectObject(number, object, writer);
      if (mayShare && object.canBeInObjStm()) {
        share(object, number);
      } else {
        places[number] = writer.getOs().getCounter();
        added.writeTo(writer.getOs());
      }
      return added;
    }

    private void share(PdfObject object, int number) throws IOException {
      if (inStream == TOGETHER) {
        endStream();
      }
      if (inStream == 0) {
        stream = getIndirectReferenceNumber();
      }
      places[number] = -((long) stream << 8 | inStream);
      heads.append(number).append(' ').append(bodies.size()).append(' ');
      object.toPdf(writer, bodies);
      bodies.append(' ');
      inStream++;
    }

    private void endStream() throws IOException {
      if (inStream == 0) {
        return;
      }
      ByteArrayOutputStream packed = new ByteArrayOutputStream();
      try (OutputStream deflate = new DeflaterOutputStream(packed)) {
        heads.writeTo(deflate);
        bodies.writeTo(deflate);
      }
      PdfStream all = packed(packed);
      all.put(PdfName.TYPE, PdfName.OBJSTM);
      all.put(PdfName.N, new PdfNumber(inStream));
      all.put(PdfName.FIRST, new PdfNumber(heads.size()));
      inStream = 0;
      heads.reset();
      bodies.reset();
      add(all, stream, false);
    }

    private static PdfStream packed(ByteArrayOutputStream deflated) {
      PdfStream stream = new PdfStream(deflated.toByteArray());
      stream.put(PdfName.FILTER, PdfName.FLATEDECODE);
      return stream;
    }

    @Override
    int size() {
      return count;
    }

    @Override
    long offset() {
      return table;
    }

    @Override
    void writeCrossReferenceTable(
        OutputStream os,
        PdfIndirectReference root,
        PdfIndirectReference info,
        PdfIndirectReference encryption,
        PdfObject fileId,
        int previous)
        throws IOException {
      endStream();
      int number = getIndirectReferenceNumber();
      table = writer.getOs().getCounter();
      places[number] = table;
      int[] widths = {1, 8 - Long.numberOfLeadingZeros(table) / 8, 1};
      PdfStream all = packed(entries(widths));
      PdfDictionary parms = new PdfDictionary();
      parms.put(PdfName.PREDICTOR, new PdfNumber(PNG_UP));
      parms.put(PdfName.COLUMNS, new PdfNumber(Arrays.stream(widths).sum()));
      all.put(PdfName.DECODEPARMS, parms);
      all.putAll(new PdfTrailer(size(), root, info, encryption, fileId, previous));
      all.put(PdfName.W, new PdfArray(widths));
      all.put(PdfName.TYPE, PdfName.XREF);
      new PdfIndirectObject(number, all, writer).writeTo(writer.getOs());
    }

    /** Each entry as its difference from the one before, most of which are alike. */
    private ByteArrayOutputStream entries(int[] widths) throws IOException {
      ByteArrayOutputStream packed = new ByteArrayOutputStream();
      byte[] before = new byte[Arrays.stream(widths).sum()];
      byte[] line = new byte[before.length + 1];
      line[0] = 2;
      try (OutputStream deflate = new DeflaterOutputStream(packed)) {
        for (int i = 0; i < count; i++) {
          byte[] entry = entry(places[i], widths[1]);
          for (int k = 0; k < entry.length; k++) {
            line[k + 1] = (byte) (entry[k] - before[k]);
          }
          deflate.write(line);
          before = entry;
        }
      }
      return packed;
    }

    private static byte[] entry(long place, int width) {
      byte[] entry = new byte[width + 2];
      long middle = place < 0 ? -place >> 8 : place;
      entry[0] = (byte) (place < 0 ? 2 : place > 0 ? 1 : 0);
      for (int i = width; i > 0; i--) {
        entry[i] = (byte) middle;
        middle >>= 8;
      }
      entry[width + 1] = (byte) (place < 0 ? -place : 0);
      return entry;
    }
  }
}
