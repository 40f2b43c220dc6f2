/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.Objects;

import org.ferrule.fit.device.SourceRef;

/**
 * What was published about a technique: to be read, never reckoned with.
 *
 * @param text in words
 * @param source who says so
 */
public record Published(String text, SourceRef source) {
    public Published {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(source, "source");
    }
}
