/**
 * The door out: fills templates and draws PDF sheets, label pages and web pages. The only user of
 * the template, PDF and QR libraries; knows nothing of canning.
 */
package jarwright.render;
