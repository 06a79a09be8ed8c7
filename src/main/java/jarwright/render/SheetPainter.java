package jarwright.render;

/** Reads the {@code sheet} element and has its sections and label sheets drawn. */
final class SheetPainter {
  private SheetPainter() {}

  static void paint(Source source, Typeface typeface, Hyphens hyphens, Pages pages) {
    Markup markup = new Markup(source);
    Element sheet = markup.root();
    if (!sheet.name().equals("sheet")) {
      throw sheet.fault("a sheet begins with <sheet>, not with <" + sheet + ">");
    }
    Shop black = new Shop(typeface, hyphens, Tone.BLACK);
    Shop shop = new Shop(typeface, hyphens, black.tone(sheet, "accent", Tone.BLACK));
    Style style = new Style(shop, false, 11, 1.3, Tone.BLACK, "left", false).read(sheet);
    sheet.done();
    for (Element part = markup.child(sheet); part != null; part = markup.child(sheet)) {
      switch (part.name()) {
        case "section" -> Section.print(pages, markup, part, style);
        case "fit" -> Fit.print(pages, markup, part, style);
        case "labels" -> LabelSheet.print(pages, markup, part, style);
        default -> throw part.notHere(sheet, "section", "fit", "labels");
      }
    }
    markup.finish();
    if (pages.count() == 0) {
      throw sheet.fault("a <sheet> needs at least one <section>, <fit> or <labels>");
    }
  }
}
