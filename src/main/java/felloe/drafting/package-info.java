/**
 * The workshop drawing of a plate: views at a scale of ISO 5455, dimensions after ISO 129-1 that
 * meet nothing, and what has no room on the drawing for tables.
 */
package felloe.drafting;
