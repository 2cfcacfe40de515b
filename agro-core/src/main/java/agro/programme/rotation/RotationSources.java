package agro.programme.rotation;

import agro.source.Reference;

/** What the rules of rotation rest on. */
final class RotationSources {

  static final Reference SCHEME =
      Reference.fromMemory(
          "Insecticide Resistance Action Committee",
          2025,
          "Mode of action classification scheme, version 11.4",
          "title page read; groups from memory");

  static final Reference WINDOWS =
      Reference.read(
          "Insecticide Resistance Action Committee",
          2024,
          "Principles of resistance management: windows by stage of the crop and biology of the"
              + " pest, successive generations not treated with one group",
          "IRAC");

  static final Reference DIAMONDBACK =
      Reference.read(
          "CropLife Australia",
          2023,
          "Resistance management strategy for diamondback moth: all uses of one group on at most"
              + " half of the crop cycle, one generation without it between nursery and field",
          "CropLife Australia");

  static final Reference THIRTY_DAYS =
      Reference.fromMemory(
          "Insecticide Resistance Action Committee",
          2024,
          "Guidance for diamides on caterpillars: a window of one generation, or about thirty days"
              + " where its length is not known",
          "IRAC");

  static final Reference SUB_GROUPS =
      Reference.fromMemory(
          "Insecticide Resistance Action Committee",
          2024,
          "Mode of action classification scheme: sub-groups share a target, and are rotated with"
              + " each other only where there is no alternative; a mixture is a use of each of its"
              + " groups",
          "IRAC");

  private RotationSources() {}
}
