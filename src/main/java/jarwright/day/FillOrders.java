package jarwright.day;

import java.util.ArrayList;
import java.util.List;

/** The orders in which a day's loads can be filled. */
final class FillOrders {
  private final DayWork work;
  private final int changes;
  private final List<List<Integer>> found = new ArrayList<>();

  private FillOrders(DayWork work, int changes) {
    this.work = work;
    this.changes = changes;
  }

  /** Every order that turns so many times from one batch to another; batches keep their order. */
  static List<List<Integer>> with(DayWork work, int changes) {
    FillOrders orders = new FillOrders(work, changes);
    orders.extend(new ArrayList<>(), 0);
    return List.copyOf(orders.found);
  }

  private void extend(List<Integer> order, int turned) {
    if (turned > changes) {
      return;
    }
    int loads = work.loads().size();
    if (order.size() == loads) {
      if (turned == changes) {
        found.add(List.copyOf(order));
      }
      return;
    }
    for (int next = 0; next < loads; next++) {
      if (!order.contains(next) && isNext(next, order)) {
        int last = order.isEmpty() ? batch(next) : batch(order.get(order.size() - 1));
        order.add(next);
        extend(order, turned + (last == batch(next) ? 0 : 1));
        order.remove(order.size() - 1);
      }
    }
  }

  private boolean isNext(int load, List<Integer> order) {
    return load == 0 || batch(load - 1) != batch(load) || order.contains(load - 1);
  }

  private int batch(int load) {
    return work.loads().get(load).batch();
  }
}
