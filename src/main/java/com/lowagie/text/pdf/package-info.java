/**
 * The one class that stands in for a part of the PDF library. It lies in the library's own package,
 * since what it replaces is hidden from all others.
 */
package com.lowagie.text.pdf;
