package jarwright.files;

import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads YAML into {@link Written}, from the parser's events: nothing is constructed, nothing is
 * repeated by an alias, and nothing nests deeper than a plan does.
 */
final class YamlTree {
  private static final int DEEPEST = 6;
  private static final List<String> NOTHING = List.of("", "~", "null");
  private static final String SPACES = "indent with spaces, two for each level";

  private final TextFile file;
  private final Problems problems;
  private final Deque<Open> open = new ArrayDeque<>();
  private Optional<Written> root = Optional.empty();
  private int documents;

  private YamlTree(TextFile file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  /** A list or map whose end has not come yet. */
  private static final class Open {
    private final Place place;
    private final boolean isMap;
    private final List<Written> items = new ArrayList<>();
    private final Map<String, Written.Entry> entries = new LinkedHashMap<>();
    private Written.Text key;

    private Open(Place place, boolean isMap) {
      this.place = place;
      this.isMap = isMap;
    }

    private Written close() {
      return isMap ? new Written.Keys(place, entries) : new Written.Items(place, items);
    }
  }

  /**
   * Reads a file's one document.
   *
   * @param problems gets the doubled keys
   * @throws Refused where the file is no YAML, or uses what a plan has no need of
   */
  static Written read(TextFile file, Problems problems) throws Refused {
    YamlTree tree = new YamlTree(file, problems);
    LoadSettings settings = LoadSettings.builder().setCodePointLimit(TextFile.MOST_BYTES).build();
    try {
      for (Event event : new Parse(settings).parseString(file.text())) {
        tree.take(event);
      }
    } catch (MarkedYamlEngineException e) {
      throw tree.malformed(e);
    } catch (YamlEngineException e) {
      throw new Refused(Place.wholeFile(file.name()), "this is no YAML", "save it as plain text");
    }
    return tree.root.orElseThrow(
        () ->
            new Refused(
                Place.wholeFile(file.name()),
                "the file holds nothing but remarks",
                "write a plan with kitchen: and batches:"));
  }

  private void take(Event event) throws Refused {
    if (event instanceof NodeEvent node) {
      refuseAnchor(node);
    }
    switch (event.getEventId()) {
      case DocumentStart -> {
        documents++;
        if (documents > 1) {
          throw refused(event, "a second document begins here", "one file holds one plan");
        }
      }
      case Scalar -> scalar((ScalarEvent) event);
      case SequenceStart, MappingStart -> begin((CollectionStartEvent) event);
      case SequenceEnd, MappingEnd -> add(open.pop().close());
      case Alias -> throw refused(event, "aliases (*) are not read here", "write the value out");
      default -> {
        // Starts and ends of stream and document, and remarks, say nothing of the plan.
      }
    }
  }

  private void refuseAnchor(NodeEvent node) throws Refused {
    if (node.getAnchor().isPresent() && node.getEventId() != Event.ID.Alias) {
      throw refused(node, "anchors (&) are not read here", "write the value out where it is used");
    }
  }

  private void scalar(ScalarEvent event) throws Refused {
    refuseTag(event, event.getTag());
    boolean nothing = event.isPlain() && NOTHING.contains(event.getValue());
    Written.Text text = new Written.Text(place(event), nothing ? "" : event.getValue(), false);
    Open around = open.peek();
    if (around != null && around.isMap && around.key == null) {
      around.key = text;
    } else {
      add(text);
    }
  }

  private void begin(CollectionStartEvent event) throws Refused {
    refuseTag(event, event.getTag());
    Open around = open.peek();
    if (around != null && around.isMap && around.key == null) {
      throw refused(event, "a key is missing here", "write key: value");
    }
    if (open.size() == DEEPEST) {
      throw refused(event, "this is nested deeper than a plan is", "see the example plans");
    }
    open.push(new Open(place(event), event.getEventId() == Event.ID.MappingStart));
  }

  private void refuseTag(Event event, Optional<String> tag) throws Refused {
    if (tag.isPresent()) {
      throw refused(event, "tags (!) are not read here", "write the plain value");
    }
  }

  private void add(Written value) {
    Open around = open.peek();
    if (around == null) {
      root = Optional.of(value);
    } else if (around.isMap) {
      String key = around.key.text();
      Written.Entry before = around.entries.get(key);
      if (before == null) {
        around.entries.put(key, new Written.Entry(around.key.place(), value));
      } else {
        problems.add(
            around.key.place(),
            key + ": stands here twice, first in line " + before.place().line(),
            "keep one of them");
      }
      around.key = null;
    } else {
      around.items.add(value);
    }
  }

  private Place place(Event event) {
    return event.getStartMark().map(this::place).orElse(Place.wholeFile(file.name()));
  }

  private Place place(Mark mark) {
    return file.at(mark.getLine() + 1, mark.getColumn() + 1);
  }

  private Refused refused(Event event, String what, String remedy) {
    return new Refused(place(event), what, remedy);
  }

  private Refused malformed(MarkedYamlEngineException e) {
    Place where =
        e.getProblemMark()
            .or(e::getContextMark)
            .map(this::place)
            .orElse(Place.wholeFile(file.name()));
    int tab = where.text().indexOf('\t');
    if (tab >= 0 && where.text().substring(0, tab).isBlank()) {
      return new Refused(file.at(where.line(), tab + 1), "a tab indents this line", SPACES);
    }
    String problem = e.getProblem() == null ? "" : e.getProblem().split("[;(]", 2)[0];
    // The library shows the character it met, and at the file's end that is a NUL.
    String library = problem.replaceAll("\\p{Cntrl}", "").strip();
    return new Refused(
        where,
        "this is not well-formed YAML here" + (library.isEmpty() ? "" : " (" + library + ")"),
        "check the indent, the colon with a space after it, and the quotes");
  }
}
