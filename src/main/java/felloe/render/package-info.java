/** A face each: reports as text for a terminal, as pages, as HTML; results as JSON. */
package felloe.render;
