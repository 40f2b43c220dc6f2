/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.figure;

import java.util.Optional;

import org.ferrule.fit.rules.Span;
import org.ferrule.quantity.Dimension;

/**
 * A figure made from a printed dimension.
 *
 * @param figure the interval
 * @param printed what the label says
 * @param assumedFrom the span that filled ends which the label does not state; absent when it states all
 */
public record ReadFigure(Figure figure, Dimension printed, Optional<Span> assumedFrom) {
}
