package agro.dose;

/** Why a figure of the field is never guessed. */
final class FieldRefusals {

  private FieldRefusals() {}

  static String why(StatedFigure figure) {
    return switch (figure) {
      case SPRAY_VOLUME ->
          "one dose per litre is 8.3 times as much on a hectare at 500 L/ha as at 60 L/ha";
      case ROW_SPACING, BAND_WIDTH ->
          "a hectare has 13 333 m of row at 0.75 m and 11 111 m at 0.9 m";
      case PLANTS ->
          "a dose per plant is multiplied by the plants, which differ from field to field";
      case CELLS_PER_TRAY -> "trays hold from 50 to 500 plants";
      case SEED_RATE, THOUSAND_SEED_MASS ->
          "seed rates and seed sizes differ several times between crops and varieties";
      case WET_SUBSTRATE, DRY_SUBSTRATE ->
          "wet and dry mass differ by the water, which is not the same in two heaps";
      case TREE_ROW_VOLUME, LEAF_WALL_AREA ->
          "orchards differ several times in canopy on one hectare of ground";
      case LABEL_TREE_ROW_VOLUME, LABEL_LEAF_WALL_AREA ->
          "a rate per ground area was found on some canopy; only the label can say on which, and the"
              + " canopy of the orchard at hand is not it";
      case SPOTS -> "a dose per spot says nothing of a field without the number of spots";
    };
  }
}
