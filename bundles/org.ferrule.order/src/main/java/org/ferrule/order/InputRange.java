/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.OptionalDouble;

/**
 * How far one figure may move, all others as they are, before another order is better.
 *
 * @param input which figure
 * @param value as it is
 * @param low below this the order changes; empty if nothing that may stand there changes it
 * @param high above this the order changes; empty if nothing that may stand there changes it
 * @param exact whether the ends are where the costs of two orders meet, to rounding; otherwise they were found by
 *        halving, to a thousandth of the way to the farthest figure, and an order that changes and changes back between
 *        two looks is overlooked
 */
public record InputRange(Input input, double value, OptionalDouble low, OptionalDouble high, boolean exact) {
}
