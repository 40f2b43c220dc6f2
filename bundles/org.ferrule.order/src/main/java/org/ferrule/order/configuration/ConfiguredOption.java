/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.configuration;

import java.util.Set;

import org.ferrule.order.Try;

/**
 * Something that may be tried once.
 *
 * @param id of its own in a problem
 * @param attempt its cost and chance
 * @param configurations in which it is possible
 */
public record ConfiguredOption(String id, Try attempt, Set<String> configurations) {

    /** Keeps what it is given. */
    public ConfiguredOption {
        configurations = Set.copyOf(configurations);
    }
}
