/**
 * Pictures of pressures over time: two needles, and what happened meanwhile.
 *
 * <p>{@link org.fandown.plot.PressureChart} lays a picture out as a {@link
 * org.fandown.plot.Drawing}, a list of neutral {@link org.fandown.plot.Shape}s; {@link
 * org.fandown.plot.SvgText} writes a drawing as SVG, and any other page can draw the same shapes.
 * {@link org.fandown.plot.TextChart} makes do with letters.
 *
 * <p>{@link org.fandown.plot.TraceChart} lays out a piece of a recorded trace, with whatever else
 * was recorded and what was done. {@link org.fandown.plot.LongCurve} and {@link
 * org.fandown.plot.RollingCurve} keep of any number of samples what such a picture needs.
 */
@NullMarked
package org.fandown.plot;

import org.jspecify.annotations.NullMarked;
