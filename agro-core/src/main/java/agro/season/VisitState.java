package agro.season;

import agro.generation.TrapState;

/** The words of the column {@code state} of the visit book. */
enum VisitState {
  /** The trap was put up, or put up again after a break; its nights count from this day. */
  SET,
  /** The trap worked. */
  WORKING,
  /** The trap had failed. */
  FAILED,
  /** The trap was full. */
  FULL;

  boolean needsCount() {
    return this == WORKING || this == FULL;
  }

  TrapState trapState() {
    return switch (this) {
      case WORKING -> TrapState.WORKING;
      case FULL -> TrapState.FULL;
      case SET, FAILED -> TrapState.FAILED;
    };
  }
}
