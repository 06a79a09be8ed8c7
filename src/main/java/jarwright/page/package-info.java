/**
 * The paper side of a print-out as plain values: paper, label stock, words, and the sheet that the
 * printer fills. Knows nothing of PDF, templates' syntax, fonts or files.
 */
package jarwright.page;
