/**
 * Reads small YAML data files (shapes, hub specs, materials, limits) into a tree that remembers
 * where each value was written, and hands out typed values while it collects every problem. The
 * only room that knows the YAML library. Front door: {@link felloe.yaml.YamlTree}.
 */
package felloe.yaml;
