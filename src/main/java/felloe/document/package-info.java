/** Blocks of text, tables and pictures, and how they lie on pages. No file format is known here. */
package felloe.document;
