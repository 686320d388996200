/**
 * Quantities as types, read and printed with the unit in which they were entered.
 *
 * <p>Start with {@link org.fandown.units.Quantity}: a number with its {@link
 * org.fandown.units.Unit}, kept as a person wrote it. What it measures is its {@link
 * org.fandown.units.Dimension}. For physics there is one small type per dimension, such as {@link
 * org.fandown.units.GaugePressure}, {@link org.fandown.units.AbsolutePressure} and {@link
 * org.fandown.units.Length}, which hold SI amounts and never mix.
 *
 * <p>{@link org.fandown.units.Quantities}, {@link org.fandown.units.Decimals} and {@link
 * org.fandown.units.Fractions} print; {@link org.fandown.units.Num} holds the few mathematical
 * functions that give the same bits on every machine. A text that cannot be read raises {@link
 * org.fandown.units.QuantityFormatException} and nothing else.
 */
@NullMarked
package org.fandown.units;

import org.jspecify.annotations.NullMarked;
