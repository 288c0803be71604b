package shelfful.ui.studio;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/**
 * A record with one component changed. By name, because records of eleven components written out
 * for each of their fields hide what is changed; a test changes every field once.
 */
final class Component {
  private Component() {}

  /**
   * The changed copy.
   *
   * @throws IllegalArgumentException when the record refuses the value, with its own sentence
   */
  @SuppressWarnings("unchecked")
  static <R> R with(R record, String name, Object value) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      Object[] values = new Object[components.length];
      boolean found = false;
      for (int i = 0; i < components.length; i++) {
        boolean changed = components[i].getName().equals(name);
        values[i] = changed ? value : components[i].getAccessor().invoke(record);
        found |= changed;
      }
      if (!found) {
        throw new IllegalStateException(record.getClass() + " has no component " + name);
      }
      return (R) record.getClass().getDeclaredConstructor(types).newInstance(values);
    } catch (InvocationTargetException refused) {
      throw refused.getCause() instanceof IllegalArgumentException reason
          ? reason
          : new IllegalStateException(refused.getCause());
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
