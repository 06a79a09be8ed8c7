/**
 * The record pages as a static site, and live on a small server for the household's own phones.
 *
 * <p>Knows no files: what it shows and where changes go is handed in. Nothing but pages made from
 * that is ever served.
 */
package jarwright.web;
