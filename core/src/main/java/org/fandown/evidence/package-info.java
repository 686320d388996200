/**
 * What was observed, by whom, with which instrument and how exactly. {@link
 * org.fandown.evidence.Inspection} is one written-down inspection; it holds {@link
 * org.fandown.evidence.Reading}s of the vehicle as a whole, a {@link
 * org.fandown.evidence.WheelReading} for each wheel measured and a {@link
 * org.fandown.evidence.PartReading} for each part looked at. {@link
 * org.fandown.evidence.InspectionReader} reads the file form.
 */
@NullMarked
package org.fandown.evidence;

import org.jspecify.annotations.NullMarked;
