/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import org.ferrule.fit.device.SourceRef;

/**
 * When to stop the whole.
 *
 * @param id unique in its ladder
 * @param words what is to be done, and when
 * @param resource what it limits; absent when a person has to watch it
 * @param limit in the unit of the resource; absent when a person has to watch it
 * @param source who says so
 */
public record StopRule(String id, String words, Optional<Resource> resource, OptionalDouble limit,
        SourceRef source) {
    public StopRule {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(resource, "resource");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(source, "source");
        if (resource.isPresent() != limit.isPresent()) {
            throw new IllegalArgumentException(
                    "the stop rule \"" + id + "\" needs a resource and a limit, or neither");
        }
    }
}
