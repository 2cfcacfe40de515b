package agro.dose.tank;

import agro.dose.ProductAmount;
import java.util.ArrayList;
import java.util.List;

/** The packs for a mix; of a range both ends are bought for, and neither is chosen silently. */
final class TankPurchases {

  private TankPurchases() {}

  static List<Purchase> of(List<TankPartner> partners, List<PartnerAmount> totals) {
    var purchases = new ArrayList<Purchase>();
    for (int i = 0; i < partners.size(); i++) {
      var partner = partners.get(i);
      var total = totals.get(i).amount();
      if (partner.packs().isEmpty()) {
        continue;
      }
      if (!total.isSingle() && total.lowNumber() > 0) {
        purchases.add(purchase(partner, total.low()));
      }
      purchases.add(purchase(partner, total.high()));
    }
    return List.copyOf(purchases);
  }

  /** The packs for one need, less what is in the store. */
  static Purchase purchase(TankPartner partner, ProductAmount need) {
    return partner
        .inHand()
        .map(stock -> Purchase.of(partner.product(), need, stock, partner.packs()))
        .orElseGet(() -> Purchase.of(partner.product(), need, partner.packs()));
  }
}
