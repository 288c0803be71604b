package shelfful.files;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import shelfful.inspect.Finding;

/** What the judge said, as JSON for other programs. */
public final class FindingsWriter {
  private FindingsWriter() {}

  /** The bytes of a small document: whether the load may be used, and every finding. */
  public static byte[] bytes(boolean passed, List<Finding> findings) {
    ObjectNode document = JsonNodeFactory.instance.objectNode();
    document.put("passed", passed);
    ArrayNode rows = document.putArray("findings");
    for (Finding finding : findings) {
      ObjectNode row = rows.addObject();
      row.put("rule", finding.rule());
      row.put("severity", finding.severity().name().toLowerCase(Locale.ROOT));
      row.put("layer", finding.layerId());
      ArrayNode pieces = row.putArray("pieces");
      finding.pieceIds().forEach(pieces::add);
      row.put("sentence", finding.sentence());
    }
    return JsonLayout.bytes(document);
  }
}
