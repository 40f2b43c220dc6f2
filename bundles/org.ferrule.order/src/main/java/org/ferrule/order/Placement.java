/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

/**
 * Why a step stands where it stands.
 *
 * @param step the step
 * @param reach chance that it is reached, which is that all tries before it fail
 * @param block number of the block that it belongs to, from 0; steps of a block were placed together, such as a set-up
 *        with the tries that pay for it
 * @param index expected cost of the block per chance of success of the block, which decided its place; for a block of one
 *        try cost per chance
 */
public record Placement(Step step, double reach, int block, double index) {
}
