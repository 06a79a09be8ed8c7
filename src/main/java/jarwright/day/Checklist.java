package jarwright.day;

import jarwright.batch.Batch;
import jarwright.page.Wording;
import jarwright.process.GelPoints;
import jarwright.process.PreparationStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Every step of a batch in working order, cut at the natural pauses. The method of processing
 * decides the canner's sections; the product its preparation.
 */
public final class Checklist {
  private final Batch batch;
  private final CannerFigures canner;
  private final StepWords words;
  private final PreparationSections prepared;

  /**
   * @param preparation the product's steps, in order, for every pack
   * @param words in the language of the print-out
   */
  public Checklist(
      Batch batch,
      List<PreparationStep> preparation,
      GelPoints gelPoints,
      CannerFigures canner,
      Wording words) {
    this(batch, preparation, gelPoints, canner, words, step -> Optional.empty());
  }

  /**
   * The same for a sheet with clock times.
   *
   * @param ready when a waiting step is over, in words; empty where that is not planned
   */
  public Checklist(
      Batch batch,
      List<PreparationStep> preparation,
      GelPoints gelPoints,
      CannerFigures canner,
      Wording words,
      Function<PreparationStep, Optional<String>> ready) {
    this.batch = batch;
    this.canner = canner;
    this.words = new StepWords(words, batch.kitchen().units());
    List<PreparationStep> own = preparation.stream().filter(p -> p.isFor(batch.pack())).toList();
    this.prepared = new PreparationSections(batch, own, gelPoints, canner, this.words, ready);
  }

  /** The sections that have steps. */
  public List<Section> sections() {
    Routine own = prepared.routine();
    JarSections jars = new JarSections(batch, canner, own, words);
    List<Section> sections = new ArrayList<>();
    Optional<Section> ahead = prepared.ahead();
    ahead.ifPresent(s -> sections.addAll(Pauses.cut(s, words)));
    sections.add(jars.before(ahead.isEmpty()));
    sections.add(jars.jars());
    sections.addAll(Pauses.cut(prepared.produce(), words));
    sections.add(prepared.fill());
    if (batch.process().isPressure()) {
      sections.addAll(new PressureSections(batch, canner, own, words).sections());
    } else {
      sections.addAll(new BoilingWaterSections(batch, canner, words).sections());
    }
    sections.add(jars.nextDay());
    prepared.optional().ifPresent(s -> sections.addAll(Pauses.cut(s, words)));
    return sections.stream().filter(s -> !s.steps().isEmpty()).toList();
  }
}
