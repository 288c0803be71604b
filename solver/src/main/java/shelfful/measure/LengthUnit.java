package shelfful.measure;

/** The unit a person reads and types lengths in. Files always hold millimetres. */
public enum LengthUnit {
  MILLIMETRES,
  CENTIMETRES,
  INCHES
}
