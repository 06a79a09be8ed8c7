package jarwright.batch;

import jarwright.plan.Canner;
import jarwright.process.JarSize;
import jarwright.process.Pack;
import jarwright.process.TableRow;
import java.util.List;
import java.util.Optional;

/**
 * The canner, pack and table row that a plan comes down to.
 *
 * @param offered every row that the table offers for the setting
 */
record Choice(
    Canner canner, Pack pack, TableRow row, List<TableRow> offered, Optional<JarSize> printedFor) {}
