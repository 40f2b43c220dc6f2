/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.curve;

import java.util.Optional;

import org.ferrule.fit.passage.Taper;
import org.ferrule.quantity.Length;

/**
 * A stretch of a curve in which nothing begins or ends. Stations count from the landmark.
 *
 * @param from its distal end
 * @param to its proximal end
 * @param diameter from the distal to the proximal end; absent when it is not known
 * @param assumed whether the rule set gives an end, or the centre, that the label does not state
 */
public record Span(Length from, Length to, Optional<Taper> diameter, boolean assumed) {
}
