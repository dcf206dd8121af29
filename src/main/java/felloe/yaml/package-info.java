/**
 * Reads small YAML data files (shapes, hub specs, materials, limits) into a tree that remembers
 * where each value was written, and hands out typed values while it collects every problem. It also
 * changes the text of one, value by value, and leaves the rest as the maker wrote it. The only room
 * that knows the YAML library. Front doors: {@link felloe.yaml.YamlTree}, {@link
 * felloe.yaml.TextEdit}.
 */
package felloe.yaml;
