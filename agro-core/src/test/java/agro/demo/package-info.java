/**
 * The invented, seeded data of the demonstrations: the weather of Osmere Vale hour by hour, insects
 * as individuals, traps that see only a part of them, and the truth behind the counts. The
 * generator is deliberately not the model that the library fits.
 */
package agro.demo;
