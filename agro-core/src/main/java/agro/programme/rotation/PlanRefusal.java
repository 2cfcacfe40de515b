package agro.programme.rotation;

/**
 * Why a product cannot be used in a window, whatever is used in the others.
 *
 * @param window the window
 * @param product the product
 * @param rule the rule that refuses it
 * @param words the reason with its dates
 */
public record PlanRefusal(RotationWindow window, String product, PlanRule rule, String words) {}
