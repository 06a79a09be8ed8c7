/**
 * The command line: one class per command, exit codes, and the wiring of the doors to the core.
 *
 * <p>The only reader of the clock and of the standard streams; no other package knows it.
 */
package jarwright.cli;
