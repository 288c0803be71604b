package shelfful.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Map;

/**
 * Lays a JSON tree out for people and for comparing two versions line by line: what fits on one
 * line of 140 characters stands on one, lines end in a line feed on every system, two spaces of
 * indent.
 */
final class JsonLayout {
  private static final int WIDEST = 140;

  /** The comma after a value. */
  private static final int SEPARATOR = 1;

  private final StringBuilder out = new StringBuilder();

  private JsonLayout() {}

  static byte[] bytes(JsonNode tree) {
    JsonLayout layout = new JsonLayout();
    layout.node(tree, 0, 0);
    return layout.out.append('\n').toString().getBytes(StandardCharsets.UTF_8);
  }

  private void node(JsonNode node, int indent, int before) {
    if (!node.isContainerNode() || node.isEmpty()) {
      out.append(onOneLine(node));
      return;
    }
    // The document itself is always opened, so that a file never is one line.
    String line = indent > 0 && depth(node) <= 2 ? onOneLine(node) : "";
    if (!line.isEmpty() && line.length() + 2 * indent + before <= WIDEST) {
      out.append(line);
    } else if (node.isArray()) {
      array(node, indent);
    } else {
      object(node, indent);
    }
  }

  private void array(JsonNode node, int indent) {
    String separator = "[\n";
    for (JsonNode item : node) {
      out.append(separator).append("  ".repeat(indent + 1));
      node(item, indent + 1, SEPARATOR);
      separator = ",\n";
    }
    out.append('\n').append("  ".repeat(indent)).append(']');
  }

  private void object(JsonNode node, int indent) {
    String separator = "{\n";
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      out.append(separator)
          .append("  ".repeat(indent + 1))
          .append(quoted(field.getKey()))
          .append(": ");
      node(field.getValue(), indent + 1, field.getKey().length() + 4 + SEPARATOR);
      separator = ",\n";
    }
    out.append('\n').append("  ".repeat(indent)).append('}');
  }

  /** How many containers lie within each other, the node counted. */
  private static int depth(JsonNode node) {
    int deepest = 0;
    for (JsonNode item : node) {
      deepest = Math.max(deepest, depth(item));
    }
    return node.isContainerNode() ? deepest + 1 : 0;
  }

  private static String onOneLine(JsonNode node) {
    StringBuilder line = new StringBuilder();
    if (node.isArray()) {
      line.append('[');
      for (Iterator<JsonNode> items = node.iterator(); items.hasNext(); ) {
        line.append(onOneLine(items.next())).append(items.hasNext() ? ", " : "");
      }
      return line.append(']').toString();
    }
    if (node.isObject()) {
      line.append('{');
      for (var fields = node.properties().iterator(); fields.hasNext(); ) {
        Map.Entry<String, JsonNode> field = fields.next();
        line.append(quoted(field.getKey())).append(": ").append(onOneLine(field.getValue()));
        line.append(fields.hasNext() ? ", " : "");
      }
      return line.append('}').toString();
    }
    return node.isBigDecimal() ? number(node.decimalValue()) : node.toString();
  }

  private static String number(BigDecimal value) {
    return value.scale() > 40 ? value.toString() : value.toPlainString();
  }

  private static String quoted(String name) {
    return TextNode.valueOf(name).toString();
  }
}
