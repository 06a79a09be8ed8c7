package jarwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** The commands there are, in the order of a day's work; none is made before it is called. */
final class Commands {
  private static final Map<String, Supplier<Command>> ALL = new LinkedHashMap<>();

  static {
    ALL.put("kit", KitCommand::new);
    ALL.put("check", CheckCommand::new);
    ALL.put("day", DayCommand::new);
    ALL.put("seal", SealCommand::new);
    ALL.put("cancel", CancelCommand::new);
    ALL.put("shelf", ShelfCommand::new);
    ALL.put("take", TakeCommand::new);
    ALL.put("move", MoveCommand::new);
    ALL.put("toss", TossCommand::new);
    ALL.put("count", CountCommand::new);
    ALL.put("trace", TraceCommand::new);
    ALL.put("import", ImportCommand::new);
    ALL.put("undo", UndoCommand::new);
    ALL.put("labels", LabelsCommand::new);
    ALL.put("stock", StockCommand::new);
    ALL.put("process", ProcessCommand::new);
    ALL.put("scan", ScanCommand::new);
    ALL.put("pages", PagesCommand::new);
    ALL.put("serve", ServeCommand::new);
  }

  private Commands() {}

  static Optional<Command> named(String name) {
    return Optional.ofNullable(ALL.get(name)).map(Supplier::get);
  }

  static List<String> names() {
    return List.copyOf(ALL.keySet());
  }

  static List<Command> all() {
    return ALL.values().stream().map(Supplier::get).toList();
  }
}
