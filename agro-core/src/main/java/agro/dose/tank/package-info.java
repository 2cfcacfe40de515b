/**
 * From label rates to the tank, the field and the shop: loads of a sprayer or pumps of a knapsack,
 * the amounts that go into each, what is left over, the order of mixing, the vessel to measure
 * with, and the packs to buy.
 *
 * <p>Everything is counted on the volume of finished spray. A range of a label gives a range of
 * amounts; nothing is rounded before print.
 */
package agro.dose.tank;
