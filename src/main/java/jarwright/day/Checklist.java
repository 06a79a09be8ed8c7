package jarwright.day;

import jarwright.batch.Batch;
import jarwright.page.Wording;
import jarwright.process.PreparationStep;
import java.util.ArrayList;
import java.util.List;

/**
 * Every step of a batch in working order, cut at the natural pauses. The method of processing
 * decides the canner's sections; the product its preparation.
 */
public final class Checklist {
  private final Batch batch;
  private final List<PreparationStep> preparation;
  private final CannerFigures canner;
  private final Wording words;

  /**
   * @param preparation the product's steps, in order, for every pack
   * @param words in the language of the print-out
   */
  public Checklist(
      Batch batch, List<PreparationStep> preparation, CannerFigures canner, Wording words) {
    this.batch = batch;
    this.preparation = preparation.stream().filter(p -> p.isFor(batch.pack())).toList();
    this.canner = canner;
    this.words = words;
  }

  /** The sections that have steps. */
  public List<Section> sections() {
    PreparationSections prepared = new PreparationSections(batch, preparation, words);
    JarSections jars = new JarSections(batch, words);
    List<Section> sections = new ArrayList<>();
    prepared.ahead().ifPresent(sections::add);
    sections.add(jars.before());
    sections.add(jars.jars());
    sections.add(prepared.produce());
    sections.add(prepared.fill());
    if (batch.process().isPressure()) {
      sections.addAll(new PressureSections(batch, canner, prepared.canner(), words).sections());
    } else {
      sections.addAll(new BoilingWaterSections(batch, canner, words).sections());
    }
    sections.add(jars.nextDay());
    return List.copyOf(sections);
  }
}
