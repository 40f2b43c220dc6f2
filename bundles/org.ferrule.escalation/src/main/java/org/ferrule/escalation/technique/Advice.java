/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.SourceRef;

/**
 * What must be known of a technique or a set-up beside its figures.
 *
 * @param changes what it changes, in words
 * @param cautions what can go wrong and what is never done
 * @param offLabel why it is outside the label; absent when it is not
 * @param stop when to give it up, in words; empty when nothing is said
 * @param published what was published
 * @param source who describes it
 */
public record Advice(List<String> changes, List<String> cautions, Optional<String> offLabel, String stop,
        List<Published> published, SourceRef source) {

    /** Nothing is said. */
    public static final Advice NONE = new Advice(List.of(), List.of(), Optional.empty(), "", List.of(),
            SourceRef.NONE);

    public Advice {
        changes = List.copyOf(changes);
        cautions = List.copyOf(cautions);
        Objects.requireNonNull(offLabel, "offLabel");
        Objects.requireNonNull(stop, "stop");
        published = List.copyOf(published);
        Objects.requireNonNull(source, "source");
    }
}
